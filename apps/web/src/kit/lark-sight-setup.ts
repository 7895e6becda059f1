import {
  type CameraState,
  createPlaceJudge,
  type FormLine,
  type FromSightWorker,
  formLines,
  type PlaceAdvice,
  type WatchedCamera,
} from '@larkhold/sight';
import { say } from '@larkhold/words';
import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { watchChosen } from '../shell/sight-camera.ts';

/** How long a piece of advice is up at least, so that it can be read, milliseconds. */
const READABLE_MS = 900;
/** From standing well to the practice draw, milliseconds. */
const COUNTDOWN_MS = 3_000;
/** The model is not asked about every frame: its lines stay until the next, but not for longer, milliseconds. */
const LINES_LAST_MS = 500;

/**
 * The camera's set-up: the live picture with a figure where the archer should be, what would help, and one practice draw.
 *
 * @prop deviceId which camera; the browser's choice where left out
 * @prop replayOnly only the picture: no model is loaded
 * @event lark-looking the camera is open
 */
@customElement('lark-sight-setup')
export class LarkSightSetup extends LitElement {
  static override styles = css`
    /* Words and picture are in sight together, with nothing to scroll: the archer stands metres away. */
    figure {
      position: relative;
      margin: 0.6rem 0;
      max-width: min(40rem, max(9rem, (100svh - 13rem) * var(--aspect)));
    }
    @media (orientation: portrait) {
      figure {
        max-width: min(40rem, max(9rem, (100svh - 26.5rem) * var(--aspect)));
      }
    }
    video,
    svg {
      display: block;
      width: 100%;
    }
    svg {
      position: absolute;
      inset: 0;
      height: 100%;
      fill: none;
      stroke-linecap: round;
    }
    .figure {
      stroke: #fff;
      stroke-width: 3;
      stroke-dasharray: 8 8;
    }
    .seen {
      stroke: #fff;
      stroke-width: 4;
    }
    p {
      margin: 0;
      font-size: clamp(1.4rem, 6vmin, 3rem);
      line-height: 1.2;
      font-weight: 600;
    }
  `;

  @property({ attribute: false }) deviceId: string | undefined;
  @property({ type: Boolean }) replayOnly = false;

  @state() private camera: CameraState = 'off';
  @state() private advice: PlaceAdvice | 'calibrated' | undefined;
  /** Since when the archer stands well. */
  @state() private goodAtMs: number | undefined;
  @state() private failure = '';
  @state() private lines: { atMs: number; lines: FormLine[] } | undefined;
  #watched: WatchedCamera | undefined;
  #advisedAtMs = 0;
  readonly #judge = createPlaceJudge();

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watched = watchChosen(this, {
      onState: (next) => {
        this.camera = next;
      },
      onSeen: (seen) => this.#onSeen(seen),
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watched?.close();
    this.#watched = undefined;
    this.camera = 'off';
  }

  override render() {
    const isLooking = this.camera === 'looking';
    return html`<p role="status">${this.#words()}</p>
      ${isLooking ? this.#picture() : nothing}
      ${isLooking ? html`<small>${say('sight.looking')}</small>` : nothing}`;
  }

  override updated(changed: PropertyValues): void {
    if (!changed.has('camera') || this.camera !== 'looking') return;
    const { videoWidth = 4, videoHeight = 3 } = this.#watched?.video ?? {};
    this.style.setProperty('--aspect', String(videoWidth / videoHeight || 4 / 3));
    this.dispatchEvent(new CustomEvent('lark-looking'));
  }

  #picture() {
    const { videoWidth = 640, videoHeight = 480 } = this.#watched?.video ?? {};
    const { lines = [] } = this.lines ?? {};
    const across = videoWidth / 2;
    const unit = videoHeight / 480;
    // A standing archer 2.5 m away: head, shoulders to hips, both arms out.
    return html`<figure role="img" aria-label=${say('sight.live')}>
      ${this.#watched?.video}
      <svg viewBox="0 0 ${videoWidth} ${videoHeight}" aria-hidden="true">
        <g class="figure">
          <circle cx=${across} cy=${132 * unit} r=${24 * unit}></circle>
          <path d="M${across - 165 * unit} ${176 * unit}H${across + 165 * unit}M${across - 40 * unit} ${176 * unit}L${across - 28 * unit} ${290 * unit}H${across + 28 * unit}L${across + 40 * unit} ${176 * unit}"></path>
        </g>
        <g class="seen">
          ${lines.map(({ from, to }) => html`<svg overflow="visible"><path d="M${from.x} ${from.y}L${to.x} ${to.y}"></path></svg>`)}
        </g>
      </svg>
    </figure>`;
  }

  #words(): string {
    const { camera } = this;
    if (camera === 'off' || camera === 'asking') return say('sight.asking');
    if (camera !== 'looking') return say(`sight.${camera}`);
    if (this.failure) return say('sight.failed', { why: this.failure });
    if (this.replayOnly) return say('sight.picture');
    if (this.advice === undefined) return say('sight.loading');
    const leftMs = this.#leftMs();
    return this.advice === 'good' && leftMs > 0
      ? say('sight.standStill', { seconds: Math.ceil(leftMs / 1_000) })
      : say(`sight.${this.advice}`);
  }

  /** What is left of the countdown in which nothing may be moved any more. */
  #leftMs(): number {
    return this.goodAtMs === undefined ? COUNTDOWN_MS : this.goodAtMs + COUNTDOWN_MS - performance.now();
  }

  #onSeen(seen: FromSightWorker): void {
    if (seen.type === 'failed') this.failure = seen.message;
    if (seen.type !== 'seen') return;
    if (seen.points) this.lines = { atMs: seen.atMs, lines: formLines(seen.points) };
    else if (this.lines && seen.atMs - this.lines.atMs > LINES_LAST_MS) this.lines = undefined;
    if (seen.events.some(({ type }) => type === 'calibrated')) this.#advise('calibrated');
    const refused = seen.events.find((event) => event.type === 'refused');
    if (refused?.type === 'refused' && (refused.reason === 'turnSideOn' || refused.reason === 'moreLight')) {
      this.#advise(refused.reason);
    }
    // Frames that the model was not asked about say nothing of the archer.
    if (seen.poseMs === 0) return;
    const { videoWidth: width = 640, videoHeight: height = 480 } = this.#watched?.video ?? {};
    const advice = this.#judge(seen.points, { width, height, light: seen.light });
    const isRaised = this.advice === 'good' && seen.points !== undefined && this.#leftMs() <= 0;
    if (this.advice === 'calibrated' || isRaised || seen.atMs - this.#advisedAtMs < READABLE_MS) return;
    this.#advise(advice);
  }

  #advise(advice: NonNullable<LarkSightSetup['advice']>): void {
    if (advice !== this.advice) this.goodAtMs = advice === 'good' ? performance.now() : undefined;
    this.advice = advice;
    this.#advisedAtMs = performance.now();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-sight-setup': LarkSightSetup;
  }
}

import type { SeenForm, SessionSnapshot } from '@larkhold/engine';
import { LarkDrill } from '@larkhold/runner';
import {
  type CameraState,
  type FormLine,
  type FromSightWorker,
  formLines,
  type Refusal,
  type ReplayClip,
  type SeenHold,
  type WatchedCamera,
  type WitnessEvent,
} from '@larkhold/sight';
import { formWords, movedCall, presentWords, say } from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { watchChosen } from './sight-camera.ts';

/** What the replay shows before the draw that the clock called for, and after the let-down, milliseconds. */
const BEFORE_MS = 500;
const AFTER_MS = 800;
const LINES_KEPT_MS = 30_000;
/** Lines of a frame further away than this are another moment's, milliseconds. */
const LINES_NEAR_MS = 120;

/**
 * A drill's camera: a sign while it looks, what it saw told to the drill around it, and the last hold in each rest. Loaded only where the
 * archer asked for it.
 *
 * @prop deviceId which camera; the browser's choice where left out
 * @prop flipped the replay turned over
 * @prop replayOnly nothing is judged, and no model is loaded
 * @prop saysForm one soft word in the hold when something has moved
 */
@customElement('lark-sight')
export class LarkSight extends LitElement {
  static override styles = css`
    :host {
      display: grid;
      grid-template-columns: auto minmax(0, 1fr);
      align-items: center;
      gap: 0.3rem 0.6rem;
      padding: 0.3rem 0.6rem;
      font-size: 0.85rem;
      line-height: 1.25;
    }
    video {
      display: block;
      width: 4.2rem;
      border: 2px solid var(--accent);
      box-sizing: border-box;
    }
    lark-second-mirror,
    .form {
      grid-column: 1 / -1;
    }
    /* In a rest the last hold is what one looks at; the number stays in sight beside it. */
    lark-second-mirror {
      width: min(100%, 40vh, 34rem);
      justify-self: center;
    }
    /* Whoever looks at the display in a mirror reads this there too. */
    .flipped {
      transform: scaleX(-1);
    }
    p {
      margin: 0;
      color: var(--ink);
    }
    @media (orientation: landscape) {
      :host {
        width: 8rem;
        grid-template-columns: minmax(0, 1fr);
      }
      :host([replays]) {
        width: min(46vw, 64vh, 40rem);
        grid-template-columns: auto minmax(0, 1fr);
      }
      lark-second-mirror {
        width: min(100%, 56vh);
        justify-self: start;
      }
      :host(:not([replays])) video {
        width: 100%;
      }
    }
  `;

  @property({ attribute: false }) deviceId: string | undefined;
  @property({ type: Boolean }) flipped = false;
  @property({ type: Boolean }) replayOnly = false;
  @property({ type: Boolean }) saysForm = false;

  @state() private camera: CameraState = 'off';
  @state() private isLoading = true;
  @state() private failure = '';
  @state() private refusal: Refusal | undefined;
  @state() private clip: ReplayClip | undefined;
  @state() private form: SeenForm | undefined;
  #watched: WatchedCamera | undefined;
  #drill: LarkDrill | undefined;
  #lines: { atMs: number; lines: FormLine[] }[] = [];
  #drawAtMs: number | undefined;
  #stepKind = '';
  #endListening: () => void = () => undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    const drill = this.closest('lark-drill');
    if (!(drill instanceof LarkDrill)) return;
    this.#drill = drill;
    const onChange = (event: Event) =>
      this.#onChange((event as CustomEvent<{ snapshot: SessionSnapshot }>).detail.snapshot);
    const onEnd = () => this.#close();
    drill.addEventListener('lark-change', onChange);
    drill.addEventListener('lark-end', onEnd);
    this.#endListening = () => {
      drill.removeEventListener('lark-change', onChange);
      drill.removeEventListener('lark-end', onEnd);
    };
    this.isLoading = !this.replayOnly;
    this.#watched = watchChosen(this, {
      onState: (next) => {
        this.camera = next;
      },
      onSeen: (seen) => this.#onSeen(seen),
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#endListening();
    this.#close();
  }

  override render() {
    const video = this.#watched?.video;
    const words = this.#words();
    return html`${
      this.clip
        ? html`<lark-second-mirror
          .clip=${this.clip}
          .flipped=${this.flipped}
          .linesAt=${this.#linesAt}
          .label=${say('sight.replay')}
          .locale=${presentWords().locale}
        ></lark-second-mirror>`
        : nothing
    }
      ${this.clip && this.form ? html`<p class="form ${this.flipped ? 'flipped' : ''}">${formWords(this.form).join(' ')}</p>` : nothing}
      ${this.camera === 'looking' ? video : nothing}
      ${words ? html`<p role="status">${words}</p>` : nothing}`;
  }

  #words(): string {
    const { camera } = this;
    if (camera === 'off') return '';
    if (camera === 'asking') return say('sight.asking');
    if (camera !== 'looking') return say(`sight.${camera}`);
    if (this.failure) return say('sight.failed', { why: this.failure });
    if (this.isLoading) return say('sight.loading');
    if (this.refusal && this.refusal !== 'standBack') return say(`sight.${this.refusal}`);
    return say('sight.looking');
  }

  #onSeen(seen: FromSightWorker): void {
    if (seen.type === 'ready') this.isLoading = false;
    else if (seen.type === 'failed') this.failure = seen.message;
    else {
      const { atMs, points, events } = seen;
      this.#lines = this.#lines.filter((one) => one.atMs > atMs - LINES_KEPT_MS);
      if (points) this.#lines.push({ atMs, lines: formLines(points) });
      const hold = events.find((event) => event.type === 'hold');
      for (const event of events) this.#tell(event, hold?.type === 'hold' ? hold : undefined);
    }
  }

  #tell(event: WitnessEvent, hold: SeenHold | undefined): void {
    if (event.type === 'drawn') {
      this.form = undefined;
      this.#drill?.observe('drawn', event.atMs);
    }
    if (event.type === 'moved' && this.saysForm) this.#drill?.remind(movedCall[event.part]);
    if (event.type === 'hold') this.form = formOf(event);
    if (event.type === 'letDown') this.#drill?.observe('letDown', event.atMs, hold && formOf(hold));
    if (event.type === 'refused') this.refusal = event.reason;
    if (event.type === 'sees' || event.type === 'drawn') this.refusal = undefined;
  }

  /** The cue of the next rep always wins: with its draw the replay is gone. */
  #onChange({ walk }: SessionSnapshot): void {
    const kind = walk.step?.kind ?? '';
    if (kind === this.#stepKind) return;
    this.#stepKind = kind;
    const nowMs = performance.now();
    if (kind === 'draw') {
      this.#drawAtMs = nowMs;
      this.#show(undefined);
    } else if ((kind === 'rest' || kind === 'setRest') && this.#drawAtMs !== undefined) {
      const fromMs = this.#drawAtMs - BEFORE_MS;
      this.#drawAtMs = undefined;
      void this.#watched?.clip(fromMs, nowMs + AFTER_MS).then((clip) => {
        if (this.#stepKind === kind) this.#show(clip);
      });
    }
  }

  #show(clip: ReplayClip | undefined): void {
    this.clip = clip;
    this.toggleAttribute('replays', clip !== undefined);
  }

  readonly #linesAt = (atMs: number): readonly FormLine[] => {
    let best: { atMs: number; lines: FormLine[] } | undefined;
    for (const one of this.#lines) {
      if (best === undefined || Math.abs(one.atMs - atMs) < Math.abs(best.atMs - atMs)) best = one;
    }
    return best && Math.abs(best.atMs - atMs) < LINES_NEAR_MS ? best.lines : [];
  };

  #close(): void {
    this.#watched?.close();
    this.#watched = undefined;
    this.#lines = [];
    this.#show(undefined);
    this.camera = 'off';
  }
}

/** What moved in a hold, as the record keeps it: parts and times, no centimetres. */
function formOf({ form, wholeMs, isJudged }: SeenHold): SeenForm | undefined {
  return isJudged ? { moved: form.map(({ part }) => part), wholeMs } : undefined;
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-sight': LarkSight;
  }
}

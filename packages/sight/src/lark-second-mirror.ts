import { css, html, LitElement, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { FormLine } from './form-lines.ts';
import { decodeReplay } from './play-replay.ts';
import type { ReplayClip } from './record-replay.ts';

/** How slow the second time is. */
const HALF = 0.5;
/** Between two rounds, milliseconds. */
const BREATH_MS = 700;

/**
 * Plays a clip again and again, at full and at half speed by turns, with the time since its beginning and the archer's own lines.
 *
 * @prop clip what to play; without one it shows nothing
 * @prop flipped turned over, as in a mirror
 * @prop linesAt the lines at an instant of the clip, in the pixels of the clip's own pictures
 * @prop label what it is, for who cannot see it
 * @prop locale how the time is written, BCP 47; the browser's where left out
 * @event lark-replay a round begins; detail `{ rate }`
 * @csspart picture the canvas
 */
@customElement('lark-second-mirror')
export class LarkSecondMirror extends LitElement {
  static override styles = css`
    :host {
      display: block;
    }
    canvas {
      display: block;
      width: 100%;
      height: auto;
      background: #000;
    }
    .flipped {
      transform: scaleX(-1);
    }
    p {
      margin: 0.2rem 0 0;
      font-variant-numeric: tabular-nums;
    }
  `;

  @property({ attribute: false }) clip: ReplayClip | undefined;
  @property({ type: Boolean }) flipped = false;
  @property({ attribute: false }) linesAt: ((atMs: number) => readonly FormLine[]) | undefined;
  @property() label = '';
  @property() locale: string | undefined;

  #round = 0;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#round++;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('clip')) return;
    const round = ++this.#round;
    const { clip } = this;
    if (clip) void this.#playOn(clip, round);
  }

  override render() {
    const { width = 4, height = 3 } = this.clip ?? {};
    return html`<canvas
        part="picture"
        role="img"
        aria-label=${this.label}
        class=${this.flipped ? 'flipped' : ''}
        width=${width}
        height=${height}
      ></canvas>
      <p class=${this.flipped ? 'time flipped' : 'time'} aria-hidden="true"></p>`;
  }

  async #playOn(clip: ReplayClip, round: number): Promise<void> {
    for (let rate = 1; this.#round === round; rate = rate === 1 ? HALF : 1) {
      this.dispatchEvent(new CustomEvent('lark-replay', { detail: { rate }, bubbles: true, composed: true }));
      const isPlayed = await this.#play(clip, round, rate).catch(() => false);
      // A clip that can't be read shows nothing; the drill has no need of it.
      if (!isPlayed) return;
      await pause(BREATH_MS);
    }
  }

  async #play(clip: ReplayClip, round: number, rate: number): Promise<boolean> {
    let beganMs: number | undefined;
    let firstMs = 0;
    let count = 0;
    for await (const { atMs, picture } of decodeReplay(clip)) {
      if (beganMs === undefined) {
        beganMs = performance.now();
        firstMs = atMs;
      }
      const waitMs = beganMs + (atMs - firstMs) / rate - performance.now();
      if (waitMs > 0) await pause(waitMs);
      if (this.#round === round) this.#draw(picture, atMs, rate, clip);
      picture.close();
      if (this.#round !== round) return false;
      count++;
    }
    return count > 0;
  }

  #draw(picture: ImageBitmap, atMs: number, rate: number, clip: ReplayClip): void {
    const canvas = this.renderRoot.querySelector('canvas');
    const context = canvas?.getContext('2d');
    if (!canvas || !context) return;
    context.drawImage(picture, 0, 0, canvas.width, canvas.height);
    context.lineWidth = Math.max(2, canvas.width / 160);
    context.lineCap = 'round';
    for (const { from, to } of this.linesAt?.(atMs) ?? []) {
      for (const [colour, width] of [
        ['#000', context.lineWidth * 1.8],
        ['#fff', context.lineWidth],
      ] as const) {
        context.strokeStyle = colour;
        context.save();
        context.lineWidth = width;
        context.beginPath();
        context.moveTo(from.x, from.y);
        context.lineTo(to.x, to.y);
        context.stroke();
        context.restore();
      }
    }
    const time = this.renderRoot.querySelector('.time');
    const tenth = { minimumFractionDigits: 1, maximumFractionDigits: 1 };
    const seconds = ((atMs - clip.fromMs) / 1_000).toLocaleString(this.locale, tenth);
    if (time) time.textContent = rate === 1 ? `${seconds} s` : `${seconds} s · ½`;
  }
}

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-second-mirror': LarkSecondMirror;
  }
  interface HTMLElementEventMap {
    'lark-replay': CustomEvent<{ rate: number }>;
  }
}

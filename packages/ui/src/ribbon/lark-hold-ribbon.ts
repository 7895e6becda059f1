import { ribbonRepWords, ribbonWords, say } from '@larkhold/words';
import { html, LitElement, nothing, type PropertyValues, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { placeRibbon, RIBBON, type RibbonPlaces, ROW } from './ribbon-places.ts';
import { drawnRep, type RibbonRep } from './ribbon-rep.ts';
import { brokenPath, laidPath, limbPath, missingPath, reasonPath, tallestOf, tallOf } from './ribbon-strokes.ts';
import { ribbonStyles } from './ribbon-styles.ts';

/** The paths of a ribbon, one for each way of drawing. */
interface Drawn {
  full: string;
  hollow: string;
  missing: string;
  marks: string;
  coming: string;
}

/**
 * A drill as a row of strokes, each as tall as what was held. A short one is broken, with the mark of its reason; a skipped one is laid
 * down, an unsure one hollow. What is still to come are dots on the ground.
 *
 * @prop reps in the order of the drill
 * @prop nowMs how much of the rep under way is held, milliseconds; undefined while none is
 * @prop tallestMs the hold at full height, milliseconds; the longest of these reps where left out
 * @prop widest width of a row in strokes' units; 40 strokes where left out
 * @prop unit width of one of the strokes' units, rem
 * @prop fills whether it takes all the room it is given, in both directions
 * @prop words what it says to those who do not see it; made from the reps where left out, empty where the page says it already
 * @prop picks whether a rep can be chosen by pressing it or with the arrow keys
 * @prop picked index of the chosen rep
 * @event lark-pick another rep was chosen; detail `{ index }`
 * @cssprop --ribbon-ink of the strokes
 * @cssprop --ribbon-mark of what is under way, chosen, or marked
 * @cssprop --ribbon-beside room beside one that fills its height; `auto` where left out, in the middle
 */
@customElement('lark-hold-ribbon')
export class LarkHoldRibbon extends LitElement {
  static override styles = ribbonStyles;

  @property({ attribute: false }) reps: readonly RibbonRep[] = [];
  @property({ attribute: false }) nowMs: number | undefined;
  @property({ attribute: false }) tallestMs: number | undefined;
  @property({ type: Number }) widest: number = RIBBON.widest;
  @property({ type: Number }) unit = 0.075;
  @property({ type: Boolean, reflect: true }) fills = false;
  @property() words: string | undefined;
  @property({ type: Boolean }) picks = false;
  @property({ attribute: false }) picked: number | undefined;

  #places: RibbonPlaces = placeRibbon([]);
  #drawn: Drawn = { full: '', hollow: '', missing: '', marks: '', coming: '' };
  #words = '';
  #reps: readonly RibbonRep[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('reps') && !changed.has('tallestMs') && !changed.has('widest')) return;
    this.#places = placeRibbon(this.reps, this.widest);
    this.#reps = this.reps.map(drawnRep);
    this.#drawn = this.#draw();
    this.#words = ribbonWords(this.#reps);
  }

  override render() {
    const { reps } = this;
    if (reps.length === 0) return nothing;
    return this.picks ? this.#choice() : this.#picture(this.words ?? this.#words);
  }

  #choice() {
    const at = this.picked ?? 0;
    const rep = this.#reps[at];
    return html`<div
      role="slider"
      tabindex="0"
      aria-label=${say('field.ribbonReps', { words: this.#words })}
      aria-valuemin="1"
      aria-valuemax=${this.reps.length}
      aria-valuenow=${at + 1}
      aria-valuetext=${rep ? ribbonRepWords(rep, at) : ''}
      @keydown=${this.#onKey}
      @pointerdown=${this.#onPointer}
    >
      ${this.#picture('')}
    </div>`;
  }

  #picture(words: string) {
    const { width, height, rows } = this.#places;
    const { full, hollow, missing, marks, coming } = this.#drawn;
    const ground = rows.map((row) => `M0 ${row.y}H${row.width}`).join('');
    return html`<svg
      viewBox="0 0 ${width} ${height}"
      preserveAspectRatio=${this.fills ? 'none' : 'xMinYMax'}
      width=${`${(width * this.unit).toFixed(2)}rem`}
      role=${words === '' ? 'presentation' : 'img'}
      aria-label=${words === '' ? nothing : words}
      aria-hidden=${words === '' ? 'true' : nothing}
    >
      ${svg`<path class="ground" d=${ground}></path><path class="coming" d=${coming}></path>${this.#under()}
        <path class="full" d=${full}></path><path class="hollow" d=${hollow}></path>
        <path class="missing" d=${missing}></path><path class="marks" d=${marks}></path>`}
    </svg>`;
  }

  /** The rep under way, as far as it is held, and the one that was chosen. */
  #under() {
    const { reps, nowMs, picked } = this;
    const tallestMs = this.tallestMs ?? tallestOf(reps);
    const now = reps.findIndex(({ outcome }) => outcome === 'now');
    const foot = this.#places.feet[now];
    const chosen = picked === undefined ? undefined : this.#places.feet[picked];
    return [
      foot
        ? svg`<path class="asked" d=${limbPath(foot.x, foot.y, tallOf(reps[now]?.prescribedMs ?? 0, tallestMs))}></path>
          <path class="now" d=${nowMs ? limbPath(foot.x, foot.y, tallOf(nowMs, tallestMs)) : ''}></path>`
        : nothing,
      chosen ? svg`<path class="picked" d="M${chosen.x - 5} ${chosen.y + 3}h10"></path>` : nothing,
    ];
  }

  #draw(): Drawn {
    const tallestMs = this.tallestMs ?? tallestOf(this.#reps);
    const drawn: Drawn = { full: '', hollow: '', missing: '', marks: '', coming: '' };
    for (const [index, rep] of this.#reps.entries()) {
      const { x = 0, y = 0 } = this.#places.feet[index] ?? {};
      const [held, asked] = [tallOf(rep.heldMs, tallestMs), tallOf(rep.prescribedMs, tallestMs)];
      if (rep.outcome === 'held') drawn.full += limbPath(x, y, held);
      else if (rep.outcome === 'short') {
        drawn.full += held > 0 ? brokenPath(x, y, held) : '';
        drawn.missing += missingPath(x, y, held, asked);
        drawn.marks += rep.why ? reasonPath(rep.why, x, y, Math.max(asked, held)) : '';
      } else if (rep.outcome === 'skipped') drawn.full += laidPath(x, y);
      else if (rep.outcome === 'unsure') drawn.hollow += limbPath(x, y, Math.max(held, asked / 3));
      else if (rep.outcome === 'coming') drawn.coming += `M${x} ${y - 2.5}v0.01`;
    }
    return drawn;
  }

  #pick(index: number): void {
    const within = Math.min(this.reps.length - 1, Math.max(0, index));
    if (within === this.picked) return;
    this.dispatchEvent(new CustomEvent('lark-pick', { detail: { index: within }, bubbles: true, composed: true }));
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    const at = this.picked ?? -1;
    const to: Record<string, number> = {
      ...{ ArrowRight: at + 1, ArrowUp: at + 1, ArrowLeft: at - 1, ArrowDown: at - 1 },
      ...{ Home: 0, End: this.reps.length - 1, Enter: Math.max(0, at), ' ': Math.max(0, at) },
    };
    const index = to[event.key];
    if (index === undefined) return;
    event.preventDefault();
    this.#pick(index);
  };

  readonly #onPointer = (event: PointerEvent): void => {
    const box = this.renderRoot.querySelector('svg')?.getBoundingClientRect();
    if (!box?.width || !box.height) return;
    const { width, height, feet } = this.#places;
    const x = ((event.clientX - box.left) / box.width) * width;
    const row = Math.floor((((event.clientY - box.top) / box.height) * height) / ROW);
    const y = RIBBON.above + RIBBON.tall + Math.max(0, row) * ROW;
    let nearest = 0;
    for (const [index, foot] of feet.entries()) {
      const best = feet[nearest];
      const isNearer =
        best && Math.abs(foot.y - y) * 99 + Math.abs(foot.x - x) < Math.abs(best.y - y) * 99 + Math.abs(best.x - x);
      if (isNearer) nearest = index;
    }
    this.#pick(nearest);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-hold-ribbon': LarkHoldRibbon;
  }
  interface HTMLElementEventMap {
    'lark-pick': CustomEvent<{ index: number }>;
  }
}

import type { Arrows, DayEntry, Work } from '@larkhold/engine';
import type { Kit } from '@larkhold/store';
import { controlStyles, pageStyles } from '@larkhold/ui';
import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '@larkhold/ui';
import { arrowLines, changeArrows, changeWork, workLines } from '@larkhold/engine';
import { feelSteps, feelWord, presentWords, say } from '@larkhold/words';
import { painAnswer } from '../../shell/pain-answer.ts';
import { dayEntryStyles } from './day-entry-styles.ts';
import '@larkhold/ui';
import { typedIn } from '../../shell/typed-in.ts';

/** One change of a day: the fields that changed, in full; `undefined` takes one away. */
export interface DayChange {
  date: string;
  changes: Partial<DayEntry>;
}

const METRES_PER_YARD = 0.9144;

/**
 * The diary of one day. Everything may be left out, and every change is reported as it is made.
 *
 * @prop entry the day as it is kept
 * @prop units how distances are typed
 * @prop place where arrows are shot: the day's own place, or the one that it would have
 * @prop places names to choose from
 * @prop checkedPlaces where what to look at before shooting at home is put away
 * @event day-change a change; detail is a `DayChange`
 * @event range-check-dismiss puts the check away for this place
 * @event range-check-show wants it back for this place
 */
@customElement('day-entry')
export class DayEntryElement extends LitElement {
  static override styles = [pageStyles, controlStyles, dayEntryStyles];

  @property({ attribute: false }) entry: DayEntry | undefined;
  @property() units: Kit['units'] = 'metric';
  @property() place = '';
  @property({ attribute: false }) places: readonly string[] = [];
  @property({ attribute: false }) checkedPlaces: readonly string[] = [];
  /** A line for a second distance that holds nothing yet. */
  @state() private added: Arrows['kind'] | undefined;

  override render() {
    const { entry } = this;
    if (!entry) return nothing;
    return html`${this.#feel(entry)} ${this.#arrows(entry)} ${this.#work(entry)} ${this.#words(entry)}`;
  }

  #arrows(entry: DayEntry) {
    const lines = this.#arrowLines(entry);
    const isChecked = this.place !== '' && this.checkedPlaces.includes(this.place);
    const hasShot = lines.some(({ count }) => count > 0);
    return html`<fieldset aria-labelledby="arrows">
      <div class="headed"><b id="arrows">${say('day.arrows')}</b> ${this.#placeField()}</div>
      ${lines.map((line, index) => this.#arrowLine(lines, line, index))}
      ${
        hasShot || isChecked
          ? html`<div class="row">
              ${hasShot ? html`<button type="button" class="quiet" @click=${() => this.#addDistance(lines)}>${say('day.addDistance')}</button>` : nothing}
              ${
                isChecked
                  ? html`<button type="button" class="quiet" @click=${() => this.#tell('range-check-show')}>${say('day.rangeCheck')}</button>`
                  : nothing
              }
            </div>`
          : nothing
      }
      ${hasShot || entry.shootingMinutes !== undefined ? this.#shootingLoad(entry) : nothing}
      ${isChecked ? nothing : html`<range-check .place=${this.place}></range-check>`}
    </fieldset>`;
  }

  #placeField() {
    return html`<label class="field inline"
        ><span>${say('day.place')}</span><input
          list="places"
          maxlength="60"
          autocomplete="off"
          .value=${this.place}
          @change=${(event: Event) => this.#change({ place: typedIn(event).trim() || undefined })}
      /></label>
      <datalist id="places">${this.places.map((place) => html`<option value=${place}></option>`)}</datalist>`;
  }

  #arrowLine(lines: readonly Arrows[], line: Arrows, index: number) {
    const name = say(line.kind === 'blank bale' ? 'day.blankBale' : `day.${line.kind}`);
    return html`<div class="line">
      <span class="kind" aria-hidden="true">${name}</span>
      <count-field
        name=${say('day.arrowsOf', { name })}
        step="6"
        .value=${line.count}
        @count-change=${(event: CustomEvent<number>) => this.#change({ arrows: changeArrows(lines, index, { count: event.detail }) })}
      ></count-field>
      ${line.count === 0 && line.distanceM === undefined && this.added !== line.kind ? nothing : this.#distance(lines, line, index, name)}
    </div>`;
  }

  /** Asked once there are arrows. */
  #distance(lines: readonly Arrows[], line: Arrows, index: number, name: string) {
    const isImperial = this.units === 'imperial';
    const distance = line.distanceM === undefined ? '' : tenths(line.distanceM / (isImperial ? METRES_PER_YARD : 1));
    return html`<label class="beside"
        ><span class="visually-hidden">${say('day.distanceOf', { name, unit: isImperial ? 'yards' : 'other' })}</span
        ><input
          inputmode="decimal"
          autocomplete="off"
          maxlength="5"
          .value=${distance}
          @change=${(event: Event) => this.#changeDistance(lines, index, typedIn(event))}
        />${isImperial ? 'yd' : 'm'}</label
      >`;
  }

  #shootingLoad(entry: DayEntry) {
    return html`<div class="line">
      <span class="kind" aria-hidden="true">${say('day.minutes')}</span>
      <count-field
        name=${say('day.minutesOf', { name: say('day.shooting') })}
        step="15"
        most="1440"
        .value=${entry.shootingMinutes ?? 0}
        @count-change=${(event: CustomEvent<number>) => this.#change({ shootingMinutes: event.detail || undefined })}
      ></count-field>
      ${effortField(say('day.shooting'), entry.shootingEffort, (shootingEffort) => this.#change({ shootingEffort }))}
    </div>`;
  }

  #feel(entry: DayEntry) {
    return html`<fieldset aria-labelledby="felt">
      <b id="felt">${say('day.felt')}</b>
      <div class="steps">
        ${feelSteps.map(
          (step, index) => html`<label
            ><input
              type="radio"
              name="feel"
              .checked=${entry.feel === index + 1}
              @change=${() => this.#change({ feel: index + 1 })}
            /><span>${feelWord(step)}</span></label
          >`,
        )}
      </div>
      <div class="pain" role="group" aria-labelledby="pain" aria-describedby="pain-means">
        <span><span id="pain">${say('day.pain')}</span> <small id="pain-means" class="dim">${say('after.painMeans')}</small></span>
        ${painAnswer(entry.pain, (pain) => this.#change({ pain }))}
      </div>
      <p role="status" class="caution">${entry.pain ? say('day.painStop') : ''}</p>
      <label class="field inline"
        ><span>${say('day.ownWords')}</span><input
          maxlength="200"
          autocomplete="off"
          .value=${entry.feelWords ?? ''}
          @input=${(event: Event) => this.#change({ feelWords: typedIn(event) || undefined })}
      /></label>
    </fieldset>`;
  }

  #work(entry: DayEntry) {
    const lines = workLines(entry);
    const done = lines.filter(({ minutes }) => minutes > 0);
    const words = done.map(({ kind, minutes }) => say('day.workDone', { name: say(`day.${kind}`), n: minutes }));
    return html`<details>
      <summary><span>${say('day.otherWork')} <span class="dim small">${presentWords().list(words)}</span></span></summary>
      <fieldset aria-label=${say('day.otherWork')}>
        ${lines.map((line, index) => this.#workLine(lines, line, index))}
      </fieldset>
    </details>`;
  }

  #workLine(lines: readonly Work[], line: Work, index: number) {
    const name = say(`day.${line.kind}`);
    return html`<div class="line">
      <span class="kind" aria-hidden="true">${name}</span>
      <count-field
        name=${say('day.minutesOf', { name })}
        step="5"
        most="1440"
        .value=${line.minutes}
        @count-change=${(event: CustomEvent<number>) => this.#change({ work: changeWork(lines, index, { minutes: event.detail }) })}
      ></count-field>
      ${
        line.minutes > 0 || line.effort !== undefined
          ? effortField(name, line.effort, (effort) => this.#change({ work: changeWork(lines, index, { effort }) }))
          : nothing
      }
    </div>`;
  }

  #words(entry: DayEntry) {
    return html`<label class="field inline"
      ><span>${say('day.note')}</span><textarea
        rows="1"
        maxlength="4000"
        .value=${entry.note ?? ''}
        @input=${(event: Event) => this.#change({ note: typedIn(event) || undefined })}
      ></textarea>
    </label>`;
  }

  #arrowLines(entry: DayEntry): Arrows[] {
    const lines = arrowLines(entry);
    return this.added ? [...lines, { kind: this.added, count: 0 }] : lines;
  }

  #addDistance(lines: readonly Arrows[]): void {
    this.added = lines.findLast(({ count }) => count > 0)?.kind ?? 'practice';
  }

  #changeDistance(lines: readonly Arrows[], index: number, text: string): void {
    const typed = Number.parseFloat(text.replace(',', '.'));
    const metres = typed * (this.units === 'imperial' ? METRES_PER_YARD : 1);
    this.#change({ arrows: changeArrows(lines, index, { distanceM: Number.isFinite(typed) ? metres : undefined }) });
  }

  #change(changes: Partial<DayEntry>): void {
    if (!this.entry) return;
    if (changes.arrows) this.added = undefined;
    // Arrows are where the archer last was, unless the day says otherwise; from then on the day itself says so.
    const isNowHere = changes.arrows !== undefined && this.entry.place === undefined && this.place !== '';
    const detail: DayChange = {
      date: this.entry.date,
      changes: isNowHere ? { ...changes, place: this.place } : changes,
    };
    this.dispatchEvent(new CustomEvent('day-change', { detail, bubbles: true, composed: true }));
  }

  #tell(name: string): void {
    this.dispatchEvent(new CustomEvent(name, { bubbles: true, composed: true }));
  }
}

function effortField(name: string, effort: number | undefined, change: (effort: number | undefined) => void) {
  return html`<label class="beside"
    ><span class="visually-hidden">${say('day.effortOf', { name })}</span><select
      @change=${(event: Event) => change(typedIn(event) === '' ? undefined : Number(typedIn(event)))}
    >
      <option value="" ?selected=${effort === undefined}>${say('day.effort')}</option>
      ${Array.from({ length: 11 }, (_, step) => html`<option value=${step} ?selected=${effort === step}>${say('day.effortStep', { step: String(step) })}</option>`)}
    </select></label
  >`;
}

function tenths(value: number): string {
  return String(Math.round(value * 10) / 10);
}

declare global {
  interface HTMLElementTagNameMap {
    'day-entry': DayEntryElement;
  }
}

import {
  dayNumber,
  dayOfNumber,
  emptySeason,
  findProgram,
  idOf,
  type ProgramRef,
  type Season,
  type SeasonBlock,
  weekdays,
} from '@larkhold/engine';
import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../../shell/app-context.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { withoutOne } from './edit-season.ts';
import { seasonFold } from './season-fold.ts';
import { seasonStyles } from './season-styles.ts';

const weekChoices = [4, 5, 6, 7, 8] as const;

/**
 * The weekdays of a season, block by block: which programs on which day, and which week is lighter.
 *
 * @prop season what the archer wrote; undefined while nobody did
 * @event season-change detail `{ season, isRemoval }`
 */
@customElement('season-weekdays')
export class SeasonWeekdays extends PlaceElement {
  static override styles = [...PlaceElement.styles, seasonStyles];

  @property({ attribute: false }) season: Season | undefined;
  /** The block that was begun just now: its days are there to be written. */
  @state() private begun: number | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const blocks = this.season?.blocks ?? [];
    const n = blocks.length;
    const line = n === 0 ? say('plan.sensibleShort') : say('plan.blockCount', { n });
    const inside = html`${blocks.length === 0 ? html`<div class="row"><button @click=${() => this.#writeOwn(app)}>${say('plan.writeOwn')}</button></div>` : html`<div class="blocks">${blocks.map((block, at) => this.#fold(app, block, at))}</div>`}
      ${
        blocks.length === 0
          ? nothing
          : html`<div class="row">
        <button @click=${() => this.#addBlock(blocks)}>${say('plan.addBlock')}</button>
        <button @click=${() => this.#give({ ...this.#own(), blocks: [] }, true)}>${say('plan.noOwn')}</button>
      </div>`
      }`;
    return seasonFold('weekdays', { title: say('plan.weekdays'), line }, inside);
  }

  #fold(app: App, block: SeasonBlock, at: number) {
    const { title, from, weeks: n } = block;
    return html`<details ?open=${at === this.begun}>
      <summary><span>${title} <span class="dim small">${say('plan.blockLine', { from, n })}</span></span></summary>
      ${this.#block(app, block, at)}
    </details>`;
  }

  #block(app: App, block: SeasonBlock, at: number) {
    const { title, from, weeks, lighterWeeks, days } = block;
    const label = (words: string, control: unknown) => html`<label>${words} ${control}</label>`;
    return html`<form @submit=${(event: SubmitEvent) => this.#keep(event, app, at)}>
      <fieldset>
        <legend class="visually-hidden">${title}</legend>
        <div class="fields">
          ${label(say('plan.blockTitle'), html`<input name="title" required maxlength="120" .value=${title} />`)}
          ${label(say('plan.blockFrom'), html`<input name="from" type="date" required .value=${from} />`)}
          ${label(say('plan.blockWeeks'), html`<select name="weeks">${weekChoices.map((n) => html`<option value=${n} .selected=${n === weeks}>${say('plan.weekCount', { n })}</option>`)}</select>`)}
          ${label(say('plan.lighterWeek'), html`<select name="lighter"><option value="">${say('plan.noLighter')}</option>${Array.from({ length: 8 }, (_, index) => index + 1).map((n) => html`<option value=${n} .selected=${n === lighterWeeks[0]}>${say('plan.nth', { n })}</option>`)}</select>`)}
        </div>
        <ul class="days">
          ${weekdays.map((name) => {
            const day = say(`plan.${name}`);
            const [first, second] = days[name] ?? [];
            return html`<li><span>${day}</span>${this.#program(app, `${name} 0`, day, first)}${this.#program(app, `${name} 1`, say('plan.alsoOn', { day }), second)}</li>`;
          })}
        </ul>
        <div class="row">
          <button class="main">${say('plan.keepBlock', { title })}</button>
          <button type="button" class="quiet" @click=${() => this.#give(withoutOne(this.#own(), 'blocks', at), true)}>${say('plan.removeBlock', { title })}</button>
        </div>
      </fieldset>
    </form>`;
  }

  #program({ view }: App, name: string, words: string, ref: ProgramRef | undefined) {
    const found = ref && findProgram(ref, view.programs);
    // A program that nobody has stays in the season, and is to be chosen as it is.
    const missing = ref && !found ? html`<option value="missing" .selected=${true}>${ref.title}</option>` : nothing;
    return html`<select name=${name} aria-label=${words}>
      <option value="">${say('plan.rest')}</option>
      ${missing}
      ${view.programs.filter(({ kind }) => kind !== 'test').map((program) => html`<option value=${idOf(program)} .selected=${program === found}>${program.title}</option>`)}
    </select>`;
  }

  #keep(event: SubmitEvent, app: App, at: number): void {
    event.preventDefault();
    const read = new FormData(event.target as HTMLFormElement);
    const text = (name: string): string => String(read.get(name) ?? '').trim();
    const own = this.#own();
    const before = own.blocks[at];
    if (!before) return;
    const days = Object.fromEntries(
      weekdays.flatMap((name) => {
        const old = before.days[name] ?? [];
        const chosen = [0, 1].flatMap((place) => refOf(app, text(`${name} ${place}`), old[place]) ?? []);
        const programs = [...chosen, ...old.slice(2)];
        return programs.length === 0 ? [] : [[name, programs]];
      }),
    );
    const lighter = text('lighter') === '' ? [] : [Number(text('lighter')), ...before.lighterWeeks.slice(1)];
    const block = {
      ...before,
      ...{ title: text('title'), from: text('from'), weeks: Number(text('weeks')), lighterWeeks: lighter, days },
    } as SeasonBlock;
    this.#give({ ...own, blocks: own.blocks.map((one, index) => (index === at ? block : one)) }, false);
  }

  /** Begins with what the sensible season has, so that there is something to change. */
  #writeOwn({ view }: App): void {
    const [block] = view.season.season.blocks;
    if (!block) return;
    this.begun = 0;
    this.#give({ ...this.#own(), blocks: [block] }, false);
  }

  #addBlock(blocks: readonly SeasonBlock[]): void {
    const last = blocks.reduce((latest, one) => (one.from > latest.from ? one : latest));
    const next = { ...last, from: dayOfNumber(dayNumber(last.from) + 7 * last.weeks) };
    this.begun = blocks.length;
    this.#give({ ...this.#own(), blocks: [...blocks, next] }, false);
  }

  #own(): Season {
    return this.season ?? emptySeason(say('plan.mySeason'));
  }

  #give(season: Season, isRemoval: boolean): void {
    const detail = { season, isRemoval };
    this.dispatchEvent(new CustomEvent('season-change', { detail, bubbles: true, composed: true, cancelable: true }));
  }
}

function refOf({ view }: App, value: string, old: ProgramRef | undefined): ProgramRef | undefined {
  if (value === 'missing') return old;
  const program = view.programs.find((one) => idOf(one) === value);
  return program && (program.id === undefined ? { title: program.title } : { id: program.id, title: program.title });
}

declare global {
  interface HTMLElementTagNameMap {
    'season-weekdays': SeasonWeekdays;
  }
}

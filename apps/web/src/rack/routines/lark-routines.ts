import type { DayEntry } from '@larkhold/engine';
import { choiceOf, tickOf } from '@larkhold/ui';
import { say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../../shell/app-context.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { typedIn } from '../../shell/typed-in.ts';
import { builtInRoutines } from './built-in-routines.ts';
import { type Routine, readRoutine, withWork } from './routine.ts';

const MINUTE_MS = 60_000;
const MOST_ROUTINES = 30;

/** A routine that is being written. */
type Writing = Parameters<typeof readRoutine>[0];

/** Routines without a bow: lines to tick off, logged as minutes of work and never as holds. */
@customElement('lark-routines')
export class LarkRoutines extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .routines {
        margin: 0.8rem 0;
        border-bottom: 1px solid var(--rule);
      }
      .tick {
        overflow-wrap: anywhere;
      }
      .row {
        align-items: end;
        padding: 0.6rem 0;
      }
      .row label {
        flex: 0 1 8rem;
      }
      .row input {
        display: block;
        width: 100%;
        margin-top: 0.3rem;
      }
      form {
        display: grid;
        gap: 0.8rem;
        max-width: 36rem;
        margin: 0.8rem 0;
      }
      form :is(input, select, textarea) {
        display: block;
        width: 100%;
        margin-top: 0.3rem;
      }
      summary span {
        overflow-wrap: anywhere;
      }
    `,
  ];

  @state() private ticked: ReadonlySet<string> = new Set();
  @state() private writing: Writing | undefined;
  @state() private said = '';
  @state() private dayBefore: DayEntry | undefined;

  override render() {
    const { app, writing } = this;
    if (!app) return nothing;
    const own = app.view.kit.routines ?? [];
    const built = builtInRoutines().filter(({ id }) => own.every((one) => one.id !== id));
    return html`<div class="routines">
        ${[...built, ...own].map((routine) => this.#routine(app, routine, own.includes(routine)))}
      </div>
      <p role="status">${this.said}</p>
      ${this.dayBefore ? html`<button class="quiet" @click=${() => this.#takeBack(app)}>${say('routine.takeBack')}</button>` : nothing}
      ${
        writing
          ? this.#form(app, writing)
          : html`<button class="new" @click=${() => this.#write({ id: app.act.newId(), kind: 'strength', title: '', lines: '', minutes: '15' })}>
              ${say('routine.new')}
            </button>`
      }`;
  }

  #routine(app: App, routine: Routine, isOwn: boolean) {
    const { id, title, kind, minutes, lines } = routine;
    const keyOf = (at: number) => `${id} ${at}`;
    return html`<details>
      <summary><span>${title} <span class="dim small">${say('routine.about', { kind, ms: minutes * MINUTE_MS })}</span></span></summary>
      ${lines.map((line, at) =>
        tickOf(line, this.ticked.has(keyOf(at)), (isOn) => {
          const ticked = new Set(this.ticked);
          if (isOn) ticked.add(keyOf(at));
          else ticked.delete(keyOf(at));
          this.ticked = ticked;
        }),
      )}
      <form class="row" @submit=${(event: SubmitEvent) => this.#log(event, app, routine)}>
        <label>${say('routine.minutes')} <input name="minutes" type="number" inputmode="numeric" min="1" max="240" required .value=${String(minutes)} /></label>
        <label>${say('routine.effort')} <input name="effort" type="number" inputmode="decimal" min="0" max="10" step="0.5" placeholder=${say('routine.notSaid')} /></label>
        <button>${say('routine.log', { kind })}</button>
        <button type="button" class="quiet" aria-label=${say('routine.changeOne', { title })} @click=${() => this.#write({ ...routine, lines: lines.join('\n'), minutes: String(minutes) })}>${say('routine.change')}</button>
        ${isOwn ? html`<button type="button" class="quiet" aria-label=${say('routine.removeOne', { title })} @click=${() => this.#remove(app, routine)}>${say('routine.remove')}</button>` : nothing}
      </form>
    </details>`;
  }

  #form(app: App, writing: Writing) {
    const change = (changes: Partial<Writing>) => {
      this.writing = { ...(this.writing ?? writing), ...changes };
    };
    const typed = (name: 'title' | 'lines' | 'minutes') => (event: Event) => change({ [name]: typedIn(event) });
    return html`<form class="writing" @submit=${(event: Event) => this.#save(event, app)}>
      <label>${say('routine.name')} <input class="title" maxlength="120" .value=${writing.title} @input=${typed('title')} /></label>
      ${choiceOf(say('routine.kind'), writing.kind, { strength: say('routine.strength'), mobility: say('routine.mobility'), fitness: say('routine.fitness') }, (kind) => change({ kind }))}
      <label>${say('routine.lines')} <textarea rows="5" .value=${writing.lines} @input=${typed('lines')}></textarea></label>
      <label>${say('routine.minutesItTakes')} <input inputmode="numeric" .value=${writing.minutes} @input=${typed('minutes')} /></label>
      <div class="row">
        <button class="main">${say('routine.keep')}</button>
        <button type="button" class="quiet" @click=${() => this.#close('')}>${say('routine.leave')}</button>
      </div>
    </form>`;
  }

  async #write(writing: Writing): Promise<void> {
    const { id, kind, title, lines, minutes } = writing;
    this.writing = { id, kind, title, lines, minutes };
    this.said = '';
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.title')?.focus();
  }

  async #save(event: Event, { view, act }: App): Promise<void> {
    event.preventDefault();
    if (!this.writing) return;
    const read = readRoutine(this.writing);
    if (!read.ok) {
      this.said = read.message;
      return;
    }
    const own = view.kit.routines ?? [];
    const isThere = own.some(({ id }) => id === read.routine.id);
    if (!isThere && own.length >= MOST_ROUTINES) {
      this.said = say('routine.tooMany', { most: MOST_ROUTINES });
      return;
    }
    const { routine } = read;
    const isKept = await act.changeKit(({ routines = [] }) => ({
      routines: isThere ? routines.map((one) => (one.id === routine.id ? routine : one)) : [...routines, routine],
    }));
    if (!isKept) return;
    await this.#close(say('routine.kept', { title: read.routine.title }));
  }

  async #remove({ act }: App, routine: Routine): Promise<void> {
    await act.changeKit(({ routines = [] }) => ({ routines: routines.filter(({ id }) => id !== routine.id) }));
    await this.#close(say('routine.removed', { title: routine.title }));
  }

  async #log(event: SubmitEvent, { view, act }: App, routine: Routine): Promise<void> {
    event.preventDefault();
    if (!(event.target instanceof HTMLFormElement)) return;
    const fields = new FormData(event.target);
    const effort = String(fields.get('effort') ?? '');
    const day = view.journal.days.find(({ date }) => date === view.today) ?? { date: view.today };
    const minutes = Number(fields.get('minutes'));
    const done = { kind: routine.kind, minutes, effort: effort === '' ? undefined : Number(effort) };
    const next = withWork(day, done);
    if (next === day) {
      this.said = say('routine.dayFull');
      return;
    }
    if (!(await act.putDay({ ...next, editedAt: act.instant() }))) return;
    this.ticked = new Set([...this.ticked].filter((key) => !key.startsWith(`${routine.id} `)));
    this.dayBefore = day;
    this.said = say('routine.logged', { ms: minutes * MINUTE_MS, kind: routine.kind });
  }

  async #takeBack({ view, act }: App): Promise<void> {
    const { dayBefore: before } = this;
    if (!before) return;
    const { work: _, ...now } = view.journal.days.find(({ date }) => date === before.date) ?? before;
    await act.putDay({ ...now, ...(before.work ? { work: before.work } : {}), editedAt: act.instant() });
    this.dayBefore = undefined;
    this.said = say('routine.takenBack');
  }

  async #close(said: string): Promise<void> {
    this.writing = undefined;
    this.dayBefore = undefined;
    this.said = said;
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.new')?.focus();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-routines': LarkRoutines;
  }
}

import type { DayEntry } from '@larkhold/engine';
import { choiceOf, tickOf } from '@larkhold/ui';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../../shell/app-context.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { builtInRoutines } from './built-in-routines.ts';
import { type Routine, readRoutine, withWork } from './routine.ts';

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
    const built = builtInRoutines.filter(({ id }) => own.every((one) => one.id !== id));
    return html`<div class="routines">
        ${[...built, ...own].map((routine) => this.#routine(app, routine, own.includes(routine)))}
      </div>
      <p role="status">${this.said}</p>
      ${this.dayBefore ? html`<button class="quiet" @click=${() => this.#takeBack(app)}>Take it back</button>` : nothing}
      ${
        writing
          ? this.#form(app, writing)
          : html`<button class="new" @click=${() => this.#write({ id: app.act.newId(), kind: 'strength', title: '', lines: '', minutes: '15' })}>
              New routine
            </button>`
      }`;
  }

  #routine(app: App, routine: Routine, isOwn: boolean) {
    const { id, title, kind, minutes, lines } = routine;
    const keyOf = (at: number) => `${id} ${at}`;
    return html`<details>
      <summary><span>${title} <span class="dim small">${kind} · ${minutes} min</span></span></summary>
      ${lines.map((line, at) =>
        tickOf(line, this.ticked.has(keyOf(at)), (isOn) => {
          const ticked = new Set(this.ticked);
          if (isOn) ticked.add(keyOf(at));
          else ticked.delete(keyOf(at));
          this.ticked = ticked;
        }),
      )}
      <form class="row" @submit=${(event: SubmitEvent) => this.#log(event, app, routine)}>
        <label>Minutes <input name="minutes" type="number" inputmode="numeric" min="1" max="240" required .value=${String(minutes)} /></label>
        <label>Effort, 0 to 10 <input name="effort" type="number" inputmode="decimal" min="0" max="10" step="0.5" placeholder="not said" /></label>
        <button>Log as ${kind}</button>
        <button type="button" class="quiet" aria-label="Change: ${title}" @click=${() => this.#write({ ...routine, lines: lines.join('\n'), minutes: String(minutes) })}>Change</button>
        ${isOwn ? html`<button type="button" class="quiet" aria-label="Remove: ${title}" @click=${() => this.#remove(app, routine)}>Remove</button>` : nothing}
      </form>
    </details>`;
  }

  #form(app: App, writing: Writing) {
    const change = (changes: Partial<Writing>) => {
      this.writing = { ...(this.writing ?? writing), ...changes };
    };
    const typed =
      (name: 'title' | 'lines' | 'minutes') =>
      ({ target }: Event) => {
        if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement)
          change({ [name]: target.value });
      };
    return html`<form class="writing" @submit=${(event: Event) => this.#save(event, app)}>
      <label>Title <input class="title" maxlength="120" .value=${writing.title} @input=${typed('title')} /></label>
      ${choiceOf('Kind', writing.kind, { strength: 'Strength', mobility: 'Mobility', fitness: 'Fitness' }, (kind) => change({ kind }))}
      <label>One exercise on each line <textarea rows="5" .value=${writing.lines} @input=${typed('lines')}></textarea></label>
      <label>Minutes it takes <input inputmode="numeric" .value=${writing.minutes} @input=${typed('minutes')} /></label>
      <div class="row">
        <button class="main">Keep it</button>
        <button type="button" class="quiet" @click=${() => this.#close('')}>Leave it</button>
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
    if (!isThere && own.length >= 30) {
      this.said = 'Not kept: there are 30 routines. Remove one first.';
      return;
    }
    const { routine } = read;
    const isKept = await act.changeKit(({ routines = [] }) => ({
      routines: isThere ? routines.map((one) => (one.id === routine.id ? routine : one)) : [...routines, routine],
    }));
    if (!isKept) return;
    await this.#close(`Kept: ${read.routine.title}.`);
  }

  async #remove({ act }: App, routine: Routine): Promise<void> {
    await act.changeKit(({ routines = [] }) => ({ routines: routines.filter(({ id }) => id !== routine.id) }));
    await this.#close(`Removed: ${routine.title}.`);
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
      this.said = 'Not logged: the day is full.';
      return;
    }
    if (!(await act.putDay({ ...next, editedAt: act.instant() }))) return;
    this.ticked = new Set([...this.ticked].filter((key) => !key.startsWith(`${routine.id} `)));
    this.dayBefore = day;
    this.said = `Logged today: ${minutes} min of ${routine.kind}.`;
  }

  async #takeBack({ view, act }: App): Promise<void> {
    const { dayBefore: before } = this;
    if (!before) return;
    const { work: _, ...now } = view.journal.days.find(({ date }) => date === before.date) ?? before;
    await act.putDay({ ...now, ...(before.work ? { work: before.work } : {}), editedAt: act.instant() });
    this.dayBefore = undefined;
    this.said = 'Taken back.';
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

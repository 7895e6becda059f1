import { emptySeason, type Season } from '@larkhold/engine';
import { formatDay, say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { PlaceElement } from '../../shell/place-element.ts';
import { type SeasonList, withOne, withoutOne } from './edit-season.ts';
import { seasonFold } from './season-fold.ts';
import { seasonStyles } from './season-styles.ts';

/** What a list is called, and what it does. */
interface Words {
  title: string;
  about: string;
}

/** The change that a season's form asks for: the season as it will be. */
export type SeasonChange = CustomEvent<{ season: Season; isRemoval: boolean }>;

/**
 * Competitions, rest days, tests and coaches' days of a season: each listed, removed at a press, and added by a small form.
 *
 * @prop season what the archer wrote; undefined while nobody did
 * @event season-change detail `{ season, isRemoval }`
 */
@customElement('season-lists')
export class SeasonLists extends PlaceElement {
  static override styles = [...PlaceElement.styles, seasonStyles];

  @property({ attribute: false }) season: Season | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { competitions, restDays, tests, dated } = this.#own();
    const programs = app.view.programs.filter(({ kind }) => kind === 'test');
    return html`${this.#section('competitions', { title: say('plan.competitions'), about: say('plan.competitionsAbout') }, competitions.map(competitionWords), this.#competitionForm(app.view.today))}
      ${this.#section('restDays', { title: say('plan.free'), about: say('plan.freeAbout') }, restDays.map(restWords), this.#restForm(app.view.today))}
      ${this.#section(
        'tests',
        { title: say('plan.tests'), about: say('plan.testsAbout') },
        tests.map(({ day, program }) => say('plan.testOn', { title: program.title, day })),
        this.#testForm(
          app.view.today,
          programs.map(({ title }) => title),
        ),
      )}
      ${
        dated.length === 0
          ? nothing
          : this.#section(
              'dated',
              { title: say('plan.coach'), about: say('plan.coachAbout') },
              dated.map(({ by, from, to, sessions }) =>
                say('plan.coachDays', { by, from, to, sessions: sessions.length }),
              ),
              nothing,
            )
      }`;
  }

  #own(): Season {
    return this.season ?? emptySeason(say('plan.mySeason'));
  }

  #section(list: SeasonList, { title, about }: Words, things: readonly string[], form: unknown) {
    const inside = html`<ul class="things">
        ${things.map(
          (thing, at) => html`<li>
            ${thing}
            <button class="quiet" aria-label=${say('plan.removeOf', { thing })} @click=${() => this.#give(withoutOne(this.#own(), list, at), true)}>${say('plan.remove')}</button>
          </li>`,
        )}
      </ul>
      <p class="dim">${about}</p>
      ${form}`;
    const [first = ''] = things;
    const line = things.length === 0 ? say('plan.noneYet') : say('plan.firstOf', { first, more: things.length - 1 });
    return seasonFold(list, { title, line }, inside);
  }

  #competitionForm(today: string) {
    return html`<form @submit=${(event: SubmitEvent) => {
      const { text, form } = fieldsOf(event);
      const importance = text('importance') as Season['competitions'][number]['importance'];
      const lastDay = text('lastDay') === '' ? {} : { lastDay: text('lastDay') };
      this.#add(
        form,
        withOne(this.#own(), 'competitions', { title: text('title'), day: text('day'), ...lastDay, importance }),
      );
    }}>
      <div class="fields">
        ${field(say('plan.name'), html`<input name="title" required maxlength="120" autocomplete="off" />`)}
        ${field(say('plan.on'), html`<input name="day" type="date" required min=${today} />`)}
        ${field(say('plan.lastDay'), html`<input name="lastDay" type="date" min=${today} />`)}
        ${field(say('plan.importance'), html`<select name="importance"><option value="main">${say('plan.main')}</option><option value="middle">${say('plan.middle')}</option><option value="minor">${say('plan.minor')}</option></select>`)}
      </div>
      <div class="row"><button aria-label="${say('plan.competitions')}: ${say('plan.add')}">${say('plan.add')}</button></div>
    </form>`;
  }

  #restForm(today: string) {
    return html`<form @submit=${(event: SubmitEvent) => {
      const { text, form } = fieldsOf(event);
      const why = text('why') === '' ? {} : { why: text('why') };
      this.#add(form, withOne(this.#own(), 'restDays', { from: text('from'), to: text('to'), ...why }));
    }}>
      <div class="fields">
        ${field(say('plan.from'), html`<input name="from" type="date" required min=${today} />`)}
        ${field(say('plan.to'), html`<input name="to" type="date" required min=${today} />`)}
        ${field(say('plan.why'), html`<input name="why" maxlength="200" autocomplete="off" />`)}
      </div>
      <div class="row"><button aria-label="${say('plan.free')}: ${say('plan.add')}">${say('plan.add')}</button></div>
    </form>`;
  }

  #testForm(today: string, titles: readonly string[]) {
    return html`<form @submit=${(event: SubmitEvent) => {
      const { text, form } = fieldsOf(event);
      const program = this.app?.view.programs.find(({ title }) => title === text('program'));
      if (!program) return;
      const { id, title } = program;
      this.#add(
        form,
        withOne(this.#own(), 'tests', { day: text('day'), program: id === undefined ? { title } : { id, title } }),
      );
    }}>
      <div class="fields">
        ${field(say('plan.tests'), html`<select name="program">${titles.map((title) => html`<option value=${title}>${title}</option>`)}</select>`)}
        ${field(say('plan.on'), html`<input name="day" type="date" required min=${today} />`)}
      </div>
      <div class="row"><button aria-label="${say('plan.tests')}: ${say('plan.add')}">${say('plan.add')}</button></div>
    </form>`;
  }

  #add(form: HTMLFormElement, season: Season): void {
    if (this.#give(season, false)) form.reset();
  }

  #give(season: Season, isRemoval: boolean): boolean {
    const detail = { season, isRemoval };
    return this.dispatchEvent(
      new CustomEvent('season-change', { detail, bubbles: true, composed: true, cancelable: true }),
    );
  }
}

function field(words: string, control: unknown) {
  return html`<label>${words} ${control}</label>`;
}

function fieldsOf(event: SubmitEvent): { form: HTMLFormElement; text: (name: string) => string } {
  event.preventDefault();
  const form = event.target as HTMLFormElement;
  const read = new FormData(form);
  return { form, text: (name) => String(read.get(name) ?? '').trim() };
}

function competitionWords({ title, day, lastDay, importance: grade }: Season['competitions'][number]): string {
  const importance = grade === 'minor' ? 'other' : grade;
  if (lastDay === undefined || lastDay === day) return say('plan.competition', { title, day, importance });
  return say('plan.competitionDays', { title, day, last: lastDay, importance });
}

function restWords({ from, to, why }: Season['restDays'][number]): string {
  if (from === to && !why) return formatDay(from, 'shortYear');
  return why ? say('plan.freeDaysWhy', { from, to, why }) : say('plan.freeDays', { from, to });
}

declare global {
  interface HTMLElementTagNameMap {
    'season-lists': SeasonLists;
  }
}

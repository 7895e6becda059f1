import { builtInPrograms, type DatedSessions, dayNumber, dayOfNumber, type Program } from '@larkhold/engine';
import { controlStyles, pageStyles } from '@larkhold/ui';
import { formatDay, say, sessionWords } from '@larkhold/words';
import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { typedIn } from '../../shell/typed-in.ts';

type Session = DatedSessions['sessions'][number];
/** What an answer says of days: everything but who wrote it and when. */
export type AnswerDays = Pick<DatedSessions, 'from' | 'to' | 'sessions'>;

/** Days that an answer speaks of unless others are chosen, and at most. */
const USUAL_DAYS = 28;
const MOST_DAYS = 62;
const MOST_PROGRAMS = 4;

/**
 * The days that a coach writes for the coming weeks: a date, a program, minutes; and the same weekday every week at a tick.
 *
 * @prop programs that the archer is on, and one that the answer brings
 * @prop firstDay the first day that may be written, ISO 8601
 * @event days-change detail `AnswerDays`, or undefined while there is no day
 */
@customElement('answer-days')
export class AnswerDaysForm extends LitElement {
  static override styles = [
    pageStyles,
    controlStyles,
    css`
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 11rem), 1fr));
        gap: 0.8rem 1.2rem;
        align-items: end;
        margin-top: 0.6rem;
      }
      .fields :is(input, select) {
        display: block;
        width: 100%;
        margin-top: 0.3rem;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        gap: 0.2rem 0.8rem;
        align-items: center;
        justify-content: space-between;
        border-bottom: 1px solid var(--rule);
      }
    `,
  ];

  @property({ attribute: false }) programs: readonly Program[] = [];
  @property() firstDay = '';
  @state() private from = '';
  @state() private to = '';
  @state() private sessions: readonly Session[] = [];
  @state() private said = '';

  override render() {
    const from = this.from || this.firstDay;
    if (from === '') return nothing;
    const to = this.#lastDay(from);
    return html`<h3>${say('coach.days')}</h3>
      <p class="dim small">${say('coach.daysAbout')}</p>
      <div class="fields">
        ${dateField(say('coach.from'), 'from', from, (day) => {
          this.from = day;
          this.#tell();
        })}
        ${dateField(say('coach.to'), 'to', to, (day) => {
          this.to = day;
          this.#tell();
        })}
      </div>
      <ul>
        ${this.sessions.map(
          (session) => html`<li>
          ${sessionWords(session)}
          <button type="button" class="quiet" aria-label=${say('coach.removeDay', { day: formatDay(session.day, 'short') })} @click=${() => this.#set(this.sessions.filter((one) => one !== session))}>${say('plan.remove')}</button>
        </li>`,
        )}
      </ul>
      <div class="fields">
        <label>${say('coach.day')} <input name="day" type="date" min=${from} max=${to} .value=${from} /></label>
        <label>${say('coach.program')} <select name="program">${this.#rack().map(({ title }) => html`<option value=${title}>${title}</option>`)}</select></label>
        <label>${say('coach.minutes')} <input name="minutes" type="number" inputmode="numeric" min="1" max="240" /></label>
      </div>
      <label class="tick"><input name="weekly" type="checkbox" />${say('coach.weekly')}</label>
      <p role="status">${this.said}</p>
      <button type="button" @click=${() => this.#add(from, to)}>${say('coach.addDay')}</button>`;
  }

  #lastDay(from: string): string {
    return this.to || dayOfNumber(dayNumber(from) + USUAL_DAYS - 1);
  }

  /** The archer's own first, then those that everybody has. */
  #rack(): Program[] {
    const own = new Set(this.programs.map(({ title }) => title));
    return [...this.programs, ...builtInPrograms.filter(({ title }) => !own.has(title))];
  }

  #value(name: string): string {
    const field = this.renderRoot.querySelector(`[name="${name}"]`);
    return field instanceof HTMLInputElement || field instanceof HTMLSelectElement ? field.value : '';
  }

  #add(from: string, to: string): void {
    const day = this.#value('day');
    const isIn = from <= day && day <= to && dayNumber(to) - dayNumber(from) < MOST_DAYS;
    const program = this.#rack().find(({ title }) => title === this.#value('program'));
    this.said = isIn ? '' : say('coach.outside', { from, to });
    if (!isIn || !program) return;
    const weekly = this.renderRoot.querySelector<HTMLInputElement>('[name="weekly"]')?.checked;
    const { id, title } = program;
    const minutes = Math.round(Number(this.#value('minutes')));
    const given = minutes >= 1 && minutes <= 240 ? { minutes } : {};
    let next = this.sessions;
    for (let number = dayNumber(day); number <= dayNumber(to); number += 7) {
      const date = dayOfNumber(number);
      const before = next.find((one) => one.day === date);
      if (before && before.programs.length >= MOST_PROGRAMS) this.said = say('coach.dayFull');
      else {
        const programs = [...(before?.programs ?? []), id === undefined ? { title } : { id, title }];
        next = [...next.filter((one) => one !== before), { ...before, day: date, programs, ...given }];
      }
      if (!weekly) break;
    }
    this.#set(next.toSorted((a, b) => (a.day < b.day ? -1 : 1)));
  }

  #set(sessions: readonly Session[]): void {
    this.sessions = sessions;
    this.#tell();
  }

  #tell(): void {
    const from = this.from || this.firstDay;
    const to = this.#lastDay(from);
    const sessions = this.sessions.filter(({ day }) => from <= day && day <= to);
    const detail: AnswerDays | undefined = sessions.length === 0 ? undefined : { from, to, sessions };
    this.dispatchEvent(new CustomEvent('days-change', { detail }));
  }
}

function dateField(words: string, name: string, value: string, change: (day: string) => void) {
  return html`<label
    >${words}
    <input
      name=${name}
      type="date"
      .value=${value}
      @change=${(event: Event) => {
        if (typedIn(event) !== '') change(typedIn(event));
      }}
  /></label>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'answer-days': AnswerDaysForm;
  }
}

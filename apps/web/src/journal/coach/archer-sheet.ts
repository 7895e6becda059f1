import {
  answerHandOver,
  formatHandOver,
  type HandOver,
  isoWeek,
  type Program,
  parseProgram,
  weekTotals,
} from '@larkhold/engine';
import { tableStyles } from '@larkhold/ui';
import { formatCount, formatDay, formatDuration, formatRow, problemWords, say } from '@larkhold/words';
import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../../shell/app-context.ts';
import { localWhen } from '../../shell/local-when.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { PostElement } from '../../shell/post-element.ts';
import { fileNameOf } from '../../shell/save-file.ts';
import '@larkhold/ui';
import './answer-days.ts';
import { shiftWeek } from '@larkhold/engine';
import { weekTitle } from '@larkhold/words';
import { typedIn } from '../../shell/typed-in.ts';
import type { AnswerDays } from './answer-days.ts';

/** Weeks that the sheet lists, the last one first. */
const WEEKS_SHOWN = 8;
/** Notes that the sheet lists. */
const NOTES_SHOWN = 20;
/** How many drills are drawn at most. */
const RIBBONS_SHOWN = 6;

/**
 * One archer's hand-over as a coach reads it, and the answer.
 *
 * @prop handOver the archer's file; it is never changed
 * @prop text the file, whole, as it was read
 * @prop owner the archer's name in the coach's box, where the hand-over came by it
 */
@customElement('archer-sheet')
export class ArcherSheet extends PostElement {
  static override styles = [
    ...PlaceElement.styles,
    tableStyles,
    css`
      .ribbons {
        margin-top: 0.9rem;
      }
      .ribbons li {
        display: flex;
        flex-wrap: wrap;
        gap: 0.2rem 1rem;
        align-items: center;
        padding: 0.35rem 0;
      }
      .ribbons span {
        flex: 0 0 6.5rem;
      }
      .ribbons lark-hold-ribbon {
        flex: 1 1 12rem;
        min-width: 0;
      }
      table {
        margin: 0.8rem 0;
      }
      th,
      td {
        padding: 0.4rem 0;
        text-align: right;
      }
      th:first-child {
        text-align: left;
      }
      thead th {
        color: var(--dim);
        font-size: var(--text-small);
      }
      form {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 0.9rem;
        margin-top: 0.8rem;
      }
      form label {
        font-weight: 600;
      }
      label > :is(input, select),
      textarea {
        display: block;
        width: 100%;
      }
      .text {
        white-space: pre-line;
        overflow-wrap: anywhere;
      }
      dt {
        margin-top: 0.5rem;
        color: var(--dim);
        font-size: var(--text-small);
      }
      h3 {
        margin: 1.1rem 0 0.4rem;
      }
    `,
  ];

  @property({ attribute: false }) handOver: HandOver | undefined;
  @property({ attribute: false }) text = '';
  @property({ attribute: false }) owner: string | undefined;
  @state() private by = '';
  @state() private comment = '';
  @state() private program: Program | undefined;
  @state() private days: AnswerDays | undefined;
  @state() private said = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    // A later file of the archer who is being answered leaves what is typed as it is.
    if (!changed.has('handOver') || changed.get('handOver')?.archerId === this.handOver?.archerId) return;
    this.comment = '';
    this.program = undefined;
    this.days = undefined;
    this.said = '';
  }

  override render() {
    const { app, handOver } = this;
    if (!app || !handOver) return nothing;
    const page = handOver.weeks.at(-1);
    return html`<section aria-labelledby="archer">
      <h2 id="archer">${handOver.archer}</h2>
      <p class="dim">
        ${say(handOver.includesNotes ? 'coach.span' : 'coach.spanNoNotes', { from: handOver.from, to: handOver.to })}
      </p>
      <dl>
        ${this.#words(say('coach.majorGoal'), handOver.majorGoal?.text)} ${this.#words(say('coach.lastGoal'), page?.goal)}
        ${this.#words(say('coach.focus'), page?.focus)}
        ${this.#words(say('coach.programs'), formatRow(handOver.programs.map(({ title }) => title)))}
      </dl>
      ${this.#plan(handOver)} ${this.#weeks(handOver)} ${this.#ribbons(handOver)} ${this.#notes(handOver)} ${this.#answers(handOver)} ${this.#form(app, handOver)}
    </section>`;
  }

  #words(name: string, text: string | undefined) {
    return text ? html`<dt>${name}</dt><dd class="text">${text}</dd>` : nothing;
  }

  #plan({ plan }: HandOver) {
    if (!plan) return nothing;
    const { planned, done, keptDays } = plan;
    const amount = (one: { reps: number; seconds: number; programs: readonly string[] }) =>
      one.programs.length === 0
        ? say('coach.nothing')
        : say('coach.amount', { reps: one.reps, held: one.seconds * 1000 });
    return html`<h3>${say('coach.planned')}</h3>
      <p>
        ${say('coach.plannedSum', {
          ...{ plannedDays: planned.days, plannedReps: planned.reps, plannedHeld: planned.seconds * 1000 },
          ...{ doneDays: done.days, doneReps: done.reps, doneHeld: done.seconds * 1000 },
          ...{ kept: keptDays, ofDays: planned.days },
        })}
      </p>
      <details>
        <summary>${say('coach.byDay')}</summary>
        <table aria-label=${say('coach.planned')}>
          <thead>
            <tr>
              <th scope="col">${say('coach.day')}</th>
              <th scope="col">${say('coach.plannedCol')}</th>
              <th scope="col">${say('coach.doneCol')}</th>
            </tr>
          </thead>
          <tbody>
            ${plan.days.map((day) => html`<tr><th scope="row">${formatDay(day.date, 'short')}</th><td>${amount(day.planned)}</td><td>${amount(day.done)}</td></tr>`)}
          </tbody>
        </table>
      </details>`;
  }

  #weeks(handOver: HandOver) {
    const last = isoWeek(handOver.to);
    const first = isoWeek(handOver.from);
    const weeks = Array.from({ length: WEEKS_SHOWN }, (_, index) => shiftWeek(last, -index)).filter(
      (week) => week >= first,
    );
    return html`<table aria-label=${say('coach.byWeek')}>
      <thead>
        <tr>
          <th scope="col">${say('coach.week')}</th>
          <th scope="col">${say('coach.drills')}</th>
          <th scope="col">${say('coach.held')}</th>
          <th scope="col">${say('coach.fullDraw')}</th>
          <th scope="col">${say('coach.arrows')}</th>
        </tr>
      </thead>
      <tbody>
        ${weeks.map((week) => {
          const { drillsCount, heldCount, repsCount, holdMs, arrowsCount } = weekTotals(handOver, week);
          return html`<tr>
            <th scope="row">${weekTitle(week)}</th>
            <td>${formatCount(drillsCount)}</td>
            <td>${formatCount(heldCount)}/${formatCount(repsCount)}</td>
            <td>${formatDuration(holdMs)}</td>
            <td>${formatCount(arrowsCount)}</td>
          </tr>`;
        })}
      </tbody>
    </table>
    <p class="dim small">${say('coach.heldAbout')}</p>`;
  }

  /** The last drills on one scale, the newest on top. */
  #ribbons({ drills }: HandOver) {
    const last = drills
      .filter(({ reps }) => reps.length > 0)
      .toSorted((one, other) => other.startedAt.localeCompare(one.startedAt))
      .slice(0, RIBBONS_SHOWN);
    const tallestMs = Math.max(1, ...last.flatMap(({ reps }) => reps.map(({ prescribedMs }) => prescribedMs)));
    return html`<ul class="ribbons" aria-label=${say('coach.drills')}>
      ${last.map(
        ({ date, reps }) => html`<li>
          <span class="dim small">${formatDay(date, 'short')}</span>
          <lark-hold-ribbon .reps=${reps} .tallestMs=${tallestMs} .unit=${0.045}></lark-hold-ribbon>
        </li>`,
      )}
    </ul>`;
  }

  #notes(handOver: HandOver) {
    const notes = [...handOver.drills, ...handOver.days]
      .flatMap(({ date, note, pain }) =>
        note || pain ? [{ date, words: [pain ? say('coach.pain') : '', note ?? ''].join(' ').trim() }] : [],
      )
      .sort((a, b) => (a.date < b.date ? 1 : -1))
      .slice(0, NOTES_SHOWN);
    if (notes.length === 0) return nothing;
    return html`<h3>${say('coach.painAndNotes')}</h3>
      <ul>
        ${notes.map(({ date, words }) => html`<li class="text"><span class="dim">${formatDay(date, 'short')}</span> ${words}</li>`)}
      </ul>`;
  }

  #answers({ answers }: HandOver) {
    if (answers.length === 0) return nothing;
    return html`<h3>${say('coach.answers')}</h3>
      ${answers.map(({ by, comment, program }) => html`<p class="text">${by}: ${comment}${program ? say('coach.withProgram', { title: program.title }) : ''}</p>`)}`;
  }

  #form(app: App, handOver: HandOver) {
    return html`<h3>${say('coach.yourAnswer')}</h3>
      <form @submit=${(event: SubmitEvent) => this.#save(event, app, handOver)}>
        <label
          >${say('coach.yourName')}<input
            required
            maxlength="120"
            .value=${this.by}
            @input=${(event: Event) => {
              this.by = typedIn(event);
            }}
        /></label>
        <label
          >${say('coach.comment')}<textarea
            maxlength="4000"
            .value=${this.comment}
            @input=${(event: Event) => {
              this.comment = typedIn(event);
            }}
          ></textarea>
        </label>
        ${this.#rack(app)}
        <file-drop words=${say('coach.attach')} @files-take=${this.#attach}></file-drop>
        ${
          this.program
            ? html`<p>
                ${say('coach.withProgram', { title: this.program.title })}
                <button
                  type="button"
                  class="quiet"
                  @click=${() => {
                    this.program = undefined;
                  }}
                >
                  ${say('coach.leaveOut')}
                </button>
              </p>`
            : nothing
        }
        <answer-days
          .programs=${this.program ? [this.program, ...handOver.programs] : handOver.programs}
          .firstDay=${app.view.today}
          @days-change=${(event: CustomEvent<AnswerDays | undefined>) => {
            this.days = event.detail;
          }}
        ></answer-days>
        <p role="status">${this.said}</p>
        <div class="row">
          ${this.owner ? html`<button class="main" value="box">${say('post.sendAnswer')}</button>` : nothing}
          <button class=${this.owner ? '' : 'main'}>${say('coach.saveAnswer')}</button>
          <button type="button" class="quiet" @click=${() => this.#forget(app, handOver)}>${say('post.forget', { archer: handOver.archer })}</button>
        </div>
        ${this.#lastAnswer()}
      </form>`;
  }

  #lastAnswer() {
    const { answer } = this.post?.desk?.archers[this.owner ?? ''] ?? {};
    return answer ? html`<p class="dim small">${say('post.lastAnswer', localWhen(answer.madeAt))}</p>` : nothing;
  }

  /** Programs of the coach's own rack, to go with the answer. */
  #rack({ view }: App) {
    return html`<label
      >${say('coach.fromRack')}
      <select
        name="rack"
        .value=${this.program?.id ?? ''}
        @change=${(event: Event) => {
          const { value } = event.target as HTMLSelectElement;
          this.program = view.programs.find(({ id }) => id === value);
        }}
      >
        <option value="">${say('coach.noProgram')}</option>
        ${view.programs.map(({ id, title }) => (id === undefined ? nothing : html`<option value=${id} ?selected=${id === this.program?.id}>${title}</option>`))}
      </select>
    </label>`;
  }

  async #forget({ act }: App, { archerId, archer }: HandOver): Promise<void> {
    if (this.owner !== undefined) await this.post?.forget(this.owner);
    await act.removeHandOver({ id: archerId, archer, text: this.text });
  }

  readonly #attach = async ({ detail }: CustomEvent<readonly File[]>): Promise<void> => {
    const [file] = detail;
    if (!file) return;
    const parsed = parseProgram(await file.text());
    const problem = parsed.ok ? undefined : parsed.problems[0];
    if (parsed.ok) this.program = parsed.program;
    this.said = parsed.ok
      ? ''
      : say('coach.notProgram', {
          file: file.name,
          line: problem?.line ?? 1,
          column: problem?.column ?? 1,
          problem: problem ? problemWords(problem) : '',
        });
  };

  #save(event: SubmitEvent, app: App, handOver: HandOver): void {
    event.preventDefault();
    const [by, comment] = [this.by.trim(), this.comment.trim()];
    if (by === '' || (comment === '' && !this.program && !this.days)) {
      this.said = say('coach.needs');
      return;
    }
    const { program, days } = this;
    const madeAt = app.act.instant();
    const dated = days && { by, madeAt, ...days, sessions: [...days.sessions] };
    const answer = { by, comment, madeAt, ...(program ? { program } : {}), ...(dated ? { dated } : {}) };
    const text = formatHandOver(answerHandOver(handOver, answer));
    if (event.submitter instanceof HTMLButtonElement && event.submitter.value === 'box') {
      void this.#send(text, handOver);
      return;
    }
    const name = `${fileNameOf(handOver.archer)}-${handOver.to}.answer.json`;
    app.act.saveFile(name, text);
    this.said = say('coach.savedAs', { file: name, archer: handOver.archer });
  }

  async #send(text: string, { archer }: HandOver): Promise<void> {
    if (this.owner === undefined) return;
    const trouble = await this.post?.answer(this.owner, text);
    this.said = trouble ? await this.troubleSaid(trouble) : say('post.answerSent', { archer });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'archer-sheet': ArcherSheet;
  }
}

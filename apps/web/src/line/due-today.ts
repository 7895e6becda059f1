import { type Due, findProgram, idOf, isDone, type Program } from '@larkhold/engine';
import { dueWords, pieces, presentWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { PlaceElement } from '../shell/place-element.ts';

type DueProgram = Exclude<Due, { kind: 'rest' }>;

/**
 * Whether all there is to say of what is due is how often one should drill: it can wait below the numbers.
 * @param view the app's
 * @returns false where a season, a test, a coach or another program has a word for today
 */
export function isDueAsEver({ season, chosen, programs }: App['view']): boolean {
  const [due, ...others] = season.due;
  if (due?.kind !== 'program' || others.length > 0 || due.lighter) return false;
  return !season.isOwn && due.because.rule === 'weekday' && findProgram(due.program, programs) === chosen;
}

/** Why the program on the line is today's, and what else is due. */
@customElement('due-today')
export class DueToday extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      p + p,
      ul {
        margin-top: 0.15rem;
      }
      button.quiet {
        min-height: 0;
        padding: 0.1rem 0;
      }
    `,
  ];

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { season, chosen, programs, kit, today } = app.view;
    const due = season.due.filter((one) => one.kind !== 'rest');
    const own = due.find((one) => findProgram(one.program, programs) === chosen);
    const others = due.filter((one) => one !== own);
    const isTaken = kit.programDay === today && kit.programId === idOf(chosen) && !own;
    return html`${own ? dueWords(own, season).map((words) => html`<p class="dim">${words}</p>`) : nothing}
      ${isTaken ? html`<p class="dim">${takenWords(others)}</p>` : nothing}
      ${!isTaken && others.length > 0 ? html`<ul>${others.map((one) => html`<li>${this.#other(app, one)}</li>`)}</ul>` : nothing}`;
  }

  #other({ view, act }: App, { program: ref }: DueProgram) {
    const program = findProgram(ref, view.programs);
    if (!program) return nothing;
    if (isDone(program, view.journal.drills, view.today)) return say('due.doneToo', { title: program.title });
    return pieces('due.then', { title: this.#button(program, () => act.chooseProgram(idOf(program))) });
  }

  #button({ title }: Program, press: () => void) {
    return html`<button class="quiet" @click=${press}>${title}</button>`;
  }
}

function takenWords(others: readonly DueProgram[]): string {
  if (others.length === 0) return say('due.taken');
  return say('due.takenInstead', { titles: presentWords().list(others.map(({ program }) => program.title)) });
}

declare global {
  interface HTMLElementTagNameMap {
    'due-today': DueToday;
  }
}

import {
  createHandOver,
  createJournal,
  formatCalendar,
  formatDaysCsv,
  formatDrillsCsv,
  formatHandOver,
  formatRepsCsv,
  type Journal,
  mergeJournals,
  shiftDay,
} from '@larkhold/engine';
import { archerOf } from '@larkhold/store';
import { tickOf } from '@larkhold/ui';
import { calendarWords, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../app-context.ts';
import { archerIdOf } from '../archer-id.ts';
import { localWhen } from '../local-when.ts';
import { PlaceElement } from '../place-element.ts';
import { PostElement } from '../post-element.ts';
import { fileNameOf } from '../save-file.ts';
import { saveJournal } from '../save-journal.ts';
import { typedIn } from '../typed-in.ts';

/** Days that a hand-over holds unless others are chosen: four weeks. */
const USUAL_SPAN_DAYS = 28;

/**
 * Hands the journal out as files: tables, a calendar, a backup, another device's copy, and a hand-over for a coach.
 *
 * @prop settle writes down what was just typed
 */
@customElement('file-out')
export class FileOut extends PostElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      form {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 0.8rem;
        margin-top: 0.6rem;
      }
      .span {
        display: flex;
        flex-wrap: wrap;
        gap: 0.8rem;
      }
      .holds {
        border-top: 0;
      }
      .holds summary {
        min-height: var(--touch);
      }
      .tick + .tick {
        margin-top: -0.5rem;
      }
      label > input:not([type='checkbox']) {
        display: block;
      }
      .all {
        container-type: inline-size;
        margin-top: 1rem;
      }
      .all li {
        display: grid;
        grid-template-columns: minmax(0, 18rem) minmax(0, 1fr);
        gap: 0.3rem 1rem;
        align-items: center;
        padding: 0.5rem 0;
        border-top: 1px solid var(--rule);
      }
      @container (max-width: 34rem) {
        .all li {
          grid-template-columns: minmax(0, 1fr);
        }
      }
    `,
  ];

  @property({ attribute: false }) settle: () => Promise<void> = async () => undefined;
  @state() private from: string | undefined;
  @state() private to: string | undefined;
  @state() private name: string | undefined;
  @state() private includesNotes = false;
  @state() private said = '';
  /** Told unless the archer takes the tick away: who trains somebody has to know. */
  @state() private includesPain = true;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { today } = app.view;
    const to = this.to ?? today;
    const from = this.from ?? shiftDay(today, 1 - USUAL_SPAN_DAYS);
    const name = this.name ?? app.view.kit.archer?.name ?? '';
    const { coach, sent } = this.post?.archer ?? {};
    return html`<details>
        <summary>${say('file.handOver')}</summary>
        <form @submit=${(event: SubmitEvent) => this.#handOver(event, app, { from, to, name })}>
          <label
            >${say('file.name')}<input
              required
              maxlength="120"
              autocomplete="off"
              .value=${name}
              @input=${(event: Event) => {
                this.name = typedIn(event);
              }}
          /></label>
          <div class="span">
            ${this.#dayField(say('file.from'), from, to, (day) => {
              this.from = day;
            })}
            ${this.#dayField(say('file.to'), to, today, (day) => {
              this.to = day;
            })}
          </div>
          ${tickOf(say('file.withNotes'), this.includesNotes, (isOn) => {
            this.includesNotes = isOn;
          })}
          ${tickOf(say('file.withPain'), this.includesPain, (isOn) => {
            this.includesPain = isOn;
          })}
          <details class="holds">
            <summary>${say('file.holdsTitle')}</summary>
            <p class="dim small">${say('file.holds')}</p>
          </details>
          <div class="row">
            ${coach === undefined ? nothing : html`<button class="main" value="box">${say('post.put', { coach })}</button>`}
            <button class=${coach === undefined ? 'main' : ''}>${say('file.saveHandOver')}</button>
            ${coach === undefined ? nothing : html`<button type="button" class="quiet" @click=${() => this.#leave()}>${say('post.leave', { coach })}</button>`}
          </div>
          ${coach !== undefined && sent ? html`<p class="dim small">${say('post.lastPut', { coach, ...localWhen(sent.madeAt) })}</p>` : nothing}
          <p role="status">${this.said}</p>
        </form>
      </details>
      <ul class="all">
        ${this.#thing(say('file.backupAll'), say('file.backupIs'), ({ act }) => act.saveBackup())}
        ${this.#thing(say('file.journalFile'), say('file.journalIs'), saveJournal)}
        ${this.#thing(say('file.drillsCsv'), say('file.tableIs'), (now) => save(now, 'drills.csv', formatDrillsCsv(inOrder(now))))}
        ${this.#thing(say('file.repsCsv'), say('file.tableIs'), (now) => save(now, 'reps.csv', formatRepsCsv(inOrder(now))))}
        ${this.#thing(say('file.daysCsv'), say('file.tableIs'), (now) => save(now, 'days.csv', formatDaysCsv(inOrder(now))))}
        ${this.#thing(say('file.calendar'), say('file.calendarIs'), async (now) => {
          const options = { madeAt: now.act.instant(), archerId: await archerIdOf(now), words: calendarWords() };
          save(now, 'calendar.ics', formatCalendar(inOrder(now), options));
        })}
      </ul>`;
  }

  #dayField(words: string, value: string, max: string, change: (day: string) => void) {
    return html`<label
      >${words}<input
        type="date"
        required
        max=${max}
        .value=${value}
        @change=${(event: Event) => {
          if (typedIn(event) !== '') change(typedIn(event));
        }}
    /></label>`;
  }

  #thing(words: string, about: string, press: (app: App) => void | Promise<void>) {
    return html`<li>
      <button
        @click=${async () => {
          await this.settle();
          if (this.app) await press(this.app);
        }}
      >
        ${words}
      </button>
      <span class="dim small">${about}</span>
    </li>`;
  }

  async #handOver(event: SubmitEvent, app: App, span: { from: string; to: string; name: string }): Promise<void> {
    event.preventDefault();
    const name = span.name.trim();
    if (name === '' || span.to < span.from) return;
    await this.settle();
    const archer = { id: await archerIdOf(app), name };
    await app.act.changeKit({ archer });
    const handOver = createHandOver({
      journal: (this.app ?? app).view.journal,
      ...{ archerId: archer.id, archer: archer.name, from: span.from, to: span.to },
      ...{
        madeAt: app.act.instant(),
        includesNotes: this.includesNotes,
        includesPain: this.includesPain,
        programs: [app.view.chosen],
      },
      ...(app.view.season.own ? { season: app.view.season.own, rack: app.view.programs } : {}),
      self: archerOf(app.view.kit),
    });
    const text = formatHandOver(handOver);
    const coach = this.post?.archer?.coach;
    if (coach !== undefined && event.submitter instanceof HTMLButtonElement && event.submitter.value === 'box') {
      const trouble = await this.post?.send(text);
      this.said = trouble ? await this.troubleSaid(trouble) : say('post.isPut', { coach });
    } else app.act.saveFile(`${fileNameOf(archer.name)}-${span.to}.hand-over.json`, text);
  }

  async #leave(): Promise<void> {
    await this.post?.leave();
    this.said = say('post.left');
  }
}

/** The store gives things as they came; a table is read from the first day to the last. */
function inOrder({ view }: App): Journal {
  return mergeJournals(view.journal, createJournal());
}

function save(app: App, kind: string, text: string): void {
  app.act.saveFile(`larkhold-${app.view.today}.${kind}`, text);
}

declare global {
  interface HTMLElementTagNameMap {
    'file-out': FileOut;
  }
}

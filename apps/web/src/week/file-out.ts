import {
  createHandOver,
  formatCalendar,
  formatDaysCsv,
  formatDrillsCsv,
  formatHandOver,
  formatJournal,
  formatRepsCsv,
} from '@larkhold/engine';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../app-context.ts';
import { PlaceElement } from '../place-element.ts';
import { fileNameOf } from '../save-file.ts';
import { shiftDay } from './iso-weeks.ts';

/** Days that a hand-over holds unless others are chosen: four weeks. */
const USUAL_SPAN_DAYS = 28;

/** Hands the journal out as files: tables, a calendar, a backup, another device's copy, and a hand-over for a coach. */
@customElement('file-out')
export class FileOut extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      form {
        display: grid;
        gap: 0.8rem;
        margin-top: 0.6rem;
      }
      .span {
        display: flex;
        flex-wrap: wrap;
        gap: 0.8rem;
      }
      label > input:not([type='checkbox']) {
        display: block;
      }
      .all {
        padding-bottom: 1rem;
      }
    `,
  ];

  @state() private from: string | undefined;
  @state() private to: string | undefined;
  @state() private name: string | undefined;
  @state() private includesNotes = false;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { today } = app.view;
    const to = this.to ?? today;
    const from = this.from ?? shiftDay(today, 1 - USUAL_SPAN_DAYS);
    const name = this.name ?? app.view.kit.archer?.name ?? '';
    return html`<details>
        <summary>Hand over to a coach</summary>
        <form @submit=${(event: Event) => this.#handOver(event, app, { from, to, name })}>
          <label
            >Your name, as you call yourself<input
              required
              maxlength="120"
              autocomplete="off"
              .value=${name}
              @input=${(event: Event) => {
                this.name = textOf(event);
              }}
          /></label>
          <div class="span">
            ${this.#dayField('From', from, to, (day) => {
              this.from = day;
            })}
            ${this.#dayField('To', to, today, (day) => {
              this.to = day;
            })}
          </div>
          <label class="tick"
            ><input
              type="checkbox"
              .checked=${this.includesNotes}
              @change=${(event: Event) => {
                this.includesNotes = event.target instanceof HTMLInputElement && event.target.checked;
              }}
            />Include my notes and reviews</label
          >
          <p class="dim small">Notes stay with you unless this is ticked. Pain and effort always go with the file.</p>
          <div><button class="main">Save the hand-over</button></div>
        </form>
      </details>
      <details>
        <summary>Save as a file</summary>
        <div class="row all">
          <button @click=${() => app.act.saveBackup()}>Backup of everything</button>
          <button @click=${() => this.#saveJournal(app)}>Journal, for another device</button>
          <button @click=${() => save(app, 'drills.csv', formatDrillsCsv(app.view.journal))}>Drills (CSV)</button>
          <button @click=${() => save(app, 'reps.csv', formatRepsCsv(app.view.journal))}>Reps (CSV)</button>
          <button @click=${() => save(app, 'days.csv', formatDaysCsv(app.view.journal))}>Days (CSV)</button>
          <button @click=${() => save(app, 'calendar.ics', formatCalendar(app.view.journal, { madeAt: app.act.instant() }))}>
            Calendar (iCalendar)
          </button>
        </div>
      </details>`;
  }

  #dayField(words: string, value: string, max: string, change: (day: string) => void) {
    return html`<label
      >${words}<input
        type="date"
        required
        max=${max}
        .value=${value}
        @change=${(event: Event) => {
          if (textOf(event) !== '') change(textOf(event));
        }}
    /></label>`;
  }

  /** Marks of removed things go with it, so that another device removes them too. */
  async #saveJournal(app: App): Promise<void> {
    const instant = app.act.instant();
    save(app, 'journal.json', formatJournal(await app.act.storedJournal(), instant));
  }

  async #handOver(event: Event, app: App, span: { from: string; to: string; name: string }): Promise<void> {
    event.preventDefault();
    const archer = { id: app.view.kit.archer?.id ?? app.act.newId(), name: span.name.trim() };
    if (archer.name === '' || span.to < span.from) return;
    await app.act.changeKit({ archer });
    const handOver = createHandOver({
      journal: app.view.journal,
      ...{ archerId: archer.id, archer: archer.name, from: span.from, to: span.to },
      ...{ madeAt: app.act.instant(), includesNotes: this.includesNotes, programs: [app.view.chosen] },
    });
    app.act.saveFile(`${fileNameOf(archer.name)}-${span.to}.hand-over.json`, formatHandOver(handOver));
  }
}

function save(app: App, kind: string, text: string): void {
  app.act.saveFile(`larkhold-${app.view.today}.${kind}`, text);
}

function textOf(event: Event): string {
  return event.target instanceof HTMLInputElement ? event.target.value : '';
}

declare global {
  interface HTMLElementTagNameMap {
    'file-out': FileOut;
  }
}

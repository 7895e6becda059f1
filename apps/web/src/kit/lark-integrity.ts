import type { IntegrityReport } from '@larkhold/store';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import { reportWords } from './report-words.ts';

const tableWords: Readonly<Record<string, string>> = {
  programs: 'Program',
  drills: 'Drill',
  days: 'Day',
  weeks: 'Week page',
  notes: 'Note',
  milestones: 'Milestone',
  single: 'Setting',
};

/** Checks what is kept, on a press, and says what was found. */
@customElement('lark-integrity')
export class LarkIntegrity extends PlaceElement {
  @state() private report: IntegrityReport | undefined;
  @state() private said = '';

  override render() {
    const { app, report } = this;
    if (!app) return nothing;
    return html`<div class="row">
        <button @click=${this.#check}>Check what is kept</button>
        <button class="quiet" @click=${this.#dump}>Save all that is on the disk, as it is</button>
      </div>
      <div role="status">
        ${report ? reportWords(report).map((words) => html`<p>${words}</p>`) : nothing} ${this.said ? html`<p>${this.said}</p>` : nothing}
      </div>
      ${
        report && report.setAside.length > 0
          ? html`<ul>
            ${report.setAside.map(({ table, key, message }) => html`<li>${tableWords[table] ?? table} ${key}: ${message}</li>`)}
          </ul>`
          : nothing
      }`;
  }

  readonly #check = async (): Promise<void> => {
    this.report = await this.app?.act.checkStored();
  };

  readonly #dump = async (): Promise<void> => {
    this.said = (await this.app?.act.saveDump()) ?? '';
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-integrity': LarkIntegrity;
  }
}

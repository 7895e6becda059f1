import type { IntegrityReport } from '@larkhold/store';
import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import { kitStyles } from './kit-styles.ts';
import { reportWords } from './report-words.ts';

const tableWords = {
  programs: 'report.oneProgram',
  drills: 'report.oneDrill',
  days: 'report.oneDay',
  weeks: 'report.oneWeek',
  notes: 'report.oneNote',
  milestones: 'report.oneMilestone',
  single: 'report.oneSetting',
} as const;

function tableWord(table: string): string {
  return table in tableWords ? say(tableWords[table as keyof typeof tableWords]) : table;
}

/** Checks what is kept, on a press, and says what was found. */
@customElement('lark-integrity')
export class LarkIntegrity extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  @state() private report: IntegrityReport | undefined;
  @state() private said = '';

  override render() {
    const { app, report } = this;
    if (!app) return nothing;
    return html`<ul class="deeds">
        <li><button @click=${this.#check}>${say('kit.check')}</button><span class="dim small">${say('kit.checkAbout')}</span></li>
        <li><button @click=${this.#dump}>${say('kit.saveRaw')}</button><span class="dim small">${say('kit.saveRawAbout')}</span></li>
      </ul>
      <div role="status">
        ${report ? reportWords(report).map((words) => html`<p>${words}</p>`) : nothing} ${this.said ? html`<p>${this.said}</p>` : nothing}
      </div>
      ${
        report && report.setAside.length > 0
          ? html`<ul>
            ${report.setAside.map(({ table, key, message }) => html`<li>${say('kit.valueAt', { table: tableWord(table), key, message })}</li>`)}
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

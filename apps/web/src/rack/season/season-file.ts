import { formatSeason, type ParsedSeason, parseSeason, type Season, seasonNotices } from '@larkhold/engine';
import { noticeWords, problemWords, say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '@larkhold/ui';
import { PlaceElement } from '../../shell/place-element.ts';
import { fileNameOf } from '../../shell/save-file.ts';
import { seasonFold } from './season-fold.ts';
import { seasonStyles } from './season-styles.ts';

/** Problems of a file that are listed. */
const PROBLEMS_SHOWN = 5;

/**
 * A season as a file: saved, or opened, shown first and used when the archer says so.
 *
 * @prop season the season in force
 * @event season-change detail `{ season, isRemoval }`
 */
@customElement('season-file')
export class SeasonFile extends PlaceElement {
  static override styles = [...PlaceElement.styles, seasonStyles];

  @property({ attribute: false }) season: Season | undefined;
  @state() private found: { name: string; read: ParsedSeason } | undefined;

  override render() {
    const { app, season } = this;
    if (!app || !season) return nothing;
    const inside = html`<div class="row">
        <file-drop .words=${say('plan.open')} @files-take=${this.#open}></file-drop>
        <button @click=${() => app.act.saveFile(`${fileNameOf(season.title)}.season.json`, formatSeason(season))}>${say('plan.save')}</button>
      </div>
      <div role="status">${this.found ? html`<div class="notice">${this.#shown(this.found)}</div>` : nothing}</div>`;
    return seasonFold('file', { title: say('plan.file'), line: '.season.json' }, inside);
  }

  #shown({ name, read }: { name: string; read: ParsedSeason }) {
    if (!read.ok) {
      const more = read.problems.length - PROBLEMS_SHOWN;
      return html`<h3>${say('plan.refused', { file: name })}</h3>
        <ul class="notices">
          ${read.problems.slice(0, PROBLEMS_SHOWN).map((one) => html`<li>${say('plan.at', { line: one.line, column: one.column, problem: problemWords(one) })}</li>`)}
          ${more > 0 ? html`<li>${say('plan.more', { n: more })}</li>` : nothing}
        </ul>
        <p>${say('plan.nothingChanged')}</p>
        <button @click=${this.#close}>${say('plan.leave')}</button>`;
    }
    const { season } = read;
    const { title, blocks, tests, competitions } = season;
    const notices = seasonNotices(season, this.app?.view.programs);
    return html`<p>${say('plan.found', { title, blocks: blocks.length, tests: tests.length, competitions: competitions.length })}</p>
      <ul class="notices">
        ${notices.map((notice) => html`<li>${noticeWords(notice)}</li>`)}
      </ul>
      <div class="row">
        <button class="main" @click=${() => this.#use(season)}>${say('plan.use')}</button>
        <button @click=${this.#close}>${say('plan.leave')}</button>
      </div>`;
  }

  readonly #open = async ({ detail }: CustomEvent<readonly File[]>): Promise<void> => {
    const [file] = detail;
    if (!file) return;
    this.found = { name: file.name, read: parseSeason(await file.text().catch(() => '')) };
  };

  #use(season: Season): void {
    this.found = undefined;
    const detail = { season, isRemoval: false };
    this.dispatchEvent(new CustomEvent('season-change', { detail, bubbles: true, composed: true, cancelable: true }));
  }

  readonly #close = (): void => {
    this.found = undefined;
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'season-file': SeasonFile;
  }
}

import { formatCount, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { OddEntry } from './odd-entries.ts';
import { PlaceElement } from './place-element.ts';
import type { Route } from './routing.ts';
import { fileNameOf } from './save-file.ts';

/** Which lists are shown where: on the pages that would have drawn them. The kit tells all. */
const told: Readonly<Partial<Record<string, readonly string[]>>> = {
  line: ['drills', 'opened', 'days'],
  rack: ['opened', 'programs', 'notes'],
  plan: ['opened', 'drills'],
  journal: ['drills', 'days'],
  week: ['drills', 'days', 'weeks', 'notes', 'single'],
  trends: ['drills', 'days'],
  milestones: ['milestones'],
};

/** The lists that have a word of their own. */
const named = ['opened', 'programs', 'drills', 'days', 'weeks', 'notes', 'milestones', 'removed'] as const;

/**
 * The entries that can't be shown, in place of themselves: each a line that says so, to be saved as a file or removed.
 *
 * @prop route the page they are missing on
 */
@customElement('lark-odd-entries')
export class LarkOddEntries extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      li {
        padding: 0.6rem 0;
        border-bottom: 1px solid var(--rule);
        overflow-wrap: anywhere;
      }
      .row {
        margin-top: 0.4rem;
      }
    `,
  ];

  @property({ attribute: false }) route: Route | undefined;
  /** The one that is about to be removed. */
  @state() private asked: string | undefined;

  override render() {
    const { app, route } = this;
    if (!app || !route) return nothing;
    const shown = app.view.oddEntries.filter(({ table }) => isToldAt(route, table));
    if (shown.length === 0) return nothing;
    return html`<details class="notice" ?open=${route.place !== 'line'}>
      <summary>${say('odd.title', { n: shown.length })}</summary>
      <p>${say('odd.about')}</p>
      <ul>
        ${shown.map((one, index) => html`<li>${this.#entry(one, index)}</li>`)}
      </ul>
    </details>`;
  }

  #entry(one: OddEntry, index: number) {
    const name = nameOf(one);
    const words = say('odd.entry', {
      thing: say('odd.things', { table: named.find((name) => name === one.table) ?? 'other' }),
      message: one.message,
    });
    return html`<p>${words}</p>
      <div class="row">
        <button aria-describedby="entry-${index}" @click=${() => this.#save(one)}>${say('odd.save')}</button>
        ${
          this.asked === name
            ? html`<button @click=${() => this.#remove(one)}>${say('odd.surely')}</button>
                <button class="main" @click=${() => this.#ask(undefined)}>${say('odd.keep')}</button>`
            : html`<button class="quiet" @click=${() => this.#ask(name)}>${say('odd.remove')}</button>`
        }
      </div>
      <span id="entry-${index}" class="visually-hidden">${formatCount(index + 1)}: ${words}</span>`;
  }

  #ask(name: string | undefined): void {
    this.asked = name;
  }

  /** As it was found: a half character becomes an escape, so that the file is whole text. */
  #save(one: OddEntry): void {
    const { table, key, message, value } = one;
    const text = `${JSON.stringify({ table, key, message, value }, null, 2)}\n`;
    this.app?.act.saveFile(`larkhold-${fileNameOf(`${table} ${key}`)}.json`, text);
  }

  async #remove(one: OddEntry): Promise<void> {
    this.asked = undefined;
    await this.app?.act.removeOdd(one);
  }
}

function isToldAt({ place, page }: Route, table: string): boolean {
  return place === 'kit' || (told[page ?? place]?.includes(table) ?? false);
}

function nameOf({ table, key, asideKey }: OddEntry): string {
  return `${table}/${key}/${asideKey}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-odd-entries': LarkOddEntries;
  }
}

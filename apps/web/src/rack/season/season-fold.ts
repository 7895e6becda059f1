import { html, type TemplateResult } from 'lit';

/**
 * A part of the season as a line that says what is in it; pressed, it opens. Its looks are `seasonStyles`.
 * @param id of its heading
 * @param words its title, and what is in it in a few words
 * @param inside what it shows when it is open
 * @returns a section
 */
export function seasonFold(id: string, words: { title: string; line: string }, inside: unknown): TemplateResult {
  return html`<section class="fold" aria-labelledby=${id}>
    <details>
      <summary>
        <span><h2 id=${id}>${words.title}</h2><span class="dim small">${words.line}</span></span>
      </summary>
      <div class="inside">${inside}</div>
    </details>
  </section>`;
}

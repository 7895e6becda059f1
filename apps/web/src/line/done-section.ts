import type { DrillRecord } from '@larkhold/engine';
import { drillWords, say } from '@larkhold/words';
import { html, type TemplateResult } from 'lit';
import { hrefOf } from '../shell/routing.ts';

/**
 * What was done today, and the way to it in the journal.
 * @param record today's drill
 * @returns a part of the line
 */
export function doneSection(record: DrillRecord): TemplateResult {
  return html`<section class="done" aria-labelledby="done">
      <h2 id="done">${say('today.done')}</h2>
      <p>${drillWords(record)}</p>
      <lark-hold-ribbon .reps=${record.reps}></lark-hold-ribbon>
      <p class="small"><a class="dim" href=${hrefOf('journal', record.id)}>${say('line.inJournal')}</a></p>
    </section>`;
}

import { larkMark } from '@larkhold/ui';
import { say } from '@larkhold/words';
import { html, type TemplateResult } from 'lit';
import '../shell/offline-ready.ts';

/**
 * Nothing done yet: what this is, and the way back for whoever has done it elsewhere.
 * @param pick hears of files that were picked
 * @returns markup
 */
export function firstRun(pick: (files: readonly File[]) => void): TemplateResult {
  return html`<div class="first">
      <div class="what">${larkMark()}
        <p>${say('today.firstRun')}</p>
      </div>
      <offline-ready></offline-ready>
      <file-drop
        plain
        words=${say('today.restore')}
        @files-take=${(event: CustomEvent<readonly File[]>) => pick(event.detail)}
      ></file-drop>
    </div>`;
}

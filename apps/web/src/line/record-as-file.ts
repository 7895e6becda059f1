import type { DrillRecord } from '@larkhold/engine';
import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import type { App } from '../shell/app-context.ts';
import { fileNameOf } from '../shell/save-file.ts';

/**
 * Where a record is not safe on disk, it can be had as a file.
 * @param app the app
 * @param record of the drill
 * @returns a button, or nothing
 */
export function recordAsFile({ view, act }: App, record: DrillRecord) {
  if (view.where === 'disk' && !view.trouble) return nothing;
  return html`<p class="as-file">
      <button
        @click=${() => act.saveFile(`${fileNameOf(record.program)}-${record.date}.json`, `${JSON.stringify(record, null, 2)}\n`)}
      >
        ${say('line.saveAsFile')}
      </button>
    </p>`;
}

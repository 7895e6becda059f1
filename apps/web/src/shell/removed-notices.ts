import { formatDay, say } from '@larkhold/words';
import { html, nothing } from 'lit';
import type { App } from './app-context.ts';
import type { RemovedThing } from './removed-thing.ts';

/**
 * What was removed today, each with its undo: until the next day, also after a reload.
 * @param app the app
 * @param kind which kind of thing
 * @returns a template for a root that has the page's styles; nothing where nothing was removed
 */
export function removedNotices({ view, act }: App, kind: RemovedThing['kind']) {
  const things = view.removedToday.filter((one) => one.kind === kind);
  return html`<div role="status">
    ${
      things.length === 0
        ? nothing
        : html`<div class="notice">
            ${things.map(
              (thing) => html`<div class="said">
                <p>${say('removed.thing', { title: titleOf(thing) })}</p>
                <button @click=${() => act.bringBack(thing)}>${say('removed.undo')}</button>
              </div>`,
            )}
            <p class="dim small">${say('removed.until')}</p>
          </div>`
    }
  </div>`;
}

function titleOf({ kind, value }: RemovedThing): string {
  if (kind === 'program') return value.title;
  if (kind === 'drill') return `${value.program}, ${formatDay(value.date)}`;
  if (kind === 'handOver') return value.archer;
  return value.text ?? say('removed.drawing');
}

import { isoWeek, type Journal } from '@larkhold/engine';
import { formatDay, say } from '@larkhold/words';
import { html, type TemplateResult } from 'lit';
import { hrefOf } from '../../shell/routing.ts';

/** How many are named; the others are counted. */
const SHOWN = 5;

/**
 * Where something was read, the latest first: links to drills and days of the journal.
 * @param ids of drill records, or days, ISO 8601
 * @param journal where they are
 * @returns a line
 */
export function evidenceLine(ids: readonly string[], journal: Journal): TemplateResult {
  const places = ids.flatMap((id) => placeOf(id, journal)).sort((a, b) => (a.day < b.day ? 1 : -1));
  if (places.length === 0) return html`<p class="from">${say('known.fromNothing')}</p>`;
  const more = places.length - SHOWN;
  return html`<p class="from">
    ${say('known.from')}
    ${places.slice(0, SHOWN).map(({ day, href, title }) => html`<a href=${href} title=${title}>${formatDay(day, 'short')}</a> `)}
    ${more > 0 ? say('known.more', { n: more }) : ''}
  </p>`;
}

function placeOf(id: string, { drills }: Journal): { day: string; href: string; title: string }[] {
  const drill = drills.find((one) => one.id === id);
  if (drill) return [{ day: drill.date, href: hrefOf('journal', id), title: drill.program }];
  return /^\d{4}-\d\d-\d\d$/.test(id) ? [{ day: id, href: `#/week/${isoWeek(id)}/${id}`, title: '' }] : [];
}

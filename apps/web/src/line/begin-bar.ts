import type { Prescription } from '@larkhold/engine';
import { drawnStringCaution, say } from '@larkhold/words';
import { html, nothing, type TemplateResult } from 'lit';

/**
 * Always on the screen: never to let go of a drawn string, how long the drill will take, and the one press that begins it.
 * @param prescription today's numbers
 * @param is `done` today already; a `rest` day. On either Begin is no loud button
 * @param begin the press
 * @returns the bar; nothing where pain leaves nothing to begin
 */
export function beginBar(
  prescription: Prescription,
  is: { done: boolean; rest: boolean },
  begin: () => void,
): TemplateResult | typeof nothing {
  if (prescription.blocks.length === 0) return nothing;
  const caution = drawnStringCaution(prescription);
  return html`<div class="bar">
      ${caution ? html`<p class="string">${caution}</p>` : nothing}
      <p class="length numbers">${say('today.length', { ms: prescription.durationMs })}</p>
      <button class=${is.done || is.rest ? 'begin' : 'main begin'} @click=${begin}>
        ${is.done ? say('today.again') : is.rest ? say('rest.drill') : say('line.begin')}
      </button>
      <p class="dim small keys">${say('line.orKeys')}</p>
    </div>`;
}

import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';

/**
 * A box to tick, with its words.
 * @param words what is on when it is ticked
 * @param isOn whether it is
 * @param change hears the new state
 * @returns the field
 */
export function tickOf(words: string, isOn: boolean, change: (isOn: boolean) => void): TemplateResult {
  return html`<label class="tick">
    <input
      type="checkbox"
      .checked=${live(isOn)}
      @change=${(event: Event) => {
        if (event.target instanceof HTMLInputElement) change(event.target.checked);
      }}
    />${words}
  </label>`;
}

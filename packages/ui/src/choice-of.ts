import { html, type TemplateResult } from 'lit';

/**
 * A labelled list to choose from.
 * @param label what is chosen
 * @param value the choice as it is
 * @param options each choice and its words, in order
 * @param choose hears the new choice
 * @returns the field
 */
export function choiceOf<Choice extends string>(
  label: string,
  value: Choice,
  options: Readonly<Record<Choice, string>>,
  choose: (choice: Choice) => void,
): TemplateResult {
  const choices = Object.entries(options) as [Choice, string][];
  return html`<label
    >${label}
    <select
      @change=${(event: Event) => {
        if (!(event.target instanceof HTMLSelectElement)) return;
        const chosen = choices[event.target.selectedIndex];
        if (chosen) choose(chosen[0]);
      }}
    >
      ${choices.map(([choice, words]) => html`<option value=${choice} .selected=${choice === value}>${words}</option>`)}
    </select>
  </label>`;
}

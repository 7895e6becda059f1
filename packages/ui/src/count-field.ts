import { parseCount } from '@larkhold/engine';
import { say } from '@larkhold/words';
import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controlStyles, pageStyles } from './page-styles.ts';

/**
 * A count with a step down, a field to type in, and a step up.
 *
 * @prop name what is counted, for screen readers
 * @prop value the count
 * @prop step how much a press changes it
 * @prop most the largest count
 * @event count-change a new count; detail is the number
 */
@customElement('count-field')
export class CountField extends LitElement {
  static override styles = [
    pageStyles,
    controlStyles,
    css`
      :host {
        display: inline-grid;
        grid-template-columns: minmax(0, var(--touch)) minmax(0, 3.7rem) minmax(0, var(--touch));
        max-width: 100%;
      }
      button {
        min-width: 0;
        padding: 0;
        font-variant-numeric: tabular-nums;
      }
      button:first-child {
        border-radius: var(--radius) 0 0 var(--radius);
      }
      button:last-child {
        border-radius: 0 var(--radius) var(--radius) 0;
      }
      input:not([type='checkbox'], [type='radio'], [type='range']) {
        width: 100%;
        padding-inline: 0.2rem;
        border-inline-width: 0;
        border-radius: 0;
        text-align: center;
        font-variant-numeric: tabular-nums;
        font-weight: 600;
      }
      :focus-visible {
        position: relative;
      }
    `,
  ];

  @property() name = '';
  @property({ type: Number }) value = 0;
  @property({ type: Number }) step = 1;
  @property({ type: Number }) most = 2000;

  override render() {
    const { name, value, step } = this;
    return html`<button type="button" aria-label=${say('field.less', { name: name, step: say('field.plain', { n: step }) })} ?disabled=${value === 0} @click=${() => this.#give(value - step)}>−${step}</button
      ><input
        inputmode="numeric"
        autocomplete="off"
        maxlength="5"
        aria-label=${name}
        placeholder="0"
        .value=${value === 0 ? '' : String(value)}
        @focus=${this.#onFocus}
        @input=${this.#onInput}
      /><button type="button" aria-label=${say('field.more', { name: name, step: say('field.plain', { n: step }) })} @click=${() => this.#give(value + step)}>+${step}</button>`;
  }

  #give(value: number): void {
    const next = Math.min(Math.max(value, 0), this.most);
    if (next === this.value) return;
    this.value = next;
    this.dispatchEvent(new CustomEvent('count-change', { detail: next, bubbles: true, composed: true }));
  }

  /** So that typing replaces what is there. */
  readonly #onFocus = (event: FocusEvent): void => {
    if (event.target instanceof HTMLInputElement) event.target.select();
  };

  readonly #onInput = (event: InputEvent): void => {
    if (event.target instanceof HTMLInputElement) this.#give(parseCount(event.target.value, this.most));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'count-field': CountField;
  }
  interface HTMLElementEventMap {
    'count-change': CustomEvent<number>;
  }
}

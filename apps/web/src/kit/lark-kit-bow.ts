import { choiceOf } from '@larkhold/ui';
import { formatLength, formatWeight, say, toCentimetres, toInches } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import { kitStyles } from './kit-styles.ts';

/** Bow, drawing hand, weight and age. */
@customElement('lark-kit-bow')
export class LarkKitBow extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  @state() private problem = '';

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const {
      view: { kit },
      act,
    } = app;
    const { units, drawWeightLbf, drawLengthIn } = kit;
    const isMetric = units === 'metric';
    const length = drawLengthIn === undefined ? undefined : isMetric ? toCentimetres(drawLengthIn) : drawLengthIn;
    return html`<section aria-labelledby="bow">
      <h2 id="bow">${say('kit.bow')}</h2>
      <div class="fields">
        ${choiceOf(say('kit.bow'), kit.bow, { recurve: say('kit.recurve'), compound: say('kit.compound'), barebow: say('kit.barebow'), longbow: say('kit.longbow') }, (bow) => act.changeKit({ bow }))}
        ${choiceOf(say('kit.hand'), kit.hand, { right: say('kit.right'), left: say('kit.left') }, (hand) => act.changeKit({ hand }))}
        ${choiceOf(say('kit.units'), units, { metric: say('kit.metric'), imperial: say('kit.imperial') }, (next) => act.changeKit({ units: next }))}
        <label
          >${say('kit.weight')}
          <input
            type="number"
            inputmode="decimal"
            min="1"
            max="120"
            step="0.5"
            .value=${drawWeightLbf === undefined ? '' : String(drawWeightLbf)}
            @change=${this.#number(1, 120, say('kit.pounds'), (value) => act.changeKit({ drawWeightLbf: value }))}
          />
          <span class="dim small">${drawWeightLbf === undefined ? say('kit.notSet') : formatWeight(drawWeightLbf, units)}</span>
        </label>
        <label
          >${say('kit.drawLength', { unit: isMetric ? 'cm' : 'in' })}
          <input
            type="number"
            inputmode="decimal"
            min=${isMetric ? 26 : 10}
            max=${isMetric ? 101 : 40}
            step="0.1"
            .value=${length === undefined ? '' : String(length)}
            @change=${this.#number(
              isMetric ? 26 : 10,
              isMetric ? 101 : 40,
              isMetric ? say('kit.centimetres') : say('kit.inches'),
              (value) => act.changeKit({ drawLengthIn: value === undefined || !isMetric ? value : toInches(value) }),
            )}
          />
          <span class="dim small">${drawLengthIn === undefined ? say('kit.notSet') : formatLength(drawLengthIn, units)}</span>
        </label>
        ${choiceOf(
          say('kit.age'),
          kit.ageBand ?? 'unset',
          {
            unset: say('kit.notSet'),
            'under 12': say('kit.under12'),
            '12 to 15': say('kit.from12'),
            '16 to 17': say('kit.from16'),
            '18 to 49': say('kit.from18'),
            '50 and over': say('kit.fiftyUp'),
          },
          (age) => act.changeKit({ ageBand: age === 'unset' ? undefined : age }),
        )}
      </div>
      <p class="problem" role="alert">${this.problem}</p>
    </section>`;
  }

  #number(least: number, most: number, unit: string, change: (value: number | undefined) => void) {
    return (event: Event): void => {
      if (!(event.target instanceof HTMLInputElement)) return;
      const value = event.target.value === '' ? undefined : Number(event.target.value);
      const isGood = value === undefined ? !event.target.validity.badInput : value >= least && value <= most;
      this.problem = isGood ? '' : say('kit.outOfRange', { least: String(least), most: String(most), unit });
      if (isGood) change(value);
    };
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit-bow': LarkKitBow;
  }
}

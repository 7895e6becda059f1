import type { CueKind } from '@larkhold/engine';
import { DEMO_PREFIX } from '@larkhold/engine';
import { formatLength, formatShare, formatWeight, toCentimetres, toInches } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { PlaceElement } from '../shell/place-element.ts';
import './lark-integrity.ts';
import './lark-shot-process.ts';
import './backup-settings.ts';
import { choiceOf } from '@larkhold/ui';
import { kitStyles } from './kit-styles.ts';
import './lark-kit-controls.ts';
import './lark-kit-display.ts';
import { tickOf } from '@larkhold/ui';

const cueButtons: readonly { kind: CueKind; words: string }[] = [
  { kind: 'ready', words: 'Get ready' },
  { kind: 'draw', words: 'Draw' },
  { kind: 'hold', words: 'Hold' },
  { kind: 'count', words: 'Last seconds' },
  { kind: 'letDown', words: 'Let down' },
  { kind: 'restOver', words: 'Rest over' },
];

/** Bow, sound, display, keys, what is kept, and the safety note. */
@customElement('lark-kit')
export class LarkKit extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  @state() private problem = '';

  override render() {
    const { app } = this;
    if (!app) return nothing;
    return html`<h1>Kit</h1>
      ${this.#bow(app)}
      <lark-shot-process></lark-shot-process>
      ${this.#sound(app)}
      <lark-kit-display></lark-kit-display>
      <lark-kit-controls></lark-kit-controls>
      <backup-settings></backup-settings>
      ${this.#stored(app)}
      ${this.#safety()}`;
  }

  #bow({ view: { kit }, act }: App) {
    const { units, drawWeightLbf, drawLengthIn } = kit;
    const isMetric = units === 'metric';
    const length = drawLengthIn === undefined ? undefined : isMetric ? toCentimetres(drawLengthIn) : drawLengthIn;
    return html`<section aria-labelledby="bow">
      <h2 id="bow">Bow</h2>
      <div class="fields">
        ${choiceOf('Bow', kit.bow, { recurve: 'Recurve', compound: 'Compound', barebow: 'Barebow', longbow: 'Longbow' }, (bow) => act.changeKit({ bow }))}
        ${choiceOf('Drawing hand', kit.hand, { right: 'Right', left: 'Left' }, (hand) => act.changeKit({ hand }))}
        ${choiceOf('Units', units, { metric: 'Metric', imperial: 'Imperial' }, (next) => act.changeKit({ units: next }))}
        <label
          >Draw weight on the fingers, lb
          <input
            type="number"
            inputmode="decimal"
            min="1"
            max="120"
            step="0.5"
            .value=${drawWeightLbf === undefined ? '' : String(drawWeightLbf)}
            @change=${this.#number(1, 120, 'pounds', (value) => act.changeKit({ drawWeightLbf: value }))}
          />
          <span class="dim small">${drawWeightLbf === undefined ? 'Not said' : formatWeight(drawWeightLbf, units)}</span>
        </label>
        <label
          >Draw length, ${isMetric ? 'cm' : 'in'}
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
              isMetric ? 'centimetres' : 'inches',
              (value) => act.changeKit({ drawLengthIn: value === undefined || !isMetric ? value : toInches(value) }),
            )}
          />
          <span class="dim small">${drawLengthIn === undefined ? 'Not said' : formatLength(drawLengthIn, units)}</span>
        </label>
        ${choiceOf(
          'Age',
          kit.ageBand ?? 'not said',
          {
            'not said': 'Not said',
            'under 12': 'Under 12',
            '12 to 15': '12 to 15',
            '16 to 17': '16 to 17',
            '18 to 49': '18 to 49',
            '50 and over': '50 and over',
          },
          (age) => act.changeKit({ ageBand: age === 'not said' ? undefined : age }),
        )}
      </div>
      <p class="problem" role="alert">${this.problem}</p>
    </section>`;
  }

  #sound({ view: { kit }, act }: App) {
    return html`<section aria-labelledby="sound">
      <h2 id="sound">Sound</h2>
      <div class="fields">
        <label
          >Level, ${formatShare(kit.soundLevel)}
          <input
            type="range"
            min="0"
            max="100"
            step="5"
            .value=${String(Math.round(kit.soundLevel * 100))}
            @change=${(event: Event) => {
              if (event.target instanceof HTMLInputElement)
                act.changeKit({ soundLevel: Number(event.target.value) / 100 });
            }}
          />
        </label>
        ${choiceOf('Cues', kit.voice, { both: 'Tones and words', tones: 'Tones', words: 'Words' }, (voice) => act.changeKit({ voice }))}
      </div>
      ${tickOf('Quiet hours: soft, low tones, and the edge of the display brightens at each cue', kit.quiet, (quiet) => act.changeKit({ quiet }))}
      <div class="row try" role="group" aria-label="Try a cue">
        ${cueButtons.map(({ kind, words }) => html`<button @click=${() => act.trySound(kind)}>${words}</button>`)}
      </div>
    </section>`;
  }

  #stored({ view, act }: App) {
    const hasDemo = view.journal.drills.some(({ id }) => id.startsWith(DEMO_PREFIX));
    return html`<section aria-labelledby="stored">
      <h2 id="stored">What is kept</h2>
      <p>
        ${view.where === 'disk' ? 'Everything is on this device, and nowhere else.' : 'Nothing is kept on this device right now.'}
        ${view.persistence === 'kept' ? 'The browser keeps it also when room runs out.' : ''}
        ${view.persistence === 'may be cleared' ? 'The browser may clear it when room runs out: save a file now and then.' : ''}
      </p>
      <div class="row">
        <button @click=${() => act.saveBackup()}>Save everything as a file</button>
        ${
          view.where === 'disk' && view.persistence !== 'kept'
            ? html`<button @click=${() => act.keepStored()}>Ask the browser to keep it</button>`
            : nothing
        }
        ${
          hasDemo
            ? html`<button @click=${() => act.removeDemo()}>Remove the demo journal</button>`
            : html`<button @click=${() => act.loadDemo()}>Load a demo journal</button>`
        }
      </div>
      <lark-integrity></lark-integrity>
      <p class="dim small">The demo journal is half a year of an invented archer. It can be removed again.</p>
    </section>`;
  }

  #safety() {
    return html`<section aria-labelledby="safety">
      <h2 id="safety">Safety</h2>
      <ul class="safety">
        <li><strong>Never let go of a drawn string with no arrow on it.</strong> Let down, slowly, every time.</li>
        <li>Stop on pain. If it stays, see a doctor or a physiotherapist.</li>
        <li>Warm up first. Check string, limbs and the space around and behind you.</li>
        <li>The young and new archers use a stretch band or a light bow.</li>
        <li>A qualified coach, medical advice, and club and local rules come before anything here.</li>
      </ul>
      <p class="dim small">Larkhold is free software under the MIT licence. No account, no server, no network.</p>
    </section>`;
  }

  #number(least: number, most: number, unit: string, change: (value: number | undefined) => void) {
    return (event: Event): void => {
      if (!(event.target instanceof HTMLInputElement)) return;
      const value = event.target.value === '' ? undefined : Number(event.target.value);
      const isGood = value === undefined ? !event.target.validity.badInput : value >= least && value <= most;
      this.problem = isGood ? '' : `Not changed: expected ${least} to ${most} ${unit}.`;
      if (isGood) change(value);
    };
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit': LarkKit;
  }
}

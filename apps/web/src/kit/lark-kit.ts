import type { CueKind } from '@larkhold/engine';
import { DEMO_PREFIX } from '@larkhold/engine';
import { formatLength, formatWeight, say, toCentimetres, toInches } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { localWhen } from '../shell/local-when.ts';
import { PlaceElement } from '../shell/place-element.ts';
import './lark-integrity.ts';
import './lark-shot-process.ts';
import './backup-settings.ts';
import { choiceOf } from '@larkhold/ui';
import { kitStyles } from './kit-styles.ts';
import './lark-kit-camera.ts';
import './lark-kit-controls.ts';
import './lark-kit-display.ts';
import { tickOf } from '@larkhold/ui';

const cueButtons = [
  { kind: 'ready', key: 'kit.ready' },
  { kind: 'draw', key: 'kit.draw' },
  { kind: 'hold', key: 'kit.hold' },
  { kind: 'count', key: 'kit.lastSeconds' },
  { kind: 'letDown', key: 'kit.letDown' },
  { kind: 'restOver', key: 'kit.restOver' },
] as const satisfies readonly { kind: CueKind; key: string }[];

/** Bow, sound, display, keys, what is kept, and the safety note. */
@customElement('lark-kit')
export class LarkKit extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  @state() private problem = '';

  override render() {
    const { app } = this;
    if (!app) return nothing;
    return html`<h1>${say('kit.kit')}</h1>
      ${this.#bow(app)}
      <lark-shot-process></lark-shot-process>
      ${this.#sound(app)}
      <lark-kit-display></lark-kit-display>
      <lark-kit-controls></lark-kit-controls>
      <lark-kit-camera></lark-kit-camera>
      <backup-settings></backup-settings>
      ${this.#stored(app)}
      ${this.#safety()}`;
  }

  #bow({ view: { kit }, act }: App) {
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
          kit.ageBand ?? 'not said',
          {
            'not said': say('kit.notSet'),
            'under 12': say('kit.under12'),
            '12 to 15': say('kit.from12'),
            '16 to 17': say('kit.from16'),
            '18 to 49': say('kit.from18'),
            '50 and over': say('kit.fiftyUp'),
          },
          (age) => act.changeKit({ ageBand: age === 'not said' ? undefined : age }),
        )}
      </div>
      <p class="problem" role="alert">${this.problem}</p>
    </section>`;
  }

  #sound({ view: { kit }, act }: App) {
    return html`<section aria-labelledby="sound">
      <h2 id="sound">${say('kit.sound')}</h2>
      <div class="fields">
        <label
          >${say('kit.level', { level: kit.soundLevel })}
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
        ${choiceOf(say('kit.cues'), kit.voice, { both: say('kit.both'), tones: say('kit.tones'), words: say('kit.words') }, (voice) => act.changeKit({ voice }))}
        ${choiceOf(say('kit.spoken'), kit.spoken, { least: say('kit.spokenLeast'), usual: say('kit.spokenUsual'), most: say('kit.spokenMost') }, (spoken) => act.changeKit({ spoken }))}
      </div>
      <p class="dim small">${say(`kit.spokenAbout.${kit.spoken}`)}</p>
      ${tickOf(say('kit.saysWarmUp'), kit.saysWarmUp, (saysWarmUp) => act.changeKit({ saysWarmUp }))}
      ${tickOf(say('kit.quiet'), kit.quiet, (quiet) => act.changeKit({ quiet }))}
      <div class="row try" role="group" aria-label=${say('kit.tryCue')}>
        ${cueButtons.map(({ kind, key }) => html`<button @click=${() => act.trySound(kind)}>${say(key)}</button>`)}
      </div>
    </section>`;
  }

  #stored({ view, act }: App) {
    const hasDemo = view.journal.drills.some(({ id }) => id.startsWith(DEMO_PREFIX));
    return html`<section aria-labelledby="stored">
      <h2 id="stored">${say('kit.kept')}</h2>
      ${act.box ? html`<p><a href="#/box">${say('box.kitLink')}</a>${act.box.link ? html`<br /><span class="dim small">${boxState(act.box.link)}</span>` : nothing}</p>` : nothing}
      <p>
        ${view.where === 'disk' ? (act.box?.link ? say('box.onDevice') : say('kit.onDevice')) : say('kit.notKept')}
        ${view.persistence === 'kept' ? say('kit.persistent') : ''}
        ${view.persistence === 'may be cleared' ? say('kit.mayClear') : ''}
      </p>
      <div class="row">
        <button @click=${() => act.saveBackup()}>${say('kit.saveAll')}</button>
        ${
          view.where === 'disk' && view.persistence !== 'kept'
            ? html`<button @click=${() => act.keepStored()}>${say('kit.askKeep')}</button>`
            : nothing
        }
        ${
          hasDemo
            ? html`<button @click=${() => act.removeDemo()}>${say('kit.removeDemo')}</button>`
            : html`<button @click=${() => act.loadDemo()}>${say('kit.loadDemo')}</button>`
        }
      </div>
      <lark-integrity></lark-integrity>
      <p class="dim small">${say('kit.demoAbout')}</p>
    </section>`;
  }

  #safety() {
    return html`<section aria-labelledby="safety">
      <h2 id="safety">${say('kit.safety')}</h2>
      <ul class="safety">
        <li><strong>${say('kit.safetyString')}</strong> ${say('kit.safetyLetDown')}</li>
        <li>${say('kit.safetyPain')}</li>
        <li>${say('kit.safetyWarmUp')}</li>
        <li>${say('kit.safetyYoung')}</li>
        <li>${say('kit.safetyCoach')}</li>
      </ul>
      <p class="dim small">${say('kit.licence')}</p>
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

/** One quiet line: when this device last met the others. */
function boxState({ lastRoundAt, isPaused }: NonNullable<NonNullable<App['act']['box']>['link']>): string {
  if (isPaused) return say('box.paused');
  return lastRoundAt ? say('box.quiet', localWhen(lastRoundAt)) : say('box.notMet');
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit': LarkKit;
  }
}

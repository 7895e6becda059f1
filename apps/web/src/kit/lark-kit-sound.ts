import type { CueKind } from '@larkhold/engine';
import { choiceOf, tickOf } from '@larkhold/ui';
import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import { typedIn } from '../shell/typed-in.ts';
import { kitStyles } from './kit-styles.ts';

const cueButtons = [
  { kind: 'ready', key: 'kit.ready' },
  { kind: 'draw', key: 'kit.draw' },
  { kind: 'hold', key: 'kit.hold' },
  { kind: 'count', key: 'kit.lastSeconds' },
  { kind: 'letDown', key: 'kit.letDown' },
  { kind: 'restOver', key: 'kit.restOver' },
] as const satisfies readonly { kind: CueKind; key: string }[];

/** How a drill sounds, how much is said, and a try of each cue. */
@customElement('lark-kit-sound')
export class LarkKitSound extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const {
      view: { kit },
      act,
    } = app;
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
            @change=${(event: Event) => act.changeKit({ soundLevel: Number(typedIn(event)) / 100 })}
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
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit-sound': LarkKitSound;
  }
}

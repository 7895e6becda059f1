import { characterHeightMm, digitLegibility, EASY_ARC_MINUTES, sightPathM } from '@larkhold/runner';
import type { Kit } from '@larkhold/store';
import { choiceOf } from '@larkhold/ui';
import { formatDistance, languages, say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import { pixelMmOf, sightOf } from '../shell/runner-settings-of.ts';
import { kitStyles } from './kit-styles.ts';
import './lark-card-size.ts';
import { tickOf } from '@larkhold/ui';
import { DigitSize } from '../shell/digit-size.ts';

/** How the archer looks at the display: colours, distance, mirror, full screen, and whether the digits are large enough there. */
@customElement('lark-kit-display')
export class LarkKitDisplay extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  readonly #digits = new DigitSize(this, () => this.app?.view.kit.layout);

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { kit } = app.view;
    const { viewing, units, theme } = kit;
    const change = (changes: Partial<Kit['viewing']>) =>
      app.act.changeKit((now) => ({ viewing: { ...now.viewing, ...changes } }));
    return html`<section aria-labelledby="display">
      <h2 id="display">${say('kit.display')}</h2>
      <div class="fields">
        ${choiceOf(say('kit.language'), kit.language ?? 'browser', { browser: say('kit.asBrowser'), ...languages }, (chosen) => app.act.changeKit({ language: chosen === 'browser' ? undefined : chosen }))}
        ${choiceOf(say('kit.ground'), theme, { system: say('kit.asDevice'), dark: say('kit.dark'), light: say('kit.light'), contrast: say('kit.contrast') }, (ground) => app.act.changeKit({ theme: ground }))}
        ${choiceOf(say('kit.layout'), kit.layout, { bow: say('kit.bowFirst'), numbers: say('kit.numbersFirstLong') }, (layout) => app.act.changeKit({ layout }))}
        ${choiceOf(say('kit.weekStart'), kit.weekStart, { monday: say('kit.monday'), sunday: say('kit.sunday'), saturday: say('kit.saturday') }, (weekStart) => app.act.changeKit({ weekStart }))}
        ${this.#distance(
          viewing.byMirror
            ? say('kit.toMirror', { distance: formatDistance(viewing.distanceM, units) })
            : say('kit.seenFrom', { distance: formatDistance(viewing.distanceM, units) }),
          viewing.distanceM,
          (distanceM) => change({ distanceM }),
        )}
        ${
          viewing.byMirror
            ? this.#distance(
                say('kit.fromMirror', { distance: formatDistance(viewing.mirrorToScreenM, units) }),
                viewing.mirrorToScreenM,
                (mirrorToScreenM) => change({ mirrorToScreenM }),
              )
            : nothing
        }
      </div>
      ${this.#legible(kit)}
      ${tickOf(say('kit.byMirror'), viewing.byMirror, (byMirror) => change({ byMirror, flipped: byMirror }))}
      ${tickOf(say('kit.flip'), viewing.flipped, (flipped) => change({ flipped }))}
      ${tickOf(say('kit.fullScreen'), kit.fullScreen, (fullScreen) => app.act.changeKit({ fullScreen }))}
      <lark-card-size
        .pixelMm=${pixelMmOf(kit)}
        .isMeasured=${kit.pixelMm !== undefined}
        @card-size=${(event: CustomEvent<number | null>) => app.act.changeKit({ pixelMm: event.detail ?? undefined })}
      ></lark-card-size>
    </section>`;
  }

  #legible(kit: Kit) {
    const sight = sightOf(kit);
    const neededMm = Math.ceil(characterHeightMm(sightPathM(sight), EASY_ARC_MINUTES));
    const warning = this.#digits.digitPx
      ? digitLegibility(sight, this.#digits.digitPx, pixelMmOf(kit)).warning
      : undefined;
    return html`<p class="dim small legible">${say('kit.digits', { mm: String(neededMm) })}</p>
      <p class="warning" role="status">${warning ?? ''}</p>`;
  }

  #distance(words: string, value: number, choose: (metres: number) => void) {
    return html`<label
      >${words}
      <input
        type="range"
        min="0.5"
        max="6"
        step="0.5"
        .value=${String(value)}
        @change=${(event: Event) => {
          if (event.target instanceof HTMLInputElement) choose(Number(event.target.value));
        }}
      />
    </label>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit-display': LarkKitDisplay;
  }
}

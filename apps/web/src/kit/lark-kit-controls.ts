import '@larkhold/runner';
import { createKit, type Kit } from '@larkhold/store';
import { tickOf } from '@larkhold/ui';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import { pressSourcesOf } from '../shell/press-sources-of.ts';
import { kitStyles } from './kit-styles.ts';

const actions = {
  begin: 'Begin',
  letDownNow: 'Let down now',
  pause: 'Pause or resume',
  skipRep: 'Skip a rep',
  moreRest: 'More rest',
  stop: 'Stop',
} as const satisfies Record<keyof Kit['keys'], string>;
type Action = keyof Kit['keys'];

/** What the archer presses: learned, tried, and set back. */
@customElement('lark-kit-controls')
export class LarkKitControls extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  @state() private said = '';

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { kit } = app.view;
    const change = (changes: Partial<Kit['listens']>) =>
      app.act.changeKit(({ listens }) => ({ listens: { ...listens, ...changes } }));
    const sources = pressSourcesOf(kit.listens, 'Larkhold');
    return html`<section aria-labelledby="controls">
      <h2 id="controls">Controls</h2>
      <p class="dim">
        Most pedals and page turners send keys. Learn takes up what you press, Try shows what it hears. While the bow is drawn, the space bar lets
        down; Escape always asks whether to stop.
      </p>
      ${tickOf('Gamepad buttons', kit.listens.gamepad, (gamepad) => change({ gamepad }))}
      ${tickOf('Headset buttons', kit.listens.headset, (headset) => change({ headset }))}
      ${tickOf('Claps and loud clicks, by the microphone', kit.listens.microphone, (microphone) => change({ microphone }))}
      <p class="dim small">
        The microphone is on only in a drill, in the questions after it, and while you learn or try here. Its sound is processed on this device only and never stored.
      </p>
      <div class="learns">
        ${(Object.keys(actions) as Action[]).map(
          (action) => html`<lark-learn
            .label=${actions[action]}
            .codes=${kit.keys[action]}
            .sources=${sources}
            .theme=${kit.theme}
            @lark-learned=${(event: CustomEvent<{ codes: string[] }>) => {
              this.said = '';
              void app.act.changeKit(({ keys }) => ({ keys: { ...keys, [action]: event.detail.codes.slice(0, 12) } }));
            }}
          ></lark-learn>`,
        )}
      </div>
      <div class="row">
        <button
          @click=${() => {
            void app.act.changeKit({ keys: createKit().keys });
            this.said = 'The keys are as they were at first.';
          }}
        >
          Set the keys back
        </button>
        <p role="status">${this.said}</p>
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit-controls': LarkKitControls;
  }
}

import { formatRow, pressWords, say } from '@larkhold/words';
import '@larkhold/runner';
import { createKit, type Kit } from '@larkhold/store';
import { tickOf } from '@larkhold/ui';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { pressSourcesOf } from '../shell/press-sources-of.ts';
import { kitStyles } from './kit-styles.ts';

const actions = {
  begin: 'kit.actionBegin',
  letDownNow: 'kit.actionLetDownNow',
  pause: 'kit.actionPause',
  skipRep: 'kit.actionSkipRep',
  moreRest: 'kit.actionMoreRest',
  lessRest: 'kit.actionLessRest',
  stop: 'kit.actionStop',
} as const satisfies Record<keyof Kit['keys'], string>;
type Action = keyof Kit['keys'];

/** What the archer presses: learned, tried, and set back. */
@customElement('lark-kit-controls')
export class LarkKitControls extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  @state() private said = '';
  /** A press that was just learned for one action and does others too. */
  @state() private shared: { code: string; action: Action; others: Action[] } | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { kit } = app.view;
    const change = (changes: Partial<Kit['listens']>) =>
      app.act.changeKit(({ listens }) => ({ listens: { ...listens, ...changes } }));
    const sources = pressSourcesOf(kit.listens, 'Larkhold');
    return html`<section aria-labelledby="controls">
      <h2 id="controls">${say('kit.controls')}</h2>
      <p class="dim">
        ${say('kit.controlsAbout')}
      </p>
      ${tickOf(say('kit.gamepad'), kit.listens.gamepad, (gamepad) => change({ gamepad }))}
      ${tickOf(say('kit.headset'), kit.listens.headset, (headset) => change({ headset }))}
      ${tickOf(say('kit.claps'), kit.listens.microphone, (microphone) => change({ microphone }))}
      <p class="dim small">
        ${say('kit.microphoneAbout')}
      </p>
      <div class="learns">
        ${(Object.keys(actions) as Action[]).map(
          (action) => html`<lark-learn
            .label=${say(actions[action])}
            .codes=${kit.keys[action]}
            .sources=${sources}
            .theme=${kit.theme}
            @lark-learned=${(event: CustomEvent<{ codes: string[] }>) => {
              this.said = '';
              this.#lookForOthers(app, action, event.detail.codes);
              void app.act.changeKit(({ keys }) => ({ keys: { ...keys, [action]: event.detail.codes.slice(0, 12) } }));
            }}
          ></lark-learn>`,
        )}
      </div>
      ${this.#alsoDoes(app)}
      <div class="row">
        <button
          @click=${() => {
            this.shared = undefined;
            void app.act.changeKit({ keys: createKit().keys });
            this.said = say('kit.keysAsFirst');
          }}
        >
          ${say('kit.keysBack')}
        </button>
        <p role="status">${this.said}</p>
      </div>
    </section>`;
  }

  /** One key may do several things at different moments; the archer who learns it sees that, and can keep it for one thing alone. */
  #lookForOthers({ view: { kit } }: App, action: Action, codes: readonly string[]): void {
    const code = codes.find((one) => !kit.keys[action].includes(one));
    const others = (Object.keys(actions) as Action[]).filter(
      (other) => other !== action && code !== undefined && kit.keys[other].includes(code),
    );
    this.shared = code === undefined || others.length === 0 ? undefined : { code, action, others };
  }

  #alsoDoes({ act }: App) {
    const { shared } = this;
    return html`<div role="status">${
      shared
        ? html`<div class="notice">
            <p>${say('controls.alsoDoes', { press: pressWords(shared.code), others: formatRow(shared.others.map((other) => say(actions[other]))) })}</p>
            <button
              @click=${() => {
                const { code, others } = shared;
                this.shared = undefined;
                const without = (codes: readonly string[]) => codes.filter((one) => one !== code);
                void act.changeKit(({ keys }) => ({
                  keys: { ...keys, ...Object.fromEntries(others.map((other) => [other, without(keys[other])])) },
                }));
              }}
            >
              ${say('controls.onlyHere', { action: say(actions[shared.action]) })}
            </button>
          </div>`
        : ''
    }</div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit-controls': LarkKitControls;
  }
}

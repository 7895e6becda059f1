import type { Kit } from '@larkhold/store';
import { choiceOf, tickOf } from '@larkhold/ui';
import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import { kitStyles } from './kit-styles.ts';

const ANY = '';

/** The camera: off until asked for, which one, and its set-up. */
@customElement('lark-kit-camera')
export class LarkKitCamera extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  @state() private isSettingUp = false;
  @state() private cameras: MediaDeviceInfo[] = [];

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { camera } = app.view.kit;
    const change = (changes: Partial<Kit['camera']>) => app.act.changeKit({ camera: { ...camera, ...changes } });
    return html`<section aria-labelledby="camera">
      <h2 id="camera">${say('sight.heading')}</h2>
      <p class="dim">${say('sight.about')}</p>
      ${tickOf(say('sight.on'), camera.on, (on) => {
        this.isSettingUp = false;
        void change({ on });
      })}
      ${camera.on ? this.#more(camera, change) : nothing}
    </section>`;
  }

  #more(camera: Kit['camera'], change: (changes: Partial<Kit['camera']>) => void) {
    return html`${tickOf(say('sight.replayOnly'), camera.replayOnly, (replayOnly) => change({ replayOnly }))}
      ${
        camera.replayOnly
          ? nothing
          : html`${tickOf(say('sight.fromAnchor'), camera.countFromAnchor, (countFromAnchor) => change({ countFromAnchor }))}
            ${tickOf(say('sight.formWord'), camera.formWord, (formWord) => change({ formWord }))}`
      }
      ${
        this.cameras.length > 1
          ? html`<div class="fields">
            ${choiceOf(say('sight.which'), camera.deviceId ?? ANY, this.#choices(), (deviceId) => change({ deviceId: deviceId === ANY ? undefined : deviceId }))}
          </div>`
          : nothing
      }
      <div class="row">
        <button @click=${() => void this.#toggle()}>
          ${say(this.isSettingUp ? 'sight.endSetUp' : 'sight.setUp')}
        </button>
      </div>
      ${this.isSettingUp ? html`<lark-sight-setup .deviceId=${camera.deviceId} ?replayOnly=${camera.replayOnly}></lark-sight-setup>` : nothing}`;
  }

  #choices(): Record<string, string> {
    const named = this.cameras.map(({ deviceId, label }, index) => [
      deviceId,
      label || say('sight.nthCamera', { index: index + 1 }),
    ]);
    return { [ANY]: say('sight.anyCamera'), ...Object.fromEntries(named) };
  }

  /** What sees is loaded here for the first time, so that a drill finds it on the device. */
  async #toggle(): Promise<void> {
    if (this.isSettingUp) {
      this.isSettingUp = false;
      return;
    }
    await Promise.all([import('./lark-sight-setup.ts'), import('../shell/lark-sight.ts')]);
    this.isSettingUp = true;
    const devices = navigator.mediaDevices as MediaDevices | undefined;
    const found = (await devices?.enumerateDevices().catch(() => [])) ?? [];
    this.cameras = found.filter(({ kind, deviceId }) => kind === 'videoinput' && deviceId !== '');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit-camera': LarkKitCamera;
  }
}

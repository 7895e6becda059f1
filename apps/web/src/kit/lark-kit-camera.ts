import type { Kit } from '@larkhold/store';
import { choiceOf, tickOf } from '@larkhold/ui';
import { say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import { PlaceElement } from '../shell/place-element.ts';
import { kitStyles } from './kit-styles.ts';

const ANY = '';

/** The camera: off until the archer turns it on, which one, and its set-up. */
@customElement('lark-kit-camera')
export class LarkKitCamera extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    kitStyles,
    css`
      /* The set-up is alone on the page: an archer reads it from metres away. */
      .set-up .row {
        margin: 0.6rem 0 0;
      }
      .set-up .fields {
        margin-top: 0;
      }
    `,
  ];

  @state() private isSettingUp = false;
  @state() private cameras: MediaDeviceInfo[] = [];
  @state() private problem = '';

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { camera } = app.view.kit;
    const change = (changes: Partial<Kit['camera']>) => app.act.changeKit({ camera: { ...camera, ...changes } });
    if (camera.on && this.isSettingUp) return this.#setUp(camera, change);
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
      ${this.#which(camera, change)}
      <div class="row">
        <button class="toggle" @click=${() => void this.#begin()}>${say('sight.setUp')}</button>
      </div>
      <p class="problem" role="status">${this.problem}</p>`;
  }

  #setUp(camera: Kit['camera'], change: (changes: Partial<Kit['camera']>) => void) {
    // Another camera is another set-up.
    return html`<section class="set-up" aria-label=${say('sight.setUp')}>
      ${this.#which(camera, change)}
      ${keyed(
        camera.deviceId,
        html`<lark-sight-setup
          .deviceId=${camera.deviceId}
          ?replayOnly=${camera.replayOnly}
          @lark-looking=${() => void this.#lookForCameras()}
        ></lark-sight-setup>`,
      )}
      <div class="row">
        <button class="toggle" @click=${() => void this.#turn(false)}>${say('sight.endSetUp')}</button>
      </div>
    </section>`;
  }

  #which(camera: Kit['camera'], change: (changes: Partial<Kit['camera']>) => void) {
    if (this.cameras.length < 2) return nothing;
    const choose = (deviceId: string) => change({ deviceId: deviceId === ANY ? undefined : deviceId });
    return html`<div class="fields">
      ${choiceOf(say('sight.which'), camera.deviceId ?? ANY, this.#choices(), choose)}
    </div>`;
  }

  #choices(): Record<string, string> {
    const named = this.cameras.map(({ deviceId, label }, index) => [
      deviceId,
      label || say('sight.nthCamera', { index: index + 1 }),
    ]);
    return { [ANY]: say('sight.anyCamera'), ...Object.fromEntries(named) };
  }

  /** What sees is loaded here for the first time, so that a drill finds it on the device. */
  async #begin(): Promise<void> {
    this.problem = '';
    try {
      await Promise.all([import('./lark-sight-setup.ts'), import('../shell/lark-sight.ts')]);
    } catch {
      this.problem = say('sight.notLoaded');
      return;
    }
    await this.#turn(true);
    this.scrollIntoView({ block: 'start' });
  }

  /** The button that is pressed goes with the page around it: the other one's gets the focus. */
  async #turn(isSettingUp: boolean): Promise<void> {
    this.isSettingUp = isSettingUp;
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.toggle')?.focus({ preventScroll: true });
  }

  /** Browsers name no camera before one was allowed. */
  async #lookForCameras(): Promise<void> {
    const found = await navigator.mediaDevices.enumerateDevices().catch(() => []);
    this.cameras = found.filter(({ kind, deviceId }) => kind === 'videoinput' && deviceId !== '');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit-camera': LarkKitCamera;
  }
}

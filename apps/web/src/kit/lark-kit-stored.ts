import { DEMO_PREFIX } from '@larkhold/engine';
import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import { boxState } from './box-state.ts';
import { kitStyles } from './kit-styles.ts';
import '../shell/offline-ready.ts';
import './lark-integrity.ts';

/** Where everything is kept, whether it can be read, and the demo journal. */
@customElement('lark-kit-stored')
export class LarkKitStored extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { view, act } = app;
    const hasDemo = view.journal.drills.some(({ id }) => id.startsWith(DEMO_PREFIX));
    return html`<section aria-labelledby="stored">
      <h2 id="stored">${say('kit.kept')}</h2>
      ${act.box ? html`<p><a href="#/box">${say('box.kitLink')}</a>${act.box.link ? html`<br /><span class="dim small">${boxState(act.box.link)}</span>` : nothing}</p>` : nothing}
      <p>
        ${view.where === 'disk' ? (act.box?.link ? say('box.onDevice') : say('kit.onDevice')) : say('kit.notKept')}
        ${view.persistence === 'kept' ? say('kit.persistent') : ''}
        ${view.persistence === 'may be cleared' ? say('kit.mayClear') : ''}
      </p>
      <offline-ready></offline-ready>
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
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit-stored': LarkKitStored;
  }
}

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
      <p>
        ${view.where === 'disk' ? (act.box?.link ? say('box.onDevice') : say('kit.onDevice')) : say('kit.notKept')}
        ${view.persistence === 'kept' ? say('kit.persistent') : ''}
        ${view.persistence === 'may be cleared' ? say('kit.mayClear') : ''}
      </p>
      <offline-ready></offline-ready>
      ${act.box ? html`<p class="links"><a href="#/box">${say('box.kitLink')}</a>${act.box.link ? html`<br /><span class="dim small">${boxState(act.box.link)}</span>` : nothing}</p>` : nothing}
      <ul class="deeds">
        ${deed(say('kit.saveAll'), say('kit.saveAllAbout'), () => act.saveBackup())}
        ${
          view.where === 'disk' && view.persistence !== 'kept'
            ? deed(say('kit.askKeep'), say('kit.askKeepAbout'), () => act.keepStored())
            : nothing
        }
        ${
          hasDemo
            ? deed(say('kit.removeDemo'), say('kit.demoAbout'), () => act.removeDemo())
            : deed(say('kit.loadDemo'), say('kit.demoAbout'), () => act.loadDemo())
        }
      </ul>
      <lark-integrity></lark-integrity>
    </section>`;
  }
}

/** One thing that can be done here, and what it is for. */
function deed(words: string, about: string, act: () => unknown) {
  return html`<li><button @click=${act}>${words}</button><span class="dim small">${about}</span></li>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit-stored': LarkKitStored;
  }
}

import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PlaceElement } from './place-element.ts';

/** For a day after a program was replaced: the way back to the old one. */
@customElement('lark-replaced')
export class LarkReplaced extends PlaceElement {
  override render() {
    const { app } = this;
    const replaced = app?.view.replaced;
    if (!app || !replaced) return nothing;
    const { title, at } = replaced;
    return html`<div class="notice" role="status">
      <p>${say('swap.replaced', { title, day: at.slice(0, 10) })}</p>
      <div class="row"><button @click=${() => app.act.undoReplaced()}>${say('swap.undo')}</button></div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-replaced': LarkReplaced;
  }
}

import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PlaceElement } from './place-element.ts';

/** Says that the browser has lost the journal, with one press to a backup or to the box. Nothing where nothing is missed. */
@customElement('lark-lost')
export class LarkLost extends PlaceElement {
  override render() {
    const { app } = this;
    const lost = app?.view.lost;
    if (!app || !lost) return nothing;
    const { drillCount: drills, foundCount: found, lastDay = app.view.today, device } = lost;
    return html`<div class="notice" role="alert">
      <h2>${say('lost.title')}</h2>
      <p>${say('lost.about', { drills, found, lastDay })}</p>
      ${device === undefined ? nothing : html`<p>${say('lost.box', { device })}</p>`}
      <div class="row">
        <a class="button" href="#/restore">${say('lost.openBackup')}</a>
        ${device === undefined ? nothing : html`<a class="button" href="#/box">${say('lost.toBox')}</a>`}
        <button class="quiet" @click=${() => app.act.acceptLoss()}>${say('lost.goOn')}</button>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-lost': LarkLost;
  }
}

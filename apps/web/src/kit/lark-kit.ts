import { say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import './backup-settings.ts';
import { type KitPage, kitPages, kitRows } from './kit-rows.ts';
import { kitStyles } from './kit-styles.ts';
import './lark-kit-bow.ts';
import './lark-kit-camera.ts';
import './lark-kit-controls.ts';
import './lark-kit-display.ts';
import './lark-kit-sound.ts';
import './lark-kit-stored.ts';
import './lark-shot-process.ts';

/**
 * The kit: an index whose rows show how everything is set, and a page for each row; side by side where there is room.
 *
 * @prop page which page is open; any other value opens the index alone
 */
@customElement('lark-kit')
export class LarkKit extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    kitStyles,
    css`
      h1 a {
        text-decoration: none;
      }
      .back::before {
        content: '';
        display: inline-block;
        width: 0.42em;
        height: 0.42em;
        margin-right: 0.35em;
        border: solid currentColor;
        border-width: 0 0 0.1em 0.1em;
        transform: translateY(-0.12em) rotate(45deg);
      }
      .index {
        margin-top: var(--gap);
        border-top: 1px solid var(--rule);
      }
      .index a {
        display: grid;
        gap: 0.1rem;
        min-height: 3.6rem;
        align-content: center;
        padding: 0.55rem 0.2rem 0.55rem 0.9rem;
        border-bottom: 1px solid var(--rule);
        border-left: 3px solid transparent;
        text-decoration: none;
        overflow-wrap: anywhere;
        break-inside: avoid;
      }
      /* On a small phone the files are on the first screen. */
      @media (max-height: 42rem) {
        .index a {
          min-height: var(--touch);
          padding-block: 0.3rem;
          line-height: 1.3;
        }
      }
      .index a:hover .name {
        text-decoration: underline;
      }
      .index a[aria-current] {
        border-left-color: var(--accent);
      }
      .name {
        font-weight: 650;
      }
      @media (min-width: 68rem) {
        .two:not(.open) .index {
          columns: 2;
          column-gap: calc(var(--gap) * 2.5);
        }
        .two.open {
          display: grid;
          grid-template-columns: minmax(15rem, 22rem) minmax(0, 1fr);
          gap: calc(var(--gap) * 2.5);
          align-items: start;
        }
        .back::before {
          display: none;
        }
      }
      @media (max-width: 67.99rem) {
        .open .index {
          display: none;
        }
      }
      @media (forced-colors: active) {
        .index a:not([aria-current]) {
          border-left-color: Canvas;
        }
      }
    `,
  ];

  @property() page: string | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const open = kitPages.find((one) => one === this.page);
    return html`<h1>${open ? html`<a class="back" href="#/kit">${say('kit.kit')}</a>` : say('kit.kit')}</h1>
      <div class="two ${open ? 'open' : ''}">
        <nav class="index" aria-label=${say('kit.kit')}>
          ${kitRows(app.view, app.act.box).map(
            ({ href, name, value }) => html`<a href=${href} aria-current=${href === `#/kit/${open}` ? 'page' : nothing}>
              <span class="name">${name}</span> <span class="dim small">${value}</span>
            </a>`,
          )}
        </nav>
        <div class="page">${open ? this.#page(open) : nothing}</div>
      </div>`;
  }

  #page(page: KitPage) {
    if (page === 'bow') return html`<lark-kit-bow></lark-kit-bow>`;
    if (page === 'shot-process') return html`<lark-shot-process></lark-shot-process>`;
    if (page === 'sound') return html`<lark-kit-sound></lark-kit-sound>`;
    if (page === 'display') return html`<lark-kit-display></lark-kit-display>`;
    if (page === 'controls') return html`<lark-kit-controls></lark-kit-controls>`;
    if (page === 'camera') return html`<lark-kit-camera></lark-kit-camera>`;
    if (page === 'backup') return html`<backup-settings></backup-settings>`;
    return page === 'stored' ? html`<lark-kit-stored></lark-kit-stored>` : this.#safety();
  }

  #safety() {
    return html`<section aria-labelledby="safety">
      <h2 id="safety">${say('kit.safety')}</h2>
      <ul class="safety">
        <li><strong>${say('kit.safetyString')}</strong> ${say('kit.safetyLetDown')}</li>
        <li>${say('kit.safetyPain')}</li>
        <li>${say('kit.safetyWarmUp')}</li>
        <li>${say('kit.safetyYoung')}</li>
        <li>${say('kit.safetyCoach')}</li>
      </ul>
      <p class="dim small">${say('kit.licence')}</p>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-kit': LarkKit;
  }
}

import { controlStyles, pageStyles } from '@larkhold/ui';
import { say } from '@larkhold/words';
import { consume } from '@lit/context';
import { html, LitElement, nothing, render } from 'lit';
import { property } from 'lit/decorators.js';
import { type App, appContext } from './app-context.ts';
import { hrefOf } from './routing.ts';

/**
 * What every place and every part of one has: the app as it is, and the look of a page. Nothing that goes wrong in drawing leaves an empty
 * page: what can't be drawn says so, with the way to a file of everything.
 */
export class PlaceElement extends LitElement {
  static override styles = [pageStyles, controlStyles];

  @consume({ context: appContext, subscribe: true })
  @property({ attribute: false })
  app: App | undefined;

  protected override performUpdate(): void {
    try {
      super.performUpdate();
    } catch (error) {
      // An entry that can't be drawn is looked for and left out; this place is then drawn again without it.
      if (this.app?.act.leaveOut(error) !== true) this.#drawInstead(error);
    }
  }

  /** Laid over whatever was drawn, by the same renderer, so that a later drawing takes its place. */
  #drawInstead(error: unknown): void {
    const reason = error instanceof Error ? error.message : String(error);
    // A part of a page has a host above it that draws the page's heading.
    const root = this.getRootNode();
    const isPart = root instanceof ShadowRoot && root.host instanceof PlaceElement;
    const title = isPart
      ? html`<p><strong>${say('odd.part')}</strong></p>`
      : html`<h1 tabindex="-1">${say('odd.page')}</h1>`;
    render(
      html`<div class="notice undrawn" role="alert">
        ${title}
        <p>${say('odd.reason', { reason })}</p>
        <div class="row">
          <button @click=${() => this.requestUpdate()}>${say('odd.again')}</button>
          <button @click=${() => this.app?.act.saveBackup()}>${say('app.saveEverything')}</button>
          ${isPart ? nothing : html`<a class="button" href=${hrefOf('line')}>${say('odd.toLine')}</a>`}
        </div>
      </div>`,
      this.renderRoot as HTMLElement,
      this.renderOptions,
    );
  }
}

import { pageStyles } from '@larkhold/ui';
import { say } from '@larkhold/words';
import { html, LitElement, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';

/** Says that everything is on the device, so that no network is needed from here on; nothing before, and nothing where a browser keeps no apps. */
@customElement('offline-ready')
export class OfflineReady extends LitElement {
  static override styles = pageStyles;

  @state() private isReady = false;

  override connectedCallback(): void {
    super.connectedCallback();
    const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;
    // It answers once every file of the app is kept.
    void workers?.ready.then(() => {
      this.isReady = true;
    });
  }

  override render() {
    return html`<p class="dim small" role="status">${this.isReady ? say('app.offlineReady') : nothing}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'offline-ready': OfflineReady;
  }
}

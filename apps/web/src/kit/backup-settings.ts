import { choiceOf, tickOf } from '@larkhold/ui';
import { formatCounted, formatDay } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { kitStyles } from './kit-styles.ts';

const spans: Readonly<Record<string, string>> = {
  off: 'Off',
  '1': 'Every day',
  '7': 'Every week',
  '14': 'Every two weeks',
  '30': 'Every 30 days',
};

const endWords = {
  saved: 'The backup is in the folder.',
  'not allowed': 'The browser did not allow it: nothing was written.',
  'no folder': 'No folder is chosen on this device.',
  failed: 'The backup could not be written. Is the folder there, and is there room?',
} as const;

/** How often a backup is made, and where it goes. Off until asked for. */
@customElement('backup-settings')
export class BackupSettings extends PlaceElement {
  static override styles = [...PlaceElement.styles, kitStyles];

  @state() private folderName: string | undefined;
  @state() private said = '';
  #hasLooked = false;

  protected override updated(): void {
    const folder = this.app?.act.folderBackup;
    if (!folder || this.#hasLooked) return;
    this.#hasLooked = true;
    void folder.folderName().then((name) => {
      this.folderName = name;
    });
  }

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { backup } = app.view.kit;
    const { everyDays, lastAt } = backup;
    const value = everyDays === undefined ? 'off' : String(everyDays);
    const options = value in spans ? spans : { ...spans, [value]: `Every ${formatCounted(everyDays ?? 0, 'day')}` };
    return html`<section aria-labelledby="backup">
      <h2 id="backup">Backup</h2>
      <div class="fields">
        ${choiceOf('How often', value, options, (choice) =>
          this.#change(app, { everyDays: choice === 'off' ? undefined : Number(choice) }),
        )}
      </div>
      ${everyDays === undefined ? nothing : this.#folder(app)}
      <p class="dim small">${lastAt === undefined ? 'No backup was made yet.' : `The last backup was made on ${formatDay(lastAt.slice(0, 10), 'year')}.`}</p>
      <p role="status">${this.said}</p>
    </section>`;
  }

  #folder(app: App) {
    const { folderBackup } = app.act;
    if (!folderBackup) {
      return html`<p>This browser cannot write to a folder by itself. You are reminded instead, and save the file yourself.</p>`;
    }
    const { toFolder } = app.view.kit.backup;
    return html`${tickOf('Write it into a folder by itself', toFolder, (isOn) =>
      isOn ? this.#choose(app) : this.#forget(app),
    )}
    ${
      toFolder
        ? html`<p>${this.folderName === undefined ? 'No folder is chosen on this device.' : `Folder: ${this.folderName}. The last ten backups of this device stay in it.`}</p>
            <div class="row">
              ${this.folderName === undefined ? nothing : html`<button @click=${() => this.#saveNow(app)}>Save a backup now</button>`}
              <button @click=${() => this.#choose(app)}>${this.folderName === undefined ? 'Choose a folder' : 'Choose another folder'}</button>
            </div>`
        : html`<p class="dim small">Without a folder you are reminded, and save the file yourself.</p>`
    }`;
  }

  async #choose(app: App): Promise<void> {
    this.said = '';
    const name = await app.act.folderBackup?.choose();
    // The tick goes back by itself where the choice was left.
    if (name === undefined) this.requestUpdate();
    if (name === undefined) return;
    this.folderName = name;
    await this.#change(app, { toFolder: true });
    await this.#saveNow(app);
  }

  async #forget(app: App): Promise<void> {
    this.said = '';
    this.folderName = undefined;
    await app.act.folderBackup?.forget();
    await this.#change(app, { toFolder: false });
  }

  async #saveNow({ act }: App): Promise<void> {
    this.said = endWords[await act.saveToFolder(true)];
  }

  async #change({ act }: App, changes: Partial<App['view']['kit']['backup']>): Promise<void> {
    await act.changeKit(({ backup }) => ({ backup: { ...backup, ...changes } }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'backup-settings': BackupSettings;
  }
}

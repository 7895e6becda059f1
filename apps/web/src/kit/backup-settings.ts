import { choiceOf, tickOf } from '@larkhold/ui';
import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { kitStyles } from './kit-styles.ts';

const spansOf = (): Record<string, string> => ({
  off: say('backup.off'),
  '1': say('backup.everyDay'),
  '7': say('backup.everyWeek'),
  '14': say('backup.everyTwoWeeks'),
  '30': say('backup.everyDays', { days: 30 }),
});

const endWords = {
  saved: 'backup.isWritten',
  'not allowed': 'backup.notAllowed',
  'no folder': 'backup.noFolderHere',
  failed: 'backup.notWritten',
} as const;

/** How often a backup is made, and where it goes. Off until the archer turns it on. */
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
    const spans = spansOf();
    const options = value in spans ? spans : { ...spans, [value]: say('backup.everyDays', { days: everyDays ?? 0 }) };
    return html`<section aria-labelledby="backup">
      <h2 id="backup">${say('backup.heading')}</h2>
      <p class="dim">${say('backup.about')}</p>
      <div class="fields">
        ${choiceOf(say('backup.howOften'), value, options, (choice) =>
          this.#change(app, { everyDays: choice === 'off' ? undefined : Number(choice) }),
        )}
      </div>
      ${everyDays === undefined ? nothing : this.#folder(app)}
      <p class="dim small last">${lastAt === undefined ? say('backup.none') : say('backup.last', { day: lastAt.slice(0, 10) })}</p>
      <div class="row"><button @click=${() => app.act.saveBackup()}>${say('backup.saveAll')}</button></div>
      <p role="status">${this.said}</p>
    </section>`;
  }

  #folder(app: App) {
    const { folderBackup } = app.act;
    if (!folderBackup) {
      return html`<p>${say('backup.cannot')}</p>`;
    }
    const { toFolder } = app.view.kit.backup;
    return html`${tickOf(say('backup.byItself'), toFolder, (isOn) => (isOn ? this.#choose(app) : this.#forget(app)))}
    ${
      toFolder
        ? html`<p>${this.folderName === undefined ? say('backup.noFolderHere') : say('backup.folder', { folder: this.folderName ?? '' })}</p>
            <div class="row">
              ${this.folderName === undefined ? nothing : html`<button @click=${() => this.#saveNow(app)}>${say('backup.saveNow')}</button>`}
              <button @click=${() => this.#choose(app)}>${this.folderName === undefined ? say('backup.chooseFolder') : say('backup.another')}</button>
            </div>`
        : html`<p class="dim small">${say('backup.without')}</p>`
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
    this.said = say(endWords[await act.saveToFolder(true)]);
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

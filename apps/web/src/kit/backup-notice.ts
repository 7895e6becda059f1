import { say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import type { FolderBackupEnd } from '../shell/folder-backup.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { daysSince, isBackupDue } from './backup-due.ts';

/** Makes the backup that is due, where the archer chose a folder; reminds of it where that is not possible. Says nothing otherwise. */
@customElement('backup-notice')
export class BackupNotice extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .notice {
        margin-bottom: var(--gap);
      }
      p {
        margin: 0 0 0.6rem;
      }
    `,
  ];

  /** The day on which writing was last tried, and how it ended. */
  @state() private tried: { day: string; end?: FolderBackupEnd } | undefined;
  @state() private putOffOn: string | undefined;

  protected override willUpdate(): void {
    const { app } = this;
    if (!app || !this.#isDue(app) || !app.view.kit.backup.toFolder || !app.act.folderBackup) return;
    if (app.view.runsElsewhere || this.tried?.day === app.view.today) return;
    void this.#save(app, false);
  }

  override render() {
    const { app } = this;
    if (!app || !this.#isDue(app) || this.putOffOn === app.view.today) return nothing;
    const { folderBackup } = app.act;
    if (!app.view.kit.backup.toFolder || !folderBackup) return this.#reminder(app);
    const end = this.tried?.end;
    if (end === undefined || end === 'saved') return nothing;
    const words = {
      'not allowed': say('backup.mayAsk'),
      'no folder': say('backup.noFolder'),
      failed: say('backup.failed'),
    };
    return html`<div class="notice" role="status">
      <p>${words[end]}</p>
      <div class="row">
        ${
          end === 'no folder'
            ? html`<a class="button" href="#/kit/backup">${say('backup.choose')}</a>`
            : html`<button @click=${() => this.#save(app, true)}>${say('backup.save')}</button>`
        }
        ${end === 'not allowed' ? nothing : this.#asFile(app)} ${this.#notNow(app)}
      </div>
    </div>`;
  }

  #reminder(app: App) {
    const days = daysSince(app.view.kit.backup.lastAt, app.act.instant());
    return html`<div class="notice" role="status">
      <p>${days === undefined || days < 0 ? say('backup.dueNone') : say('backup.due', { days })}</p>
      <div class="row">${this.#asFile(app)} ${this.#notNow(app)}</div>
    </div>`;
  }

  #asFile({ act }: App) {
    return html`<button @click=${() => act.saveBackup()}>${say('backup.saveAll')}</button>`;
  }

  #notNow({ view }: App) {
    return html`<button
      class="quiet"
      @click=${() => {
        this.putOffOn = view.today;
      }}
    >
      ${say('backup.notNow')}
    </button>`;
  }

  /** Nothing is due while there is nothing to keep, or while a drill fills the screen. */
  #isDue({ view, act }: App): boolean {
    const { drills, days, weeks } = view.journal;
    const isEmpty = drills.length + days.length + weeks.length === 0;
    return !isEmpty && !view.isDrilling && isBackupDue(view.kit.backup, act.instant());
  }

  async #save({ view, act }: App, asks: boolean): Promise<void> {
    const day = view.today;
    this.tried = { ...this.tried, day };
    const end = await act.saveToFolder(asks);
    this.tried = { day, end };
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'backup-notice': BackupNotice;
  }
}

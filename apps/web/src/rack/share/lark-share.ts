import { formatProgram, type Program } from '@larkhold/engine';
import { say } from '@larkhold/words';
import { css, html, nothing, type PropertyValues, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { PlaceElement } from '../../shell/place-element.ts';
import { qrOf } from '../../shell/qr-modules.ts';
import { fileNameOf } from '../../shell/save-file.ts';
import { canChooseFile, chooseFile, type FileTarget } from './file-target.ts';
import { forgetTarget, keepTarget, keptTarget } from './kept-targets.ts';
import { formatLink } from './program-link.ts';

/**
 * Gives a program to somebody else: as a file, by the system's sheet, as a link, as a QR code.
 *
 * @prop program what is given
 * @prop address of the app, for the link
 */
@customElement('lark-share')
export class LarkShare extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .link {
        display: flex;
        flex-wrap: wrap;
        gap: 0.6rem;
        margin-top: 1rem;
        align-items: end;
      }
      .link label {
        flex: 1 1 16rem;
        min-width: 0;
      }
      .link input {
        width: 100%;
      }
      figure {
        max-width: 22rem;
        margin-top: 1rem;
      }
      svg {
        display: block;
        width: 100%;
        height: auto;
        border-radius: 6px;
        background: #fff; /* readers need dark squares on light, whatever the theme */
        forced-color-adjust: none;
      }
      path {
        fill: #000;
      }
      p {
        margin-top: 0.6rem;
      }
    `,
  ];

  @property({ attribute: false }) program: Program | undefined;
  @property({ attribute: false }) address = globalThis.location.href;
  @state() private said = '';
  @state() private target: FileTarget | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('program')) return;
    const { program } = this;
    const old: Program | undefined = changed.get('program');
    if (program && old && keyOf(program) === keyOf(old)) return;
    this.target = undefined;
    if (program && canChooseFile(window)) void this.#recall(keyOf(program));
  }

  override render() {
    const { program, target } = this;
    if (!program) return nothing;
    const link = formatLink(this.address, program);
    return html`<div class="row">
        ${target ? html`<button @click=${() => this.#write(target)}>${say('share.again', { file: target.name })}</button>` : nothing}
        <button @click=${this.#save}>${say(target ? 'share.another' : 'share.save')}</button>
        ${this.#canShare() ? html`<button @click=${this.#share}>${say('share.send')}</button>` : nothing}
      </div>
      <div class="link">
        <label>${say('share.link')} <input readonly .value=${link} @focus=${select} /></label>
        <button @click=${() => this.#copy(link)}>${say('share.copy')}</button>
      </div>
      <p class="small dim">${say('share.inLink')}</p>
      <p role="status">${this.said}</p>
      ${this.#qr(link)}`;
  }

  #qr(link: string) {
    const qr = qrOf(link);
    if (!qr) return html`<p class="small dim">${say('share.tooLong')}</p>`;
    return html`<details>
      <summary>${say('share.qr')}</summary>
      <figure>
        ${svg`<svg viewBox="0 0 ${qr.size} ${qr.size}" role="img" aria-label=${say('share.qrOf')} shape-rendering="crispEdges"><path d=${qr.path}></path></svg>`}
        <figcaption class="small dim">${say('share.qrAbout')}</figcaption>
      </figure>
    </details>`;
  }

  #file(program: Program): File {
    return new File([formatProgram(program)], `${fileNameOf(program.title)}.drill.json`, { type: 'application/json' });
  }

  /** Some systems take text but no such file; the link goes with either. */
  #canShare(): boolean {
    return typeof navigator.share === 'function';
  }

  readonly #save = async (): Promise<void> => {
    const { app, program } = this;
    if (!app || !program) return;
    const name = `${fileNameOf(program.title)}.drill.json`;
    if (!canChooseFile(window)) {
      app.act.saveFile(name, formatProgram(program));
      this.said = say('share.savedAs', { file: name });
      return;
    }
    try {
      const target = await chooseFile(window, name);
      if (target) await this.#write(target);
    } catch {
      app.act.saveFile(name, formatProgram(program)); // pickers are refused in some frames; a download is not
    }
  };

  async #recall(key: string): Promise<void> {
    const target = await keptTarget(key);
    if (target && this.program && keyOf(this.program) === key) this.target ??= target;
  }

  async #write(target: FileTarget): Promise<void> {
    const { program } = this;
    if (!program) return;
    try {
      await target.write(formatProgram(program));
      await keepTarget(keyOf(program), target);
      this.target = target;
      this.said = say('share.savedTo', { file: target.name });
    } catch (error) {
      // Moved or deleted: it will not come back. A refusal may be taken back.
      if (error instanceof DOMException && error.name === 'NotFoundError') {
        await forgetTarget(keyOf(program));
        this.target = undefined;
      }
      this.said = say('share.notWritten', { file: target.name });
    }
  }

  readonly #share = async (): Promise<void> => {
    const { program } = this;
    if (!program) return;
    const files = [this.#file(program)];
    const text = { title: program.title, url: formatLink(this.address, program) };
    try {
      await navigator.share(navigator.canShare?.({ files }) ? { title: program.title, files } : text);
    } catch (error) {
      if (!(error instanceof DOMException && error.name === 'AbortError')) this.said = say('share.notShared');
    }
  };

  async #copy(link: string): Promise<void> {
    try {
      await navigator.clipboard.writeText(link);
      this.said = say('share.copied');
    } catch {
      this.renderRoot.querySelector('input')?.select();
      this.said = say('share.marked');
    }
  }
}

function keyOf({ id, title }: Program): string {
  return id ?? title;
}

function select({ target }: Event): void {
  if (target instanceof HTMLInputElement) target.select();
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-share': LarkShare;
  }
}

import {
  asAnother,
  formatProgram,
  idOf,
  inPlaceOf,
  layOut,
  type Program,
  prescribe,
  type ReadProgramFile,
  readProgramFile,
  timeUnderTensionMs,
} from '@larkhold/engine';
import { blockSentence, cautionsOf, formatDuration, ladderSentences, say, toolWord } from '@larkhold/words';
import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../../shell/app-context.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import '../lark-file-answer.ts';
import '@larkhold/ui';
import { hrefOf } from '../../shell/routing.ts';
import { parsePayload, type ReadLink } from './program-link.ts';

/**
 * Shows the program of a link. Nothing is added until the archer says so.
 *
 * @prop payload what follows `#/open/` in the link
 */
@customElement('lark-open-link')
export class LarkOpenLink extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .about {
        margin-top: 0.8rem;
        white-space: pre-line;
        overflow-wrap: anywhere;
      }
      .facts {
        display: flex;
        flex-wrap: wrap;
        gap: 0.8rem 2.4rem;
        margin: var(--gap) 0;
      }
      .facts dd {
        font-size: var(--text-large);
        font-weight: 650;
      }
      .row {
        margin: var(--gap) 0;
      }
      section + .notice {
        margin-top: calc(var(--gap) * 1.4);
      }
      .words {
        margin-top: 0.4rem;
        padding-left: 1.1rem;
        list-style: disc;
        color: var(--dim);
        overflow-wrap: anywhere;
      }
    `,
  ];

  @property({ attribute: false }) payload = '';
  @state() private answer: ReadProgramFile | undefined;
  #read: ReadLink = { ok: false, message: '' };

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('payload')) return;
    this.#read = parsePayload(this.payload);
    this.answer = undefined;
  }

  override render() {
    const { app } = this;
    if (!app) return nothing;
    if (!this.#read.ok) {
      return html`<h1>${say('share.cannotOpen')}</h1>
        <p>${this.#read.message}</p>
        <p class="row"><a class="button" href=${hrefOf('rack')}>${say('rack.toRack')}</a></p>`;
    }
    const { program } = this.#read;
    const same = app.view.programs.find((one) => formatProgram({ ...one, id: program.id }) === formatProgram(program));
    const tool = toolWord(program.tool);
    return html`<p class="dim">${say('share.fromLink')}</p>
      <h1>${program.title}</h1>
      <p class="dim">${program.author ? say('rack.byAuthor', { tool, author: program.author }) : tool}</p>
      ${program.about ? html`<p class="about">${program.about}</p>` : nothing}
      <div class="row">
        ${
          same
            ? html`<p>${say('share.there')}</p><a class="button" href=${hrefOf('rack', idOf(same))}>${say('share.show')}</a>`
            : html`<button class="main" @click=${() => this.#accept(app, program)}>${say('share.add')}</button>`
        }
        <a class="button" href=${hrefOf('rack')}>${say('share.notNow')}</a>
      </div>
      ${same ? nothing : html`<p class="small dim">${say('share.nothingAdded')}</p>`} ${this.#preview(app, program)}
      ${this.answer ? html`<lark-file-answer .answer=${this.answer} @lark-answered=${this.#answered}></lark-file-answer>` : nothing}`;
  }

  #preview({ view }: App, program: Program) {
    const prescription = prescribe({ program, records: [], today: view.today });
    const { units } = view.kit;
    return html`<dl class="facts numbers">
        <div><dt class="dim small">${say('share.inAll')}</dt><dd>${formatDuration(prescription.durationMs)}</dd></div>
        <div><dt class="dim small">${say('share.fullDraw')}</dt><dd>${formatDuration(timeUnderTensionMs(prescription))}</dd></div>
      </dl>
      <lark-timeline-picture .timeline=${layOut(prescription)}></lark-timeline-picture>
      ${program.blocks.map(
        (block) => html`<section>
          <h2>${block.title}</h2>
          <p>${blockSentence(block, units)}</p>
          <ul class="words">
            ${ladderSentences(block, units).map((words) => html`<li>${words}</li>`)}
          </ul>
        </section>`,
      )}
      ${cautionsOf(prescription).map((words) => html`<p class="notice">${words}</p>`)}`;
  }

  async #accept(app: App, program: Program): Promise<void> {
    const read = readProgramFile(say('share.theLink'), formatProgram(program), app.view.programs, app.act.newId);
    if (read.kind === 'new') await this.#put(read.program);
    else this.answer = read;
  }

  async #put(program: Program): Promise<void> {
    if (await this.app?.act.putProgram(program)) location.hash = hrefOf('rack', idOf(program));
  }

  readonly #answered = async (event: CustomEvent<{ choice: 'both' | 'replace' | 'none' }>): Promise<void> => {
    const { answer, app } = this;
    this.answer = undefined;
    if (answer?.kind !== 'same' || !app) return;
    if (event.detail.choice === 'both') await this.#put(asAnother(answer.program, app.view.programs, app.act.newId));
    else if (event.detail.choice === 'replace') await this.#put(inPlaceOf(answer.program, answer.there));
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-open-link': LarkOpenLink;
  }
}

import { layOut, type Prescription } from '@larkhold/engine';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import '../shell/fatigue-curve.ts';
import { say, type Units } from '@larkhold/words';
import '../shell/lark-cue-track.ts';
import { idOf, timeUnderTensionMs } from '@larkhold/engine';
import { blockSentence, ladderSentences, toolWord } from '@larkhold/words';
import { PlaceElement } from '../shell/place-element.ts';
import { benchHref, hrefOf, planHref } from '../shell/routing.ts';
import '../shell/lark-notes.ts';
import './share/lark-share.ts';
import { doseLine, lengthLine, type NumberPiece, type Piece, restLine } from '@larkhold/words';
import { todaysPrescription } from '../shell/todays-prescription.ts';
import { whyLine, whyStyles } from '../shell/why-line.ts';
import '@larkhold/ui';

/**
 * One program in full: what it asks, how it grows, where its numbers come from.
 *
 * @prop programId its id
 */
@customElement('lark-program')
export class LarkProgram extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    whyStyles,
    css`
      h1 {
        margin: 0.6rem 0 0.4rem;
      }
      .about {
        margin-top: 0.8rem;
        white-space: pre-line;
        overflow-wrap: anywhere;
      }
      .today {
        margin: var(--gap) 0;
      }
      .today .dim:not(:first-child) {
        margin-top: 0.6rem;
      }
      .dose {
        margin-top: 0.3rem;
        font-size: var(--text-large);
        font-weight: 650;
        font-variant-numeric: tabular-nums;
      }
      .dim + .dose {
        margin-top: 0;
      }
      fatigue-curve {
        margin-top: 0.8rem;
      }
      .block {
        margin-top: 1.1rem;
      }
      .block ul,
      .lines {
        margin-top: 0.5rem;
        padding-left: 1.1rem;
        list-style: disc;
        color: var(--dim);
      }
      .row {
        margin-top: var(--gap);
      }
      lark-cue-track {
        display: block;
        margin-top: var(--gap);
      }
      lark-share,
      lark-notes {
        margin-top: 0.8rem;
      }
      .source {
        overflow-wrap: anywhere;
      }
    `,
  ];

  @property({ attribute: false }) programId = '';
  @state() private asked: NumberPiece | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const program = app.view.programs.find((one) => idOf(one) === this.programId);
    if (!program) {
      return html`<h1>${say('rack.notThere')}</h1><p>${say('rack.noSuch')} <a href=${hrefOf('rack')}>${say('rack.toRack')}</a></p>`;
    }
    const prescription = todaysPrescription(app.view, program);
    const { units } = app.view.kit;
    const tool = toolWord(program.tool);
    return html`<p><a href=${hrefOf('rack')}>${say('rack.title')}</a></p>
      <h1>${program.title}</h1>
      <p class="dim">${program.author ? say('rack.byAuthor', { tool, author: program.author }) : tool}</p>
      ${program.about ? html`<p class="about">${program.about}</p>` : nothing}
      ${this.#today(prescription, units)}
      <lark-timeline-picture .timeline=${layOut(prescription)}></lark-timeline-picture>
      <fatigue-curve .prescription=${prescription}></fatigue-curve>
      ${this.#buttons(app, program)}
      <lark-cue-track .prescription=${prescription} .programTitle=${program.title} .programId=${this.programId}></lark-cue-track>
      <section aria-labelledby="blocks">
        <h2 id="blocks">${say('rack.asks')}</h2>
        ${program.blocks.map(
          (block) => html`<div class="block">
            <h3>${block.title}</h3>
            <p>${blockSentence(block, units)}</p>
            <ul>
              ${ladderSentences(block, units).map((line) => html`<li>${line}</li>`)}
            </ul>
          </div>`,
        )}
      </section>
      ${this.#lines(say('rack.warmUp'), program.warmUp)} ${this.#lines(say('rack.coolDown'), program.coolDown)}
      ${
        program.source
          ? html`<section><h2>${say('rack.source')}</h2><p class="source dim">${program.source}</p></section>`
          : nothing
      }
      <section aria-labelledby="give">
        <h2 id="give">${say('rack.give')}</h2>
        <lark-share .program=${program}></lark-share>
      </section>
      <section aria-labelledby="notes">
        <h2 id="notes">${say('rack.notes')}</h2>
        <lark-notes .programId=${this.programId}></lark-notes>
      </section>`;
  }

  /** Today's numbers; each answers why. */
  #today(prescription: Prescription, units: Units) {
    const ask = (piece: NumberPiece | undefined): void => {
      this.asked = piece;
    };
    const line = (look: string, pieces: readonly Piece[]) =>
      whyLine({ prescription, pieces, asked: this.asked, ask, look });
    const held = say('rack.heldOfIt', { ms: timeUnderTensionMs(prescription) });
    const nameOf = (title: string) =>
      prescription.blocks.length > 1 ? say('rack.todayBlock', { block: title }) : say('rack.today');
    return html`<section class="today numbers" aria-label=${say('rack.today')}>
      ${prescription.blocks.map(
        (block) =>
          html`<p class="dim small">${nameOf(block.title)}</p>
            ${line('dose', doseLine(block))} ${line('', restLine(block, units))}`,
      )}
      ${line('', [...lengthLine(prescription), ` ${held}`])}
    </section>`;
  }

  #buttons({ view, act }: App, program: App['view']['chosen']) {
    const isOpened = program.id !== undefined && view.openedIds.has(program.id);
    return html`<div class="row">
      ${
        program === view.chosen
          ? html`<a class="button" href=${hrefOf('line')}>${say('rack.toLine')}</a>`
          : html`<button class="main" @click=${() => act.chooseProgram(idOf(program))}>${say('rack.takeToday')}</button>`
      }
      <a class="button" href=${benchHref(idOf(program))}>${say(isOpened ? 'rack.edit' : 'rack.editCopy')}</a>
      <a class="button" href=${planHref(idOf(program))}>${say('rack.comingWeeks')}</a>
      ${isOpened ? html`<button class="quiet" @click=${this.#ask}>${say('rack.remove')}</button>` : nothing}
    </div>
    ${
      isOpened
        ? html`<dialog aria-labelledby="ask">
          <h2 id="ask">${say('rack.removeAsk', { title: program.title })}</h2>
          <p>${say('rack.removeAbout')}</p>
          <div class="row">
            <button @click=${() => this.#remove()}>${say('rack.remove')}</button>
            <button class="main" @click=${this.#close}>${say('rack.keep')}</button>
          </div>
        </dialog>`
        : nothing
    }`;
  }

  #lines(title: string, lines: readonly string[] | undefined) {
    if (!lines || lines.length === 0) return nothing;
    return html`<section>
      <h2>${title}</h2>
      <ul class="lines">
        ${lines.map((line) => html`<li>${line}</li>`)}
      </ul>
    </section>`;
  }

  readonly #ask = (): void => {
    this.renderRoot.querySelector('dialog')?.showModal();
  };

  readonly #close = (): void => {
    this.renderRoot.querySelector('dialog')?.close();
  };

  async #remove(): Promise<void> {
    this.#close();
    await this.app?.act.removeProgram(this.programId);
    location.hash = hrefOf('rack');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-program': LarkProgram;
  }
}

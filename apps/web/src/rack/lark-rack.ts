import { asAnother, idOf, inPlaceOf, type Program, type ReadProgramFile, readProgramFile } from '@larkhold/engine';
import { say, toolWord } from '@larkhold/words';
import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { removedNotices } from '../shell/removed-notices.ts';
import { benchHref, hrefOf } from '../shell/routing.ts';
import { isForField, pastedProgram } from './share/pasted-program.ts';
import './routines/lark-routines.ts';
import { todaysPrescription } from '../shell/todays-prescription.ts';
import '../shell/lark-notes.ts';
import { type DecodedFile, decodeProgramFile } from './decode-program-file.ts';
import './lark-file-answer.ts';
import { programStrokes } from './program-strokes.ts';

/** What the app was opened with is opened once, however often the archer comes back to the rack. */
const taken = new WeakSet<readonly File[]>();

/**
 * The programs: built-in and opened ones, and opening another.
 *
 * @prop incoming files that the app was opened with
 */
@customElement('lark-rack')
export class LarkRack extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      header {
        display: flex;
        flex-wrap: wrap;
        gap: 0.8rem 1.2rem;
        align-items: center;
        justify-content: space-between;
      }
      lark-notes {
        margin-top: 0.8rem;
      }
      @media (max-width: 30rem) {
        header :is(button, .button) {
          padding-inline: 0.5rem;
          font-size: var(--text-small);
          overflow-wrap: anywhere;
        }
        header .row {
          min-width: 0;
        }
        header .row > * {
          flex: 1 1 auto;
        }
      }
      .programs {
        margin-top: var(--gap);
      }
      li {
        display: flex;
        flex-wrap: wrap;
        gap: 0.2rem 1rem;
        align-items: center;
        padding: 0.7rem 0 0.35rem 0.9rem;
        border-left: 3px solid transparent;
      }
      li.chosen {
        border-left-color: var(--accent);
      }
      li > div,
      li p {
        flex: 1 1 8rem; /* in large text the button goes below */
        min-width: 0;
      }
      /* Today's drill is drawn on the row's own rule. */
      .strokes {
        flex: none;
        width: 100%;
        height: 1.5rem;
        fill: var(--dim);
      }
      .chosen .strokes {
        fill: var(--ink);
      }
      .strokes .ground {
        fill: none;
        stroke: var(--faint);
        vector-effect: non-scaling-stroke;
      }
      li a {
        font-size: var(--text-large);
        font-weight: 650;
        overflow-wrap: anywhere;
      }
      /* On a phone a title has the whole row: German ones are long words. */
      @media (max-width: 30rem) {
        li > div {
          display: contents;
        }
        li a {
          flex: 1 0 100%;
        }
      }
      @media (forced-colors: active) {
        li:not(.chosen) {
          border-left-color: Canvas;
        }
      }
      .drop {
        margin-top: var(--gap);
        padding: 1.2rem;
        border: 1.5px dashed var(--faint);
        border-radius: var(--radius);
        color: var(--dim);
        text-align: center;
      }
      .drop.over {
        border-color: var(--accent);
        color: var(--ink);
      }
      .said {
        margin-top: 1rem;
      }
      .said:empty {
        display: none;
      }
    `,
  ];

  @property({ attribute: false }) incoming: readonly File[] = [];
  @state() private answers: readonly ReadProgramFile[] = [];
  @state() private said = '';
  @state() private isOver = false;

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('incoming') || taken.has(this.incoming)) return;
    taken.add(this.incoming);
    void this.#open(this.incoming);
  }

  override render() {
    const { app } = this;
    if (!app) return nothing;
    return html`<header>
        <h1>${say('rack.title')}</h1>
        <div class="row">
          <a class="button" href="#/files">${say('files.title')}</a>
          <a class="button" href=${benchHref('new')}>${say('rack.newProgram')}</a>
          <button @click=${this.#pick}>${say('rack.openFile')}</button>
        </div>
        <input
          class="visually-hidden"
          type="file"
          tabindex="-1"
          aria-label=${say('rack.file')}
          accept=".json,application/json"
          multiple
          @change=${this.#picked}
        />
      </header>
      <p class="said notice" role="status">${this.said}</p>
      ${removedNotices(app, 'program')}
      <ul class="programs">
        ${app.view.programs.map((program) => this.#program(app, program))}
      </ul>
      <p class="drop ${this.isOver ? 'over' : ''}">${say('rack.drop')}</p>
      <section aria-labelledby="routines">
        <h2 id="routines">${say('rack.routines')}</h2>
        <p class="dim">${say('rack.routinesAbout')}</p>
        <lark-routines></lark-routines>
      </section>
      <section aria-labelledby="notes">
        <h2 id="notes">${say('rack.notes')}</h2>
        <lark-notes></lark-notes>
      </section>
      ${
        this.answers[0]
          ? html`<lark-file-answer .answer=${this.answers[0]} @lark-answered=${this.#answered}></lark-file-answer>`
          : nothing
      }`;
  }

  #program(app: App, program: Program) {
    const isChosen = program === app.view.chosen;
    const prescription = todaysPrescription(app.view, program);
    const isOpened = program.id !== undefined && app.view.openedIds.has(program.id);
    const facts = { tool: toolWord(program.tool), ms: prescription.durationMs };
    return html`<li class=${isChosen ? 'chosen' : ''}>
      <div>
        <a href=${hrefOf('rack', idOf(program))}>${program.title}</a>
        <p class="dim small">${say(isOpened ? 'rack.entryOpened' : 'rack.entry', facts)}</p>
      </div>
      ${
        isChosen
          ? html`<strong class="small">${say('rack.todays')}</strong>`
          : html`<button
              aria-label=${say('rack.takeOne', { title: program.title })}
              ?disabled=${program.id === undefined}
              @click=${() => app.act.chooseProgram(idOf(program))}
            >
              ${say('rack.take')}
            </button>`
      }
      ${programStrokes(prescription)}
    </li>`;
  }

  readonly #pick = (): void => {
    this.renderRoot.querySelector<HTMLInputElement>('input[type="file"]')?.click();
  };

  readonly #picked = (event: Event): void => {
    if (!(event.target instanceof HTMLInputElement)) return;
    void this.#open([...(event.target.files ?? [])]);
    // So that the same file, mended, can be picked again.
    event.target.value = '';
  };

  readonly #dragged = (event: DragEvent): void => {
    if (isForField(event)) return;
    event.preventDefault(); // without this a dropped file takes the place of the app
    this.isOver = true;
  };

  readonly #draggedAway = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.isOver = false;
  };

  readonly #dropped = (event: DragEvent): void => {
    this.isOver = false;
    if (isForField(event)) return;
    event.preventDefault();
    this.#take(event.dataTransfer);
  };

  readonly #pasted = (event: ClipboardEvent): void => {
    if (!isForField(event)) this.#take(event.clipboardData);
  };

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('paste', this.#pasted);
    window.addEventListener('dragover', this.#dragged);
    window.addEventListener('dragleave', this.#draggedAway);
    window.addEventListener('drop', this.#dropped);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('paste', this.#pasted);
    window.removeEventListener('dragover', this.#dragged);
    window.removeEventListener('dragleave', this.#draggedAway);
    window.removeEventListener('drop', this.#dropped);
  }

  #take(what: DataTransfer | null): void {
    const files = [...(what?.files ?? [])];
    const text = what?.getData('text/plain') ?? '';
    const pasted = pastedProgram(text);
    if (files.length > 0) void this.#open(files);
    else if (pasted.kind === 'link') location.hash = `#/open/${pasted.payload}`;
    else if (pasted.kind === 'text') void this.#read(say('rack.pastedText'), { ok: true, text });
    else if (text !== '') this.said = say('rack.neither');
  }

  async #open(files: readonly File[]): Promise<void> {
    for (const file of files) await this.#read(file.name, await decodeProgramFile(file));
  }

  async #read(name: string, decoded: DecodedFile): Promise<void> {
    if (!this.app) return;
    const { view, act } = this.app;
    const read: ReadProgramFile = decoded.ok
      ? readProgramFile(name, decoded.text, view.programs, act.newId)
      : { kind: 'broken', name, problems: [decoded.problem] };
    if (read.kind === 'new') await this.#put(read.program, 'rack.inRack');
    else this.answers = [...this.answers, read];
  }

  async #put(program: Program, done: 'rack.inRack' | 'rack.replaced'): Promise<void> {
    if (await this.app?.act.takeProgram(program)) this.said = say(done, { title: program.title });
  }

  readonly #answered = async (event: CustomEvent<{ choice: 'both' | 'replace' | 'none' }>): Promise<void> => {
    const [answer, ...rest] = this.answers;
    this.answers = rest;
    if (answer?.kind !== 'same' || !this.app) return;
    const { programs } = this.app.view;
    if (event.detail.choice === 'both') {
      await this.#put(asAnother(answer.program, programs, this.app.act.newId), 'rack.inRack');
    } else if (event.detail.choice === 'replace') {
      await this.#put(inPlaceOf(answer.program, answer.there), 'rack.replaced');
    }
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-rack': LarkRack;
  }
}

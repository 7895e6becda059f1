import {
  asAnother,
  type CoachAnswer,
  commentedWeek,
  createJournal,
  type HandOver,
  idOf,
  isSameDrill,
  type Journal,
  type JournalComparison,
  type Program,
  type Season,
} from '@larkhold/engine';
import type { CarriedKit, LeftValue, TakenIn } from '@larkhold/store';
import { formatRow, pieces, problemWords, say } from '@larkhold/words';
import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../app-context.ts';
import { PlaceElement } from '../place-element.ts';
import { PostElement } from '../post-element.ts';
import '../program-swap.ts';
import { tickOf } from '@larkhold/ui';
import { compareInTurns } from './compare-in-turns.ts';
import { type EditClash, findClashes } from './edit-clashes.ts';
import type { Incoming } from './read-incoming.ts';
import { readIncomingFile } from './read-incoming-file.ts';
import { daysToTake } from './take-days.ts';

/** Days and weeks written on both sides that are listed. */
const CLASHES_SHOWN = 40;

/** What was left when an import was undone, by where it is kept. */
const leftNames = ['opened', 'drills', 'days', 'weeks', 'notes', 'milestones', 'kit', 'majorGoal'] as const;

function leftWords(left: readonly LeftValue[]): string {
  const names = left.map(
    ({ table, key }) => leftNames.find((name) => name === (table === 'single' ? key : table)) ?? 'other',
  );
  return formatRow(
    [...new Set(names)].map((name) => say(`report.${name}`, { n: names.filter((other) => other === name).length })),
  );
}

/**
 * Takes in a file of any kind: it is shown first with what it will do, applied when the archer says so, and undoable. A program goes on to the rack.
 *
 * @prop incomingFiles files that were picked somewhere else
 * @event lark-open-program a program's file, for the rack; detail is a list of `File`
 * @prop settle writes down what was just typed
 */
@customElement('file-in')
export class FileIn extends PostElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .notice {
        display: grid;
        gap: 0.6rem;
        margin-top: 1rem;
      }
      .comment {
        white-space: pre-line;
        overflow-wrap: anywhere;
      }
      .clash {
        margin-top: 0.5rem;
        overflow-wrap: anywhere;
      }
      .said:empty {
        display: none;
      }
    `,
  ];

  @property({ attribute: false }) settle: () => Promise<void> = async () => undefined;
  @property({ attribute: false }) incomingFiles: readonly File[] = [];
  @state() private name = '';
  @state() private incoming: Incoming | undefined;
  @state() private comparison: JournalComparison | undefined;
  @state() private clashes: readonly EditClash[] = [];
  @state() private takesKit = false;
  @state() private said = '';
  /** What was imported, in order: enough to undo it. */
  @state() private taken: readonly TakenIn[] = [];
  /** How much of the file has been read, 0 to 1; undefined while none is. */
  @state() private readRatio: number | undefined;
  #takenCount = 0;
  #reading = new AbortController();
  #file: File | undefined;

  protected override updated(changed: PropertyValues): void {
    if (changed.has('incomingFiles') && this.incomingFiles.length > 0) void this.#read(this.incomingFiles);
    // So that what was opened is one press away, whoever opened it.
    if (changed.has('incoming') && this.incoming?.kind === 'journal')
      this.renderRoot.querySelector<HTMLElement>('button.main')?.focus({ preventScroll: true });
  }

  override render() {
    const { app } = this;
    if (!app) return nothing;
    return html`<file-drop words=${say('file.open')} @files-take=${this.#take}></file-drop>
      <div role="status">
        ${this.#post()}
        ${this.readRatio === undefined ? nothing : this.#progress(this.readRatio)}
        ${this.incoming ? html`<div class="notice">${this.#shown(app, this.incoming)}</div>` : nothing}
        ${this.said === '' ? nothing : html`<div class="notice"><p>${this.said}</p>${this.taken.length > 0 ? this.#clashes() : nothing}${this.#undoButton()}</div>`}
      </div>`;
  }

  /** An answer that came by the coach's box is read as a file is. */
  #post() {
    const { answer, coach } = this.post?.archer ?? {};
    if (answer === undefined || coach === undefined) return nothing;
    return html`<div class="notice">
      <p>${say('post.answerCame', { coach })}</p>
      <div><button class="main" @click=${() => this.#readAnswer(coach, answer.text)}>${say('post.read')}</button></div>
    </div>`;
  }

  async #readAnswer(coach: string, text: string): Promise<void> {
    await this.#take(new CustomEvent('files-take', { detail: [new File([text], coach)] }));
  }

  /** A large file takes a while: it is read beside the page, and can be left at any moment. */
  #progress(ratio: number) {
    return html`<div class="notice">
      <p>${say('file.reading', { file: this.name, percent: Math.round(ratio * 100) })}</p>
      <progress max="1" .value=${ratio} aria-label=${say('file.readingBar')}></progress>
      <div><button @click=${this.#cancel}>${say('file.cancel')}</button></div>
    </div>`;
  }

  readonly #cancel = (): void => {
    this.#reading.abort();
    this.#takenCount += 1;
    this.readRatio = undefined;
    this.#say(say('file.cancelled', { file: this.name }));
  };

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#reading.abort();
  }

  #undoButton() {
    return this.taken.length > 0 ? html`<div><button @click=${this.#undo}>${say('file.undo')}</button></div>` : nothing;
  }

  #shown(app: App, incoming: Incoming) {
    if (incoming.kind === 'journal') return this.#journal(app, incoming);
    if (incoming.kind === 'hand-over') return this.#handOver(app, incoming.handOver);
    if (incoming.kind === 'program') return this.#program(incoming.program);
    const [first, ...more] = incoming.problems;
    return html`<h3>${say('file.refused', { file: this.name })}</h3>
      <p>${first && problemWords(first)} ${first?.line === undefined ? '' : say('file.at', { line: first.line, column: first.column ?? 1 })}</p>
      ${first?.pointer ? html`<p class="dim small">${say('file.atPointer', { place: first.pointer })}</p>` : nothing}
      ${more.length > 0 ? html`<p>${say('file.moreProblems', { n: more.length })}</p>` : nothing}
      <p>${say('file.nothingChanged')}</p>
      <div><button @click=${this.#close}>${say('file.close')}</button></div>`;
  }

  #program(program: Program) {
    return html`<h3>${say('file.isProgram', { title: program.title })}</h3>
      <p>${say('file.programWill')}</p>
      <div class="row">
        <button
          class="main"
          @click=${() => {
            const detail = this.#file ? [this.#file] : [];
            this.#close();
            this.dispatchEvent(new CustomEvent('lark-open-program', { detail, bubbles: true, composed: true }));
          }}
        >
          ${say('file.toRack')}
        </button>
        <button @click=${this.#close}>${say('file.leave')}</button>
      </div>`;
  }

  #journal(app: App, { journal, programs, kit, madeAt }: Extract<Incoming, { kind: 'journal' }>) {
    if (!this.comparison) return nothing;
    const { addedCount, changedCount, keptCount, sameCount, majorGoal, drills, days, weeks } = this.comparison;
    const removedCount = drills.removed.length + days.removed.length + weeks.removed.length;
    return html`<h3>${say(kit ? 'file.isBackup' : 'file.isJournal', { file: this.name })}</h3>
      <p>${say('file.journalWill')}</p>
      ${madeAt ? html`<p class="dim">${say('file.written', { day: madeAt.slice(0, 10) })}</p>` : nothing}
      <p>
        ${say('file.sums', { added: addedCount, changed: changedCount, same: sameCount })}
        ${keptCount > 0 ? say('file.keptHere', { n: keptCount }) : ''}
        ${removedCount > 0 ? say('file.removedThere', { n: removedCount }) : ''}
        ${majorGoal === 'added' || majorGoal === 'changed' ? say('file.goalChanges') : ''}
      </p>
      ${this.#clashes()}
      ${programs.length > 0 ? html`<p>${say('file.forRack', { n: programs.length, titles: formatRow(programs.map(({ title }) => title)) })}</p>` : nothing}
      ${
        kit
          ? tickOf(say('file.kitToo'), this.takesKit, (isOn) => {
              this.takesKit = isOn;
            })
          : nothing
      }
      <div class="row">
        <button class="main" @click=${() => this.#apply(app, journal, kit)}>${say('file.restore')}</button>
        <button @click=${this.#close}>${say('file.leave')}</button>
      </div>`;
  }

  /** Of a field that both sides wrote, the later edit is kept; what the other one says is shown, so that nothing is lost unseen. */
  #clashes() {
    const { clashes } = this;
    if (clashes.length === 0) return nothing;
    return html`<details>
      <summary>${say('clash.both', { n: clashes.length })}</summary>
      <ul>
        ${clashes.slice(0, CLASHES_SHOWN).map(
          ({ name, href, isOurs, leftOut }) => html`<li class="clash">
            ${pieces(isOurs ? 'clash.ours' : 'clash.theirs', { day: html`<a href=${href}>${name}</a>`, left: leftOut.join(' · ') })}
          </li>`,
        )}
        ${clashes.length > CLASHES_SHOWN ? html`<li>${say('clash.earlier', { n: clashes.length - CLASHES_SHOWN })}</li>` : nothing}
      </ul>
    </details>`;
  }

  #handOver(app: App, handOver: HandOver) {
    if (handOver.answers.length === 0) {
      return html`<h3>${this.name}</h3>
        <p>${pieces('file.noAnswer', { page: html`<a href="#/coach">${say('file.coachPage')}</a>` })}</p>
        <div><button @click=${this.#close}>${say('file.close')}</button></div>`;
    }
    const mine = app.view.kit.archer;
    return html`<h3>${say('file.answerTo', { archer: handOver.archer, from: handOver.from, to: handOver.to })}</h3>
      ${mine && mine.id !== handOver.archerId ? html`<p><strong>${say('file.otherArcher')}</strong></p>` : nothing}
      ${handOver.answers.map((answer) => this.#answer(app, answer))}
      <div class="row">
        ${
          handOver.answers.some(({ comment }) => comment !== '')
            ? html`<button @click=${() => this.#takeComment(app, handOver)}>${say('file.keepComment')}</button>`
            : nothing
        }
        <button @click=${this.#close}>${say('file.close')}</button>
      </div>`;
  }

  #answer(app: App, { by, comment, program, dated }: CoachAnswer) {
    return html`<p class="comment"><strong>${by}</strong>: ${comment}</p>
      ${
        program
          ? html`<p>${say('file.withProgram', { title: program.title })}</p>
              ${this.#askedOf(app, program)}`
          : nothing
      }
      ${dated ? daysToTake(dated, app.view, (season) => void this.#takeSeason(app, season)) : nothing}`;
  }

  /** What is in the place that a program would take is never replaced unseen. */
  #askedOf(app: App, program: Program) {
    const mine = app.view.programs.find(({ id }) => id !== undefined && id === program.id);
    if (mine && isSameDrill(mine, program)) {
      return html`<p>${say('file.sameProgram')}</p>
        <button class="main" @click=${() => this.#useToday(app, mine)}>${say('rack.takeToday')}</button>`;
    }
    const { chosen } = app.view;
    return html`<program-swap .mine=${mine ?? chosen} .theirs=${program}></program-swap>
      <div class="row">
        ${
          mine
            ? html`<button @click=${() => this.#takeProgram(app, program)}>${say('swap.replace')}</button>
                <button class="main" @click=${() => this.#takeProgram(app, asAnother(program, app.view.programs, app.act.newId))}>${say('swap.both')}</button>`
            : html`<button class="main" @click=${() => this.#takeProgram(app, program)}>${say('file.takeOn', { title: program.title })}</button>`
        }
      </div>`;
  }

  readonly #take = ({ detail }: CustomEvent<readonly File[]>): Promise<void> => this.#read(detail);

  async #read([file]: readonly File[]): Promise<void> {
    if (!file || !this.app) return;
    this.#file = file;
    // What was shown before goes at once: a press now would be meant for the file that is still being read.
    this.#takenCount += 1;
    const turn = this.#takenCount;
    this.#say('');
    this.taken = [];
    this.#reading.abort();
    this.#reading = new AbortController();
    const { signal } = this.#reading;
    const incoming = await readIncomingFile(file, signal, (ratio) => {
      if (turn !== this.#takenCount) return;
      this.name = file.name;
      this.readRatio = ratio;
    });
    await this.settle();
    const ours = await this.app.act.storedJournal();
    if (turn !== this.#takenCount || !incoming) return;
    const comparison = incoming.kind === 'journal' ? await compareInTurns(ours, incoming.journal) : undefined;
    if (turn !== this.#takenCount) return;
    this.readRatio = undefined;
    this.name = file.name;
    // A device on which nothing was done yet takes over everything.
    this.takesKit = ours.drills.length === 0 && ours.days.length === 0;
    this.incoming = incoming;
    this.comparison = comparison;
    this.clashes = incoming.kind === 'journal' && comparison ? findClashes(ours, incoming.journal, comparison) : [];
  }

  async #apply(app: App, journal: Journal, kit: CarriedKit | undefined): Promise<void> {
    // When this device was last backed up, and where to, is its own.
    const { backup: _, ...itsKit } = kit ?? {};
    const isTaken = await this.#takeIn(app, { journal, ...(this.takesKit ? { kit: itsKit } : {}) });
    if (isTaken) this.#say(say('file.takenIn', { file: this.name }));
  }

  async #takeComment(app: App, handOver: HandOver): Promise<void> {
    const page = commentedWeek(app.view.journal, handOver, app.act.instant());
    if (!page) return this.#note(say('file.commentThere'));
    const isTaken = await this.#takeIn(app, { journal: { ...createJournal(), weeks: [page] } });
    if (isTaken) this.#note(say('file.commentKept', { week: Number(page.week.slice(6)) }));
  }

  async #takeProgram(app: App, program: Program): Promise<void> {
    const taken = { ...program, id: program.id ?? app.act.newId() };
    await this.settle();
    const changed = await app.act.takeProgram(taken, true);
    if (!changed) return;
    this.taken = [...this.taken, changed];
    this.#note(say('file.inRack', { title: taken.title }));
  }

  async #useToday(app: App, program: Program): Promise<void> {
    await this.settle();
    if (await app.act.chooseProgram(idOf(program))) this.#note(say('file.inRack', { title: program.title }));
  }

  /** The coach's days, in the archer's own season. */
  async #takeSeason(app: App, document: Season): Promise<void> {
    const season = { document, editedAt: app.act.instant() };
    if (await this.#takeIn(app, { journal: { ...createJournal(), season } })) this.#note(say('file.daysTaken'));
  }

  /** Takes in all of it or nothing, and remembers what changed. More than one thing of an answer can be accepted. */
  async #takeIn(app: App, incoming: Parameters<App['act']['takeIn']>[0]): Promise<boolean> {
    await this.settle();
    const taken = await app.act.takeIn(incoming);
    if (taken) this.taken = [...this.taken, taken];
    return taken !== undefined;
  }

  readonly #undo = async (): Promise<void> => {
    const { app, taken } = this;
    if (!app) return;
    await this.settle();
    this.taken = [];
    const left: LeftValue[] = [];
    for (const one of taken.toReversed()) left.push(...((await app.act.takeBack(one)) ?? []));
    this.#say(left.length === 0 ? say('file.undone') : say('file.undoneBut', { left: leftWords(left) }));
  };

  #say(words: string): void {
    this.incoming = undefined;
    this.said = words;
  }

  /** Says what was done and leaves the file open. */
  #note(words: string): void {
    this.said = words;
  }

  readonly #close = (): void => {
    // An answer that came by the box stays until it was read and closed.
    if (this.incoming?.kind === 'hand-over' && this.name === this.post?.archer?.coach) void this.post?.putAnswerAway();
    this.incoming = undefined;
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'file-in': FileIn;
  }
}

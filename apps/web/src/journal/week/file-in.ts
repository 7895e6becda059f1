import {
  type CoachAnswer,
  commentedWeek,
  compareJournals,
  createJournal,
  type HandOver,
  type Journal,
  type JournalComparison,
  type Program,
} from '@larkhold/engine';
import type { Kit, LeftValue, TakenIn } from '@larkhold/store';
import { formatCount, formatCounted, formatDay } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../../shell/app-context.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { type EditClash, findClashes } from './edit-clashes.ts';
import '@larkhold/ui';
import { type Incoming, readIncoming } from './read-incoming.ts';

/** Days and weeks written on both sides that are listed. */
const CLASHES_SHOWN = 40;

/** What was left when an import was taken back, by where it is kept: one and more of it. */
const leftNames: Readonly<Record<string, readonly [string, string]>> = {
  opened: ['program', 'programs'],
  drills: ['drill', 'drills'],
  days: ['day', 'days'],
  weeks: ['week page', 'week pages'],
  notes: ['note', 'notes'],
  milestones: ['milestone', 'milestones'],
  kit: ['part of the kit', 'parts of the kit'],
  majorGoal: ['major goal', 'major goals'],
};

function leftWords(left: readonly LeftValue[]): string {
  const names = left.map(({ table, key }) => (table === 'single' ? key : table));
  return [...new Set(names)]
    .map((name) => {
      const [one, more] = leftNames[name] ?? [name, name];
      return formatCounted(names.filter((other) => other === name).length, one, more);
    })
    .join(', ');
}

/**
 * Takes in a backup, another device's journal, or a coach's answer: shown first, applied when the archer says so, and undoable.
 *
 * @prop settle writes down what was just typed
 */
@customElement('file-in')
export class FileIn extends PlaceElement {
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
  @state() private name = '';
  @state() private incoming: Incoming | undefined;
  @state() private comparison: JournalComparison | undefined;
  @state() private clashes: readonly EditClash[] = [];
  @state() private takesKit = false;
  @state() private said = '';
  /** What was taken in, in order: enough to take it back. */
  @state() private taken: readonly TakenIn[] = [];
  #takenCount = 0;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    return html`<file-drop words="Open a backup, journal or answer" @files-take=${this.#take}></file-drop>
      <div role="status">
        ${this.incoming ? html`<div class="notice">${this.#shown(app, this.incoming)}</div>` : nothing}
        ${this.said === '' ? nothing : html`<div class="notice"><p>${this.said}</p>${this.taken.length > 0 ? this.#clashes() : nothing}${this.#undoButton()}</div>`}
      </div>`;
  }

  #undoButton() {
    return this.taken.length > 0 ? html`<div><button @click=${this.#undo}>Undo</button></div>` : nothing;
  }

  #shown(app: App, incoming: Incoming) {
    if (incoming.kind === 'journal') return this.#journal(app, incoming);
    if (incoming.kind === 'hand-over') return this.#handOver(app, incoming.handOver);
    const [first, ...more] = incoming.problems;
    return html`<h3>${this.name} was not taken in</h3>
      <p>${first?.message}${first?.line === undefined ? '' : ` Line ${first.line}, column ${first.column}.`}</p>
      ${first?.pointer ? html`<p class="dim small">At ${first.pointer}</p>` : nothing}
      ${more.length > 0 ? html`<p>And ${formatCounted(more.length, 'more problem')}.</p>` : nothing}
      <p>Nothing was changed.</p>
      <div><button @click=${this.#close}>Close</button></div>`;
  }

  #journal(app: App, { journal, programs, kit, madeAt }: Extract<Incoming, { kind: 'journal' }>) {
    if (!this.comparison) return nothing;
    const { addedCount, changedCount, keptCount, sameCount, majorGoal, drills, days, weeks } = this.comparison;
    const removedCount = drills.removed.length + days.removed.length + weeks.removed.length;
    return html`<h3>${this.name}</h3>
      ${madeAt ? html`<p class="dim">Written on ${formatDay(madeAt.slice(0, 10), 'year')}.</p>` : nothing}
      <p>
        ${formatCount(addedCount)} new, ${formatCount(changedCount)} changed, ${formatCount(sameCount)} the same.
        ${keptCount > 0 ? `${formatCount(keptCount)} newer here: kept as they are.` : ''}
        ${removedCount > 0 ? `${formatCount(removedCount)} of the changed: removed.` : ''}
        ${majorGoal === 'added' || majorGoal === 'changed' ? 'The major goal changes.' : ''}
      </p>
      ${this.#clashes()}
      ${programs.length > 0 ? html`<p>${formatCounted(programs.length, 'program')} for the rack: ${programs.map(({ title }) => title).join(', ')}.</p>` : nothing}
      ${
        kit
          ? html`<label class="tick"
              ><input
                type="checkbox"
                .checked=${this.takesKit}
                @change=${(event: Event) => {
                  this.takesKit = event.target instanceof HTMLInputElement && event.target.checked;
                }}
              />Take its kit too (bow, sound, display)</label
            >`
          : nothing
      }
      <div class="row">
        <button class="main" @click=${() => this.#apply(app, journal, kit)}>Take it in</button>
        <button @click=${this.#close}>Leave it</button>
      </div>`;
  }

  /** Of a field that both sides wrote, the later edit stands; what the other one says is told, so that nothing is lost unseen. */
  #clashes() {
    const { clashes } = this;
    if (clashes.length === 0) return nothing;
    const of = formatCounted(clashes.length, 'day or week', 'days or weeks');
    return html`<details>
      <summary>${of} written on both sides: the later edit stands</summary>
      <ul>
        ${clashes.slice(0, CLASHES_SHOWN).map(
          ({ name, href, isOurs, leftOut }) => html`<li class="clash">
            <a href=${href}>${name}</a>: ${isOurs ? 'what is here stands' : 'what is in the file stands'}. Left out: ${leftOut.join(' · ')}
          </li>`,
        )}
        ${clashes.length > CLASHES_SHOWN ? html`<li>And ${formatCounted(clashes.length - CLASHES_SHOWN, 'earlier one')}.</li>` : nothing}
      </ul>
    </details>`;
  }

  #handOver(app: App, handOver: HandOver) {
    if (handOver.answers.length === 0) {
      return html`<h3>${this.name}</h3>
        <p>This is a hand-over with no answer in it. A coach opens it on <a href="#/coach">the coach's page</a>.</p>
        <div><button @click=${this.#close}>Close</button></div>`;
    }
    const mine = app.view.kit.archer;
    return html`<h3>Answer to ${handOver.archer}, ${formatDay(handOver.from, 'short')} to ${formatDay(handOver.to, 'short')}</h3>
      ${
        mine && mine.id !== handOver.archerId
          ? html`<p><strong>This file is of another archer or another device than this one.</strong></p>`
          : nothing
      }
      ${handOver.answers.map((answer) => this.#answer(app, answer))}
      <div class="row">
        ${
          handOver.answers.some(({ comment }) => comment !== '')
            ? html`<button @click=${() => this.#takeComment(app, handOver)}>Keep the comment on the week’s page</button>`
            : nothing
        }
        <button @click=${this.#close}>Close</button>
      </div>`;
  }

  #answer(app: App, { by, comment, program }: CoachAnswer) {
    return html`<p class="comment"><strong>${by}</strong>: ${comment}</p>
      ${
        program
          ? html`<p>With a program: ${program.title}.</p>
              <div><button class="main" @click=${() => this.#takeProgram(app, program)}>Take on ${program.title}</button></div>`
          : nothing
      }`;
  }

  readonly #take = async ({ detail }: CustomEvent<readonly File[]>): Promise<void> => {
    const [file] = detail;
    if (!file || !this.app) return;
    // What was shown before goes at once: a press now would be meant for the file that is still being read.
    this.#takenCount += 1;
    const turn = this.#takenCount;
    this.#say('');
    this.taken = [];
    const text = await file.text().catch(() => '');
    await this.settle();
    const ours = await this.app.act.storedJournal();
    if (turn !== this.#takenCount) return;
    this.name = file.name;
    this.takesKit = false;
    this.incoming = readIncoming(text);
    this.comparison = this.incoming.kind === 'journal' ? compareJournals(ours, this.incoming.journal) : undefined;
    this.clashes =
      this.incoming.kind === 'journal' && this.comparison
        ? findClashes(ours, this.incoming.journal, this.comparison)
        : [];
  };

  async #apply(app: App, journal: Journal, kit: Kit | undefined): Promise<void> {
    // When this device was last backed up, and where to, is its own.
    const { backup: _, ...itsKit } = kit ?? {};
    const isTaken = await this.#takeIn(app, { journal, ...(this.takesKit ? { kit: itsKit } : {}) });
    if (isTaken) this.#say(`${this.name} was taken in.`);
  }

  async #takeComment(app: App, handOver: HandOver): Promise<void> {
    const page = commentedWeek(app.view.journal, handOver, app.act.instant());
    if (!page) return this.#note('The comment is on the week’s page already.');
    const isTaken = await this.#takeIn(app, { journal: { ...createJournal(), weeks: [page] } });
    if (isTaken) this.#note(`The comment is on the page of ${page.week}.`);
  }

  async #takeProgram(app: App, program: Program): Promise<void> {
    const taken = { ...program, id: program.id ?? app.act.newId() };
    if (await this.#takeIn(app, { programs: [taken], kit: { programId: taken.id } }))
      this.#note(`${taken.title} is in the rack, and today's.`);
  }

  /** Takes in all of it or nothing, and remembers what changed. More than one thing can be taken from an answer. */
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
    this.#say(
      left.length === 0
        ? 'Undone: everything is as it was before.'
        : `Undone, but for what you changed since: ${leftWords(left)}. That stays as it is.`,
    );
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
    this.incoming = undefined;
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'file-in': FileIn;
  }
}

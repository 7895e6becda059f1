import {
  dayNumber,
  dayOfNumber,
  mondayNumber,
  outlineOf,
  type ParsedProgram,
  type Program,
  parseProgram,
  type QuickBlock,
} from '@larkhold/engine';
import { controlStyles, pageStyles } from '@larkhold/ui';
import { presentWords, say } from '@larkhold/words';
import { consume } from '@lit/context';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import Sortable from 'sortablejs';
import { type App, appContext } from '../../shell/app-context.ts';
import { hrefOf } from '../../shell/routing.ts';
import type { BenchForm } from './bench-form.ts';
import { aheadTemplate, headFields, type Worked } from './bench-sections.ts';
import { benchStyles } from './bench-styles.ts';
import { blockTemplate } from './block-template.ts';
import {
  addBlock,
  addWrittenBlock,
  blocksOf,
  createDraft,
  createEmptyDraft,
  type Draft,
  draftText,
  moveBlock,
  setValue,
} from './draft.ts';
import { fieldPointers } from './draft-fields.ts';
import { createDraftKeeper, type DraftKeeper } from './draft-keeper.ts';
import { createHistory, type EditHistory, edit, endEdit, redo, undo } from './edit-history.ts';
import { quickBlock } from './quick-block.ts';
import './lark-quick-line.ts';
import { weeksAhead } from '@larkhold/engine';
import { pointerOfPath, valueAt } from './json-path.ts';
import { strokesTemplate, totalsTemplate } from './outline-template.ts';
import { type PlacedProblems, placeProblems } from './problem-places.ts';
import { freeTitle, sameTitle } from './title-clash.ts';

/**
 * Where a program is edited: its fields, what they ask of an archer, and what is wrong with them.
 *
 * @prop programId the program to edit; a built-in one is copied; `new` for a new one
 * @prop keeper keeps an unsaved draft through a reload
 */
@customElement('bench-page')
export class BenchPage extends LitElement {
  static override styles = [pageStyles, controlStyles, benchStyles];

  @property({ attribute: false }) programId = 'new';
  @property({ attribute: false }) keeper: DraftKeeper = createDraftKeeper(() => globalThis.localStorage);
  @consume({ context: appContext, subscribe: true }) @property({ attribute: false }) app: App | undefined;
  @state() private history: EditHistory<Draft> | undefined;
  @state() private typed: BenchForm['typed'];
  @state() private sessionsPerWeek = 3;
  @state() private clash: Program | undefined;
  @state() private said = '';
  /** The draft was left unsaved some time before. */
  @state() private isKept = false;
  @query('dialog') private dialog: HTMLDialogElement | null | undefined;
  #parsed: ParsedProgram | undefined;
  #problems: PlacedProblems = { byField: new Map(), elsewhere: [] };
  #worked: Worked | undefined;
  #sortable: Sortable | undefined;
  #beganKept = false;

  override connectedCallback(): void {
    super.connectedCallback();
    globalThis.addEventListener('keydown', this.#onKey);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('keydown', this.#onKey);
    this.#sortable?.destroy();
    this.#sortable = undefined;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!this.app) return;
    if (changed.has('programId')) this.history = undefined;
    const before = this.history;
    if (!this.history) {
      const kept = this.keeper.read(this.programId);
      this.isKept = kept !== undefined;
      this.#beganKept = this.isKept;
      this.history = createHistory(kept ?? this.#startDraft(this.app));
    }
    const keys = changed as ReadonlyMap<PropertyKey, unknown>;
    if (!before || keys.has('history') || keys.has('sessionsPerWeek') || keys.has('app')) this.#work();
  }

  protected override updated(): void {
    for (const problem of this.renderRoot.querySelectorAll('.problem')) {
      const fold = problem.closest('details'); // a fold never hides a problem
      if (fold) fold.open = true;
    }
    const list = this.renderRoot.querySelector<HTMLElement>('.blocks');
    if (list && !this.#sortable) this.#sortable = this.#sortableOn(list);
  }

  override render() {
    const { app, history } = this;
    if (!app || !history) return nothing;
    const form = this.#form(history.present);
    const { elsewhere } = this.#problems;
    return html`<h1>${say('bench.title')}</h1>
      <p class="dim">${this.#whatIsEdited(app)}</p>
      ${this.#keptTemplate(app)}
      <div class="two">
      <div class="bar" role="region" aria-label=${say('bench.inTime')}>
        ${this.#worked ? totalsTemplate(this.#worked.outline) : html`<p class="totals">${say('bench.toSeeTimes')}</p>`}
        ${this.#worked ? strokesTemplate(this.#worked.outline, titlesOf(this.#worked.program)) : html`<div class="no-times"></div>`}
        <div class="row">
          <button type="button" ?disabled=${history.past.length === 0} @click=${() => this.#step(undo)}>${say('bench.undo')}</button>
          <button type="button" ?disabled=${history.future.length === 0} @click=${() => this.#step(redo)}>${say('bench.redo')}</button>
          <button type="button" class="main" @click=${this.#onSave}>${say('bench.save')}</button>
        </div>
        <p role="status" class="small">${this.said}</p>
      </div>
      <div class="form">
      ${elsewhere.length > 0 ? html`<div class="notice">${elsewhere.map((words) => html`<p>${words}</p>`)}</div>` : nothing}
      <lark-quick-line @quick-block=${(event: CustomEvent<QuickBlock>) => form.change(addWrittenBlock(form.draft, quickBlock(event.detail)))}></lark-quick-line>
      <div @focusout=${this.#onLeave}>
        ${headFields(form)}
        <section aria-labelledby="blocks-title">
          <h2 id="blocks-title">${say('bench.blocks')}</h2>
          <ol class="blocks">
            ${repeat(
              history.present.blockKeys,
              (key) => key,
              (key, index) => html`<li data-key=${key}>${blockTemplate(form, index)}</li>`,
            )}
          </ol>
          ${this.#problemsOf('/blocks')}
          <button type="button" id="add-block" ?disabled=${blocksOf(form.draft).length >= 20} @click=${() => form.change(addBlock(form.draft))}>${say('bench.addBlock')}</button>
        </section>
      </div>
      ${this.#worked ? this.#ahead(app, this.#worked) : nothing}
      </div>
      </div>
      ${this.#clashTemplate()}`;
  }

  #keptTemplate(app: App): TemplateResult | typeof nothing {
    if (!this.isKept) return nothing;
    const startOver = () => {
      this.#edit(this.#startDraft(app));
      this.keeper.keep(this.programId, undefined);
      this.isKept = false;
      this.said = say('bench.startedOver');
    };
    return html`<div class="row">
      <p>${say('bench.keptBack')}</p>
      <button type="button" @click=${startOver}>${say('bench.startOver')}</button>
    </div>`;
  }

  #ahead({ view }: App, worked: Worked): TemplateResult {
    const choose = (count: number) => {
      this.sessionsPerWeek = count;
    };
    return aheadTemplate(worked, view.kit.units, { count: this.sessionsPerWeek, choose });
  }

  #clashTemplate(): TemplateResult {
    const canReplace = this.clash?.id !== undefined && this.app?.view.openedIds.has(this.clash.id);
    return html`<dialog aria-labelledby="clash-title">
      <h2 id="clash-title">${say('bench.titleClash')}</h2>
      <p>${say('bench.isOnRack', { title: this.clash?.title ?? '' })}</p>
      <div class="row">
        <button type="button" class="main" @click=${() => this.#onClash('both')}>${say('bench.keepBoth')}</button>
        ${canReplace ? html`<button type="button" @click=${() => this.#onClash('replace')}>${say('bench.replaceIt')}</button>` : nothing}
        <button type="button" class="quiet" @click=${() => this.dialog?.close()}>${say('bench.cancel')}</button>
      </div>
    </dialog>`;
  }

  #problemsOf(pointer: string): TemplateResult[] {
    return (this.#problems.byField.get(pointer) ?? []).map((words) => html`<p class="problem small">${words}</p>`);
  }

  #form(draft: Draft): BenchForm {
    return {
      ...{ draft, problems: this.#problems, program: this.#worked?.program, typed: this.typed },
      units: this.app?.view.kit.units ?? 'metric',
      set: (path, value, typed) => {
        const pointer = pointerOfPath(path);
        this.typed = typed === undefined ? undefined : { pointer, text: typed };
        // what is true now, not what was drawn: two changes may come before the next drawing
        this.#edit(setValue(this.history?.present ?? draft, path, value), pointer);
      },
      change: (next) => void this.#change(next),
    };
  }

  #edit(next: Draft, mark?: string): void {
    if (!this.history) return;
    this.history = edit(this.history, next, mark);
    this.said = '';
    this.keeper.keep(this.programId, this.history.present);
  }

  /** A change of the list of blocks; whoever works by keyboard or ear must not lose the place. */
  async #change(next: Draft): Promise<void> {
    const before = this.history?.present;
    const active = (this.renderRoot as ShadowRoot).activeElement;
    const key = Number(active?.closest<HTMLElement>('.blocks > li')?.dataset.key ?? Number.NaN);
    const does = active instanceof HTMLElement ? active.dataset.does : undefined;
    this.#edit(next);
    if (!before || next === before) return;
    this.said = wordsOfChange(before, next);
    await this.updateComplete;
    const fresh = next.blockKeys.find((one) => !before.blockKeys.includes(one));
    const taken = before.blockKeys.findIndex((one) => !next.blockKeys.includes(one));
    const at = taken < 0 ? (fresh ?? key) : next.blockKeys[Math.min(taken, next.blockKeys.length - 1)];
    const entry = this.renderRoot.querySelector(`.blocks > li[data-key="${at}"]`);
    const button = does && entry?.querySelector<HTMLElement>(`[data-does="${does}"]:not(:disabled)`);
    (button || entry?.querySelector<HTMLElement>('h3'))?.focus();
  }

  #step(step: typeof undo): void {
    if (!this.history) return;
    this.typed = undefined;
    this.history = step(this.history);
    // back at the start there is nothing to keep, unless the start was unsaved work
    const isStart = this.history.past.length === 0 && !this.#beganKept;
    this.keeper.keep(this.programId, isStart ? undefined : this.history.present);
  }

  #work(): void {
    if (!this.app || !this.history) return;
    const { today, kit } = this.app.view;
    const draft = this.history.present;
    this.#parsed = parseProgram(draftText(draft));
    this.#problems = placeProblems(this.#parsed.ok ? [] : this.#parsed.problems, fieldPointers(draft));
    if (!this.#parsed.ok) {
      this.#worked = undefined;
      return;
    }
    const { program } = this.#parsed;
    const monday = dayOfNumber(mondayNumber(dayNumber(today)));
    const outline = outlineOf(program, { today, maxHoldSeconds: kit.maxHoldSeconds });
    this.#worked = { program, outline, weeks: weeksAhead(program, { monday, sessionsPerWeek: this.sessionsPerWeek }) };
  }

  #startDraft({ view, act }: App): Draft {
    const program = view.programs.find(({ id }) => id !== undefined && id === this.programId);
    if (!program) return createEmptyDraft(act.newId());
    if (view.openedIds.has(this.programId)) return createDraft(program);
    return createDraft(program, { id: act.newId(), title: freeTitle(program.title, view.programs) });
  }

  #whatIsEdited({ view }: App): string {
    const program = view.programs.find(({ id }) => id === this.programId);
    if (!program) return say('bench.aNew');
    const { title } = program;
    return say(view.openedIds.has(this.programId) ? 'bench.fromRack' : 'bench.aCopy', { title });
  }

  #sortableOn(list: HTMLElement): Sortable {
    let anchor: Node | null = null;
    return Sortable.create(list, {
      ...{ handle: '.grip', draggable: 'li', animation: 120 },
      onStart: ({ item }) => {
        anchor = item.nextSibling;
      },
      onEnd: ({ item, oldDraggableIndex: from, newDraggableIndex: to }) => {
        // the list is lit's: put the entry back where lit left it, then let the new order draw it
        list.insertBefore(item, anchor);
        if (this.history && from !== undefined && to !== undefined) {
          this.#edit(moveBlock(this.history.present, from, to));
        }
      },
    });
  }

  readonly #onLeave = (): void => {
    if (this.history) this.history = endEdit(this.history);
    this.typed = undefined;
  };

  readonly #onKey = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || this.dialog?.open) return;
    const key = event.key.toLowerCase();
    if (key !== 'z' && key !== 's') return;
    event.preventDefault(); // the browser's own undo knows one field only, and its saving keeps the page
    if (key === 's') void this.#onSave();
    else this.#step(event.shiftKey ? redo : undo);
  };

  readonly #onSave = async (): Promise<void> => {
    const { app } = this;
    if (!app || !this.#parsed) return;
    if (!this.#parsed.ok) {
      this.said = say('bench.notSaved', { n: this.#parsed.problems.length });
      await this.updateComplete;
      this.renderRoot.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    this.clash = sameTitle(this.#parsed.program, app.view.programs);
    if (!this.clash) return this.#put(this.#parsed.program);
    await this.updateComplete;
    this.dialog?.showModal();
  };

  async #onClash(answer: 'both' | 'replace'): Promise<void> {
    const { app, clash } = this;
    this.dialog?.close();
    if (!app || !clash || !this.#parsed?.ok) return;
    const { program } = this.#parsed;
    await this.#put(
      answer === 'replace'
        ? { ...program, id: clash.id }
        : { ...program, title: freeTitle(program.title, app.view.programs) },
    );
  }

  async #put(program: Program): Promise<void> {
    const { app } = this;
    if (!app) return;
    const kept = program.id === undefined ? { ...program, id: app.act.newId() } : program;
    if (!(await app.act.putProgram(kept))) return;
    this.keeper.keep(this.programId, undefined);
    this.dispatchEvent(new CustomEvent('bench-saved', { detail: kept, bubbles: true, composed: true }));
    globalThis.location.hash = hrefOf('rack', kept.id);
  }
}

function titlesOf({ blocks }: Program): string[] {
  return blocks.map(({ title }) => title);
}

function wordsOfChange(before: Draft, next: Draft): string {
  const count = next.blockKeys.length - before.blockKeys.length;
  if (count > 0) return say('bench.blockAdded');
  if (count < 0) return say('bench.blockRemoved');
  const titles = blocksOf(next).map((block) => String(valueAt(block, ['title'])));
  return say('bench.blocksNow', { titles: presentWords().list(titles) });
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-page': BenchPage;
  }
}

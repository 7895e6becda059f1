import {
  type DrillRecord,
  dayNumber,
  dayOfNumber,
  type Prescription,
  type Program,
  type SessionSnapshot,
} from '@larkhold/engine';
import { type AfterDrill, type DrillEvents, LarkDrill } from '@larkhold/runner';
import { cutOff, type RunningDrill } from '@larkhold/store';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App, AppView } from '../shell/app-context.ts';
import './calls-asked.ts';
import './fatigue-fold.ts';
import '../shell/own-hold-offer.ts';
import { drillWords, formatDay, formatWeight, pieces, say } from '@larkhold/words';
import './lark-in-mind.ts';
import { createBackGuard } from '../shell/back-guard.ts';
import { PlaceElement } from '../shell/place-element.ts';
import './readiness-choice.ts';
import './due-today.ts';
import './leads-on.ts';
import './rest-day.ts';
import './minutes-choice.ts';
import './last-drills.ts';
import './then-and-now.ts';
import './too-small.ts';
import { idOf } from '@larkhold/engine';
import { isLong } from '../shell/fold-in-turns.ts';
import { nextTask } from '../shell/next-task.ts';
import { hrefOf } from '../shell/routing.ts';
import { fileNameOf } from '../shell/save-file.ts';
import { todaysPrescription } from '../shell/todays-prescription.ts';
import { dueMinutes, seasonRest } from '../shell/todays-program.ts';
import { GamepadToBegin } from './gamepad-to-begin.ts';
import { newestDrills } from './newest-drills.ts';
import '../shell/lark-cue-track.ts';
import { larkMark } from '@larkhold/ui';
import '../shell/offline-ready.ts';
import './lark-prescription.ts';
import './lark-told.ts';
import { pressSourcesOf } from '../shell/press-sources-of.ts';
import { runnerSettingsOf } from '../shell/runner-settings-of.ts';
import { lineStyles } from './line-styles.ts';

const TURNS = 2;
/** So long after a drawing it has been painted, or nobody sees the page, milliseconds. */
const PAINTED_MS = 200;

/** A drill that fills the screen. */
interface Drill {
  prescription: Prescription;
  title: string;
  programId?: string;
  resumeFrom?: SessionSnapshot;
}

/** Today's drill: its numbers and why, one press to begin, and what came of it. */
@customElement('lark-line')
export class LarkLine extends PlaceElement {
  static override styles = [...PlaceElement.styles, lineStyles];

  @state() private minutes: number | undefined;
  @state() private drill: Drill | undefined;
  @state() private finished: DrillRecord | undefined;
  @state() private told: { record: DrillRecord; next: Prescription } | undefined;
  @state() private said = '';
  /** Turns since the numbers and the bar were first drawn: of a long journal what stands beside them comes after them, in two. */
  @state() private turns = 0;
  #isFocused = false;
  #isTaking = false;
  readonly #guard = createBackGuard(() => this.#askAtBack());
  /** The next time's numbers, worked out once for a journal. */
  #next: (Pick<AppView, 'journal' | 'chosen' | 'kit'> & { next: Prescription }) | undefined;

  constructor() {
    super();
    new GamepadToBegin(
      this,
      () => (this.#isAtRest ? (this.app?.view.kit.keys.begin ?? []) : []),
      () => this.#beginToday(),
    );
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('keydown', this.#onKey);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('keydown', this.#onKey);
    if (this.drill) this.app?.act.setDrilling(false);
    this.#guard.end();
    this.app?.act.freeDrill();
  }

  protected override updated(): void {
    if (this.app && this.turns < TURNS && isLong(this.app.view.journal)) void this.#nextTurn();
    const numbers = this.renderRoot.querySelector('lark-prescription');
    if (this.#isFocused || !numbers) return;
    this.#isFocused = true;
    // So that Enter and the space bar begin from the first moment. A button whose slot is not drawn yet takes no focus.
    void numbers.updateComplete.then(() => {
      this.renderRoot.querySelector<HTMLButtonElement>('.begin')?.focus({ preventScroll: true });
    });
  }

  /** Once what is drawn has been painted; a hidden page paints nothing, and has time. */
  async #nextTurn(): Promise<void> {
    const turns = this.turns + 1;
    await new Promise((painted) => {
      requestAnimationFrame(painted);
      setTimeout(painted, PAINTED_MS);
    });
    await nextTask();
    this.turns = Math.max(this.turns, turns);
  }

  override render() {
    const { app, drill, finished, told } = this;
    if (!app) return nothing;
    const { theme } = app.view.kit;
    if (drill && !finished) {
      return html`<h1 class="visually-hidden">${drill.title}</h1><div class="full">
        <lark-drill
          keys-from="page"
          .prescription=${drill.prescription}
          .programTitle=${drill.title}
          .programId=${drill.programId}
          .settings=${runnerSettingsOf(app.view.kit, drill.programId ?? drill.title)}
          .resumeFrom=${drill.resumeFrom}
          .sources=${pressSourcesOf(app.view.kit.listens, drill.title)}
          @lark-rep=${this.#onRep}
          @lark-change=${this.#onChange}
          @lark-end=${this.#onEnd}
          >${app.view.kit.camera.on ? html`<lark-sight slot="sight" .deviceId=${app.view.kit.camera.deviceId} .flipped=${app.view.kit.viewing.flipped} ?replayOnly=${app.view.kit.camera.replayOnly} ?saysForm=${app.view.kit.camera.formWord}></lark-sight>` : nothing}<lark-in-mind isDrilling></lark-in-mind
        ></lark-drill>
      </div>`;
    }
    if (finished) {
      return html`<h1 class="visually-hidden">${finished.program}</h1><div class="full scrolls">
        <lark-after
          keys-from="page"
          .record=${finished}
          .flipped=${app.view.kit.viewing.flipped}
          .theme=${theme}
          .keys=${app.view.kit.keys}
          .sound=${app.view.kit}
          .sources=${pressSourcesOf(app.view.kit.listens, finished.program)}
          @lark-after-done=${this.#onAfter}
        ></lark-after>
      </div>`;
    }
    if (told) {
      return html`<lark-told .record=${told.record} .next=${told.next} @lark-told=${() => {
        this.told = undefined;
        this.#isFocused = false;
      }}></lark-told><own-hold-offer .drilled=${told.record}></own-hold-offer>${this.#asFile(app, told.record)}`;
    }
    return this.#today(app);
  }

  #today(app: App) {
    const { view } = app;
    const { chosen } = view;
    const prescription = todaysPrescription(view, chosen, this.minutes ?? dueMinutes(view));
    const done = doneToday(app);
    const next = this.#nextTime(app, done ?? cleanRecord(prescription, app));
    return html`<div class="page">
      <div class="today">
        <header>
          <p class="dim">${formatDay(view.today)}</p>
          <h1>${chosen.title}</h1>
          <p>${toolLine(prescription, view.kit)}</p>
          <p class="small"><a class="dim" href=${hrefOf('rack')}>${say('line.anotherProgram')}</a> · <a class="dim" href="#/season">${say('line.comingWeeks')}</a></p>
          <due-today></due-today>
        </header>
        ${view.journal.drills.length === 0 ? this.#first() : nothing}
        ${this.said ? html`<p class="notice" role="status">${this.said}</p>` : nothing}
        ${view.runsElsewhere ? this.#elsewhere(view.running) : view.running ? this.#interrupted(app, view.running) : nothing}
        ${done ? this.#done(done) : html`<rest-day .prescription=${prescription} .because=${seasonRest(view)}></rest-day>`}
        ${
          done && next
            ? html`<h2 class="next">${say('line.nextTime')}</h2>
                <lark-prescription .prescription=${next} .units=${view.kit.units}></lark-prescription>`
            : prescription.blocks.length === 0
              ? nothing
              : html`<lark-prescription .prescription=${prescription} .units=${view.kit.units}>
                <div class="choices">
                  <readiness-choice .prescription=${prescription}></readiness-choice>
                  <minutes-choice
                    .minutes=${this.minutes ?? dueMinutes(view)}
                    .prescription=${prescription}
                    @lark-minutes=${this.#onMinutes}
                  ></minutes-choice>
                </div>
                <too-small></too-small>
              </lark-prescription>`
        }
        <leads-on .prescription=${done && next ? next : prescription} ?isDone=${done !== undefined}></leads-on>
        <calls-asked .prescription=${prescription} .programId=${idOf(chosen)}></calls-asked>
      </div>
      ${this.#bar(app, prescription, done)}
      <div class="beside">${this.#beside(app, prescription, next)}</div>
    </div>`;
  }

  #beside(app: App, prescription: Prescription, next: Prescription) {
    const { chosen, journal, today } = app.view;
    const drawn = isLong(journal) ? this.turns : TURNS;
    const lately = html`<then-and-now .prescription=${prescription} .next=${next}></then-and-now>
      <lark-in-mind></lark-in-mind>
      <last-drills .drills=${drillsOf(app)}></last-drills>
      <lark-day-strip .journal=${journal} .today=${today}></lark-day-strip>`;
    const ahead = html`<fatigue-fold .prescription=${prescription}></fatigue-fold>
      <lark-cue-track .prescription=${prescription} .programTitle=${chosen.title} .programId=${idOf(chosen)}></lark-cue-track>`;
    return html`${drawn > 0 ? lately : nothing}${drawn >= TURNS ? ahead : nothing}`;
  }

  /** Nothing done yet: what this is, and the way back for whoever has done it elsewhere. */
  #first() {
    return html`<div class="first">
      <div class="what">${larkMark()}
        <p>${say('today.firstRun')}</p>
      </div>
      <offline-ready></offline-ready>
      <file-drop
        plain
        words=${say('today.restore')}
        @files-take=${(event: CustomEvent<readonly File[]>) =>
          this.dispatchEvent(
            new CustomEvent('lark-pick-files', { detail: event.detail, bubbles: true, composed: true }),
          )}
      ></file-drop>
    </div>`;
  }

  /** Always on the screen: the one press that begins, and how long it will take. */
  #bar(app: App, prescription: Prescription, done: DrillRecord | undefined) {
    // With pain nothing is offered, so there is nothing to begin.
    if (prescription.blocks.length === 0) return nothing;
    const isRest = (prescription.rest ?? seasonRest(app.view)) !== undefined;
    const isQuiet = done !== undefined || isRest;
    return html`<div class="bar">
      <p class="length numbers">${say('today.length', { ms: prescription.durationMs })}</p>
      <button class=${isQuiet ? 'begin' : 'main begin'} @click=${() => this.#begin(app, prescription)}>
        ${done ? say('today.again') : isRest ? say('rest.drill') : say('line.begin')}
      </button>
      <p class="dim small keys">${say('line.orKeys')}</p>
    </div>`;
  }

  #done(record: DrillRecord) {
    return html`<section class="done" aria-labelledby="done">
      <h2 id="done">${say('today.done')}</h2>
      <p>${drillWords(record)}</p>
      <lark-hold-ribbon .reps=${record.reps}></lark-hold-ribbon>
      <p class="small"><a class="dim" href=${hrefOf('journal', record.id)}>${say('line.inJournal')}</a></p>
    </section>`;
  }

  /** Tomorrow's numbers, with one more drill in the journal. */
  #nextTime({ view }: App, record: DrillRecord): Prescription {
    const kept = this.#next;
    if (kept?.journal === view.journal && kept.chosen === view.chosen && kept.kit === view.kit) return kept.next;
    const drills = [...view.journal.drills.filter(({ id }) => id !== record.id), record];
    const tomorrow = dayOfNumber(dayNumber(view.today) + 1);
    const next = todaysPrescription({ ...view, journal: { ...view.journal, drills }, today: tomorrow }, view.chosen);
    this.#next = { journal: view.journal, chosen: view.chosen, kit: view.kit, next };
    return next;
  }

  readonly #onMinutes = (event: CustomEvent<{ minutes: number | undefined }>): void => {
    this.minutes = event.detail.minutes;
  };

  #elsewhere(running: RunningDrill | undefined) {
    return html`<div class="notice elsewhere" role="status">
      <p>${pieces('line.elsewhere', { title: html`<strong>${running?.program ?? say('line.aDrill')}</strong>` })}</p>
    </div>`;
  }

  #interrupted(app: App, running: RunningDrill) {
    const stored = storedOf(app.view, running);
    const { resumeFrom: snapshot, record } = cutOff(running, stored);
    const count = stored?.reps.length ?? 0;
    const cut = record?.reps[count];
    return html`<div class="notice interrupted" role="group" aria-label=${say('line.interruptedDrill')}>
      <p>${pieces('line.interrupted', { title: html`<strong>${running.program}</strong>`, logged: count > 0 ? say('line.loggedTo', { rep: count }) : say('line.noRepEnded') })}</p>
      ${cut ? html`<p>${say('line.cutOffRep', { rep: count + 1, heldMs: cut.heldMs })}</p>` : nothing}
      <div class="row">
        ${
          snapshot
            ? html`<button @click=${() => this.#fill(app, { ...drillOf(running), resumeFrom: snapshot })}>${say('line.goOn')}</button>`
            : nothing
        }
        <button class="quiet" @click=${() => this.#close(app, running)}>${say('line.closeIt')}</button>
      </div>
    </div>`;
  }

  /** Where the record is not safe on disk, it can be had as a file. */
  #asFile({ view, act }: App, record: DrillRecord) {
    if (view.where === 'disk' && !view.trouble) return nothing;
    return html`<p class="as-file">
      <button
        @click=${() => act.saveFile(`${fileNameOf(record.program)}-${record.date}.json`, `${JSON.stringify(record, null, 2)}\n`)}
      >
        ${say('line.saveAsFile')}
      </button>
    </p>`;
  }

  #begin(app: App, prescription: Prescription): void {
    const { title, id } = app.view.chosen;
    void this.#fill(app, { prescription, title, programId: id });
  }

  async #fill(app: App, drill: Drill): Promise<void> {
    if (this.#isTaking) return;
    this.#isTaking = true;
    // A press lets sound through for some seconds; the lock takes a few milliseconds.
    const isOurs = await app.act.takeDrill();
    this.#isTaking = false;
    const running = this.app?.view.running;
    const isStale = drill.resumeFrom !== undefined && running?.recordId !== drill.resumeFrom.id;
    if (!isOurs || isStale || !this.isConnected) {
      if (isOurs) app.act.freeDrill();
      this.said = isStale ? say('line.wentOn') : say('line.notBegun');
      return;
    }
    this.said = '';
    // Not waited for: a drill never waits for its camera.
    if (app.view.kit.camera.on) void import('../shell/lark-sight.ts').catch(() => undefined);
    if (running && !drill.resumeFrom) await this.#closeInterrupted(app, running);
    const { prescription, title: program, programId } = drill;
    app.act.drillKeeper.begin({ prescription, program, programId, drawWeightLbf: app.view.kit.drawWeightLbf });
    this.drill = drill;
    app.act.setDrilling(true);
    this.#guard.begin();
    await this.updateComplete;
    try {
      const element = this.renderRoot.querySelector('lark-drill');
      if (element instanceof LarkDrill) element.begin();
    } catch (error) {
      this.drill = undefined;
      this.#guard.end();
      app.act.setDrilling(false);
      app.act.freeDrill();
      this.said = say('line.cannotRun', { why: error instanceof Error ? error.message : String(error) });
    }
  }

  async #close(app: App, running: RunningDrill): Promise<void> {
    if (!(await app.act.takeDrill())) return;
    await this.#closeInterrupted(app, running);
    app.act.freeDrill();
  }

  async #closeInterrupted({ view, act }: App, running: RunningDrill): Promise<void> {
    await act.drillKeeper.close(running, storedOf(view, running));
  }

  readonly #onRep = (event: CustomEvent<DrillEvents['lark-rep']>): void => {
    void this.app?.act.drillKeeper.repEnded(event.detail.record, event.detail.snapshot);
  };

  readonly #onChange = (event: CustomEvent<DrillEvents['lark-change']>): void => {
    void this.app?.act.drillKeeper.stands(event.detail.snapshot);
  };

  readonly #onEnd = async (event: CustomEvent<DrillEvents['lark-end']>): Promise<void> => {
    const { app } = this;
    if (!app) return;
    const kept = await app.act.drillKeeper.finish(event.detail.record);
    if (kept) this.finished = kept;
    else this.said = say('line.stoppedEarly');
    app.act.freeDrill();
    if (!kept) this.#leave(app);
  };

  readonly #onAfter = async (event: CustomEvent<AfterDrill>): Promise<void> => {
    const { app, finished, drill } = this;
    if (!app || !finished || !drill) return;
    const record = await app.act.drillKeeper.describe(finished, event.detail);
    void app.act.keepStored();
    const program = programOf(app, record);
    if (program) {
      const tomorrow = dayOfNumber(dayNumber(app.view.today) + 1);
      const drills = [...app.view.journal.drills.filter(({ id }) => id !== record.id), record];
      const journal = { ...app.view.journal, drills };
      const next = todaysPrescription({ ...app.view, journal, today: tomorrow }, program);
      this.told = { record, next };
    }
    this.#leave(app);
  };

  #leave(app: App): void {
    this.drill = undefined;
    this.finished = undefined;
    this.minutes = undefined;
    this.#isFocused = false;
    this.#guard.end();
    app.act.setDrilling(false);
    window.scrollTo(0, 0);
  }

  /** The browser's Back in a drill asks as Stop does; after the last rep there is nothing left to lose. */
  #askAtBack(): boolean {
    const drill = this.renderRoot.querySelector('lark-drill');
    if (this.finished || !(drill instanceof LarkDrill)) {
      if (this.app) this.#leave(this.app);
      return false;
    }
    drill.askToStop();
    return true;
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    const { app } = this;
    if (!app || !this.#isAtRest || event.repeat || event.defaultPrevented) return;
    if (event.ctrlKey || event.metaKey || event.altKey || !app.view.kit.keys.begin.includes(event.code)) return;
    const [target] = event.composedPath();
    if (target instanceof HTMLElement && target.matches('a, button, summary, input, select, textarea')) return;
    event.preventDefault();
    this.#beginToday();
  };

  get #isAtRest(): boolean {
    return !this.drill && !this.finished && !this.told;
  }

  #beginToday(): void {
    const { app } = this;
    if (!app) return;
    const prescription = todaysPrescription(app.view, app.view.chosen, this.minutes ?? dueMinutes(app.view));
    // On a rest day only the button itself begins: no pedal, no key that was meant for something else.
    const isRest = prescription.rest ?? seasonRest(app.view);
    if (!isRest && prescription.blocks.length > 0) this.#begin(app, prescription);
  }
}

/** The last drill of today with this program, if one was done. */
function doneToday(app: App): DrillRecord | undefined {
  const done = drillsOf(app).filter(({ date, open, reps }) => date === app.view.today && !open && reps.length > 0);
  return newestDrills(done, 1)[0];
}

/** Every drill with the program of today, in any order. */
function drillsOf({ view }: App): DrillRecord[] {
  const id = idOf(view.chosen);
  return view.journal.drills.filter(({ programId, program }) => (programId ?? program) === id);
}

/** Today's drill as it will stand in the journal when every rep is held. */
function cleanRecord({ blocks, tool }: Prescription, { view }: App): DrillRecord {
  const reps = blocks.flatMap(({ block, sets, reps, holdMs }) =>
    Array.from({ length: sets * reps }, (_, index) => ({
      ...{ block, set: Math.floor(index / reps), rep: index % reps, hand: 'usual' as const },
      ...{ prescribedMs: holdMs, heldMs: holdMs, outcome: 'held' as const },
    })),
  );
  const { id: programId, title: program } = view.chosen;
  const at = `${view.today}T06:00:00Z`;
  return {
    id: 'clean',
    program,
    programId,
    date: view.today,
    startedAt: at,
    endedAt: at,
    tool,
    reps,
    effort: 5,
    pain: false,
  };
}

/** 'Your bow, 38 lb + 2 lb': what is drawn today, and how heavy. */
function toolLine({ tool: drawn = 'bow', blocks }: Prescription, { drawWeightLbf, units }: AppView['kit']): string {
  const added = Math.max(0, ...blocks.map(({ addedWeightLbf }) => addedWeightLbf));
  const tool = drawn === 'light-bow' ? 'light' : drawn;
  if (drawWeightLbf === undefined || tool !== 'bow') return say('today.tool', { tool });
  const weight = formatWeight(drawWeightLbf, units);
  if (added === 0) return say('today.toolWeight', { tool, weight });
  return say('today.toolAdded', {
    tool,
    weight: formatWeight(drawWeightLbf, 'imperial'),
    added: formatWeight(added, 'imperial'),
  });
}

function drillOf({ prescription, program, programId }: RunningDrill): Drill {
  return { prescription, title: program, programId };
}

/** What was written of the record of a drill that was cut off. */
function storedOf({ journal }: App['view'], { recordId }: RunningDrill): DrillRecord | undefined {
  return journal.drills.find(({ id }) => id === recordId);
}

function programOf({ view }: App, record: DrillRecord): Program | undefined {
  return view.programs.find((program) => idOf(program) === (record.programId ?? record.program));
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-line': LarkLine;
  }
}

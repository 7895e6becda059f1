import type { DrillRecord, Prescription, Program, SessionSnapshot } from '@larkhold/engine';
import { type AfterDrill, type DrillEvents, LarkDrill } from '@larkhold/runner';
import { nextTask, type RunningDrill } from '@larkhold/store';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import './calls-asked.ts';
import './fatigue-fold.ts';
import '../shell/own-hold-offer.ts';
import { formatDay, say } from '@larkhold/words';
import './lark-in-mind.ts';
import { createBackGuard } from '../shell/back-guard.ts';
import { PlaceElement } from '../shell/place-element.ts';
import './readiness-choice.ts';
import { isDueAsEver } from './due-today.ts';
import './leads-on.ts';
import './rest-day.ts';
import './minutes-choice.ts';
import './last-drills.ts';
import './then-and-now.ts';
import './too-small.ts';
import { idOf } from '@larkhold/engine';
import { isLong } from '../shell/fold-in-turns.ts';
import { hrefOf } from '../shell/routing.ts';
import { todaysPrescription } from '../shell/todays-prescription.ts';
import { dueMinutes, seasonRest } from '../shell/todays-program.ts';
import { beginBar } from './begin-bar.ts';
import { cleanRecord } from './clean-record.ts';
import { doneSection } from './done-section.ts';
import { doneToday, drillsOf } from './drills-of-program.ts';
import { firstRun } from './first-run.ts';
import { GamepadToBegin } from './gamepad-to-begin.ts';
import { createNextTime, numbersAfter } from './next-time.ts';
import { recordAsFile } from './record-as-file.ts';
import { elsewhereNotice, interruptedNotice, storedOf } from './running-notices.ts';
import { toolLine } from './tool-line.ts';
import '../shell/lark-cue-track.ts';
import './lark-prescription.ts';
import './lark-told.ts';
import { pressSourcesOf } from '../shell/press-sources-of.ts';
import { runnerSettingsOf } from '../shell/runner-settings-of.ts';
import { lineStyles } from './line-styles.ts';

const TURNS = 2;
/** After how long a drawing has been painted, or nobody sees the page, milliseconds. */
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
  @state() private noCamera = '';
  /** Turns since the numbers and the bar were first drawn: of a long journal what is beside them comes after them, in two. */
  @state() private turns = 0;
  #isFocused = false;
  #isTaking = false;
  readonly #guard = createBackGuard(() => this.#askAtBack());
  readonly #nextTime = createNextTime();

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

  /** The first drawing has a turn of its own, after the frame of the page around it. */
  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await nextTask();
    super.scheduleUpdate();
  }

  protected override updated(): void {
    if (this.app && !this.app.view.past && this.turns < TURNS && isLong(this.app.view.journal)) void this.#nextTurn();
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
          >${app.view.kit.camera.on ? html`<lark-sight slot="sight" .deviceId=${app.view.kit.camera.deviceId} .flipped=${app.view.kit.viewing.flipped} ?replayOnly=${app.view.kit.camera.replayOnly} ?saysForm=${app.view.kit.camera.formWord}>${this.noCamera}</lark-sight>` : nothing}<lark-in-mind isDrilling></lark-in-mind
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
      }}></lark-told><own-hold-offer .drilled=${told.record}></own-hold-offer>${recordAsFile(app, told.record)}`;
    }
    return this.#today(app);
  }

  #today(app: App) {
    const { view } = app;
    const { chosen } = view;
    const prescription = todaysPrescription(view, chosen, this.minutes ?? dueMinutes(view));
    const done = doneToday(app);
    const next = this.#nextTime(view, done ?? cleanRecord(prescription, app));
    const isFirst = view.journal.drills.length === 0 && !view.past;
    // What Begin will begin is on the first screen; how often one should drill comes after it.
    // On a rest day a sentence leads to the numbers, on a first run nobody knows yet what there is to choose.
    const isRest = (prescription.rest ?? seasonRest(view)) !== undefined;
    const isChoiceFirst = !isFirst && !isRest;
    const isDueLow = isFirst || isDueAsEver(view);
    return html`<div class="page">
      <div class="today">
        <header>
          <p class="dim">${formatDay(view.today)}</p>
          <h1>${chosen.title}</h1>
          <p>${toolLine(prescription, view.kit)}</p>
          <p class="small"><a class="dim" href=${hrefOf('rack')}>${say('line.anotherProgram')}</a> · <a class="dim" href="#/season">${say('line.comingWeeks')}</a></p>
          ${isDueLow ? nothing : html`<due-today></due-today>`}
        </header>
        ${isFirst && prescription.blocks.length === 0 ? firstRun(this.#pick) : nothing}
        ${this.said ? html`<p class="notice" role="status">${this.said}</p>` : nothing}
        ${view.runsElsewhere ? elsewhereNotice(view.running) : view.running ? this.#interrupted(app, view.running) : nothing}
        ${done ? doneSection(done) : html`<rest-day .prescription=${prescription} .because=${seasonRest(view)}></rest-day>`}
        ${
          done && next
            ? html`<h2 class="next">${say('line.nextTime')}</h2>
                <lark-prescription .prescription=${next} .units=${view.kit.units}></lark-prescription>`
            : prescription.blocks.length === 0
              ? nothing
              : html`${isChoiceFirst ? this.#choices(view, prescription) : nothing}<lark-prescription .prescription=${prescription} .units=${view.kit.units}>
                ${isFirst ? firstRun(this.#pick) : nothing}
                ${isChoiceFirst ? nothing : this.#choices(view, prescription)}
                <too-small></too-small>
              </lark-prescription>`
        }
        ${isDueLow ? html`<due-today class="low"></due-today>` : nothing}
        <leads-on .prescription=${done && next ? next : prescription} ?isDone=${done !== undefined}></leads-on>
        <calls-asked .prescription=${prescription} .programId=${idOf(chosen)}></calls-asked>
      </div>
      ${beginBar(prescription, { done: done !== undefined, rest: isRest }, () => this.#begin(app, prescription))}
      <div class="beside">${this.#beside(app, prescription, next)}</div>
    </div>`;
  }

  #choices(view: App['view'], prescription: Prescription) {
    return html`<div class="choices">
      <readiness-choice .prescription=${prescription}></readiness-choice>
      <minutes-choice
        .minutes=${this.minutes ?? dueMinutes(view)}
        .prescription=${prescription}
        @lark-minutes=${this.#onMinutes}
      ></minutes-choice>
    </div>`;
  }

  #beside(app: App, prescription: Prescription, next: Prescription) {
    const { chosen, journal, today } = app.view;
    if (app.view.past) return html`<p class="dim" role="status">${say('app.readingOlder')}</p>`;
    const drawn = isLong(journal) ? this.turns : TURNS;
    const lately = html`<then-and-now .prescription=${prescription} .next=${next}></then-and-now>
      <lark-in-mind></lark-in-mind>
      <last-drills .drills=${drillsOf(app)}></last-drills>
      <lark-day-strip .journal=${journal} .today=${today}></lark-day-strip>`;
    const ahead = html`<fatigue-fold .prescription=${prescription}></fatigue-fold>
      <lark-cue-track .prescription=${prescription} .programTitle=${chosen.title} .programId=${idOf(chosen)}></lark-cue-track>`;
    return html`${drawn > 0 ? lately : nothing}${drawn >= TURNS ? ahead : nothing}`;
  }

  readonly #pick = (detail: readonly File[]): void => {
    this.dispatchEvent(new CustomEvent('lark-pick-files', { detail, bubbles: true, composed: true }));
  };

  readonly #onMinutes = (event: CustomEvent<{ minutes: number | undefined }>): void => {
    this.minutes = event.detail.minutes;
  };

  #interrupted(app: App, running: RunningDrill) {
    return interruptedNotice(app.view, running, {
      goOn: (resumeFrom) => void this.#fill(app, { ...drillOf(running), resumeFrom }),
      close: () => void this.#close(app, running),
    });
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
    const missing = () => say('sight.notLoaded');
    if (app.view.kit.camera.on) void import('../shell/lark-sight.ts').then(() => '', missing).then(this.#tellOfCamera);
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

  readonly #tellOfCamera = (words: string): void => {
    this.noCamera = words;
  };

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
    void this.app?.act.drillKeeper.moved(event.detail.snapshot);
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
    // A drill that ended before the older ones were read: what comes next is not known yet.
    if (program && !app.view.past) {
      this.told = { record, next: numbersAfter(app.view, record, program) };
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

function drillOf({ prescription, program, programId }: RunningDrill): Drill {
  return { prescription, title: program, programId };
}

function programOf({ view }: App, record: DrillRecord): Program | undefined {
  return view.programs.find((program) => idOf(program) === (record.programId ?? record.program));
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-line': LarkLine;
  }
}

import {
  type ArcherToday,
  type Capacity,
  type ClimbWeek,
  climbWeeks,
  idOf,
  knowArcher,
  planWeeks,
  type TestResult,
} from '@larkhold/engine';
import { archerOf, type Kit } from '@larkhold/store';
import { formatDay, formatDuration, formatRow, formatWeight, say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import '@larkhold/ui';
import type { App, AppView } from '../../shell/app-context.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { hrefOf } from '../../shell/routing.ts';
import { evidenceLine } from './evidence.ts';
import { knownStyles } from './known-styles.ts';

/** Weeks to come in the climb. */
const WEEKS_AHEAD = 8;
const HOLD_SECONDS = [1, 600] as const;
const USUAL_MINUTES = [5, 240] as const;

/** What is known of the archer, field by field, with where it was read and how to correct it. */
@customElement('known-page')
export class KnownPage extends PlaceElement {
  static override styles = [...PlaceElement.styles, knownStyles];

  @state() private problem = '';
  #kept: { view: AppView; known: ArcherToday; climb: ClimbWeek[] } | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { known, climb } = this.#known(app.view);
    return html`<p><a href=${hrefOf('kit')}>${say('kit.kit')}</a></p>
      <h1>${say('known.title')}</h1>
      ${climb.length === 0 ? nothing : html`<section class="climb" aria-labelledby="climb"><h2 id="climb">${say('known.climb')}</h2><lark-climb .weeks=${climb}></lark-climb><p class="dim">${say('known.climbAbout')}</p></section>`}
      <p class="about">${say('known.about')}</p>
      ${this.#capacity(app, known)} ${this.#exposure(app, known)} ${this.#pain(app, known)} ${this.#rhythm(app, known)}
      ${this.#tests(app, known)} ${this.#response(app, known)}`;
  }

  /** Folded once for a journal, a kit and a day. */
  #known(view: AppView): { known: ArcherToday; climb: ClimbWeek[] } {
    const kept = this.#kept;
    const isSame = kept?.view.journal === view.journal && kept.view.kit === view.kit && kept.view.today === view.today;
    if (isSame) return kept;
    const { journal, today, programs, kit, season, chosen } = view;
    const [records, days, archer] = [journal.drills, journal.days, archerOf(kit)];
    const known = knowArcher({ records, days, today, archer, programs });
    const plan = planWeeks({ season: season.season, programs, records, days, today, archer, weeks: WEEKS_AHEAD });
    this.#kept = { view, known, climb: climbWeeks({ records, plan, today, tool: chosen.tool }) };
    return this.#kept;
  }

  #capacity({ view, act }: App, { capacity }: ArcherToday) {
    const { journal, kit } = view;
    const told = capacity.filter(({ atLeastSeconds, likelySeconds }) => atLeastSeconds ?? likelySeconds);
    return html`<section aria-labelledby="capacity">
      <h2 id="capacity">${say('known.capacity')}</h2>
      <p class="dim">${say('known.capacityAbout')}</p>
      ${told.length === 0 ? html`<p>${say('known.nothingHeld')}</p>` : told.map((one) => html`<h3>${toolWords(one, kit)}</h3>${holdWords(one).map((words) => html`<p>${words}</p>`)}${evidenceLine(one.evidence, journal)}`)}
      ${this.#numberField(say('known.yourHold'), say('known.yourHoldAbout'), kit.maxHoldSeconds, HOLD_SECONDS, (maxHoldSeconds) => act.changeKit({ maxHoldSeconds }))}
      <p><a href=${hrefOf('kit')}>${say('known.weight')}</a></p>
    </section>`;
  }

  #exposure({ view }: App, { exposure }: ArcherToday) {
    const { lastDrawnOn, daysAway, daysInRow, week, weeksBefore, addedWeightLbf, addedWeightRaisedOn, evidence } =
      exposure;
    const before = weeksBefore.map(({ heldSeconds }) => formatDuration(heldSeconds * 1000));
    return html`<section aria-labelledby="exposure">
      <h2 id="exposure">${say('known.exposure')}</h2>
      ${
        lastDrawnOn === undefined
          ? html`<p>${say('known.never')}</p>`
          : html`<p>${say('known.lastDrawn', { day: lastDrawnOn, days: daysAway ?? 0 })} ${daysInRow > 0 && (daysAway ?? 0) <= 1 ? say('known.inRow', { days: daysInRow }) : ''}</p>
        <p>${say('known.sevenDays', { held: week.heldSeconds * 1000, drills: week.drillCount, arrows: week.arrowCount })}</p>
        <p>${say('known.weeksBefore', { list: formatRow(before) })}</p>`
      }
      ${addedWeightRaisedOn === undefined || addedWeightLbf === 0 ? nothing : html`<p>${say('known.added', { weight: formatWeight(addedWeightLbf, 'imperial'), day: addedWeightRaisedOn })}</p>`}
      ${evidenceLine(evidence, view.journal)}
    </section>`;
  }

  #pain(app: App, { pain }: ArcherToday) {
    const { journal, today } = app.view;
    const entry = journal.days.find(({ date }) => date === today) ?? { date: today };
    const answer = (hurts: boolean, words: string) => html`<button
      aria-pressed=${entry.pain === hurts ? 'true' : 'false'}
      @click=${() => app.act.putDay({ ...entry, pain: entry.pain === hurts ? undefined : hurts, editedAt: app.act.instant() })}
    >
      ${words}
    </button>`;
    return html`<section aria-labelledby="pain">
      <h2 id="pain">${say('known.pain')}</h2>
      <p>${painWords(pain)}</p>
      ${pain.restUntil === undefined ? nothing : html`<p>${say('known.painUntil', { day: pain.restUntil })}</p>`}
      ${pain.evidence.length === 0 ? nothing : evidenceLine(pain.evidence, journal)}
      <fieldset>
        <legend>${say('known.painAsk')}</legend>
        <p class="dim">${say('after.painMeans')}</p>
        <div class="row">${answer(false, say('after.no'))} ${answer(true, say('after.yes'))}</div>
      </fieldset>
    </section>`;
  }

  #rhythm({ view, act }: App, { rhythm }: ArcherToday) {
    const { minutes, daysPerWeek, evidence } = rhythm;
    return html`<section aria-labelledby="rhythm">
      <h2 id="rhythm">${say('known.rhythm')}</h2>
      ${evidence.length === 0 ? html`<p>${say('known.noRhythm')}</p>` : html`<p>${say('known.days', { days: daysPerWeek })} ${minutes === undefined ? '' : say('known.minutes', { minutes })}</p>`}
      ${evidenceLine(evidence, view.journal)}
      ${this.#numberField(say('known.usualMinutes'), say('known.usualMinutesAbout'), view.kit.plan?.usualMinutes, USUAL_MINUTES, (usualMinutes) => act.changeKit(({ plan }) => ({ plan: { ...plan, usualMinutes } })))}
    </section>`;
  }

  #tests({ view, act }: App, { tests }: ArcherToday) {
    const programs = view.programs.filter(({ kind }) => kind === 'test');
    return html`<section aria-labelledby="tests">
      <h2 id="tests">${say('known.tests')}</h2>
      ${
        tests.length === 0
          ? html`<p>${say('known.noTests')}</p>`
          : html`<ul class="results">
        ${tests.toReversed().map(
          (result) => html`<li>
          <a href=${hrefOf('journal', result.id)}>${result.program}, ${formatDay(result.date, 'short')}</a>: ${resultWords(result)}. ${changeWords(result)}
        </li>`,
        )}
      </ul>`
      }
      <div class="row">
        ${programs.map((program) => html`<button @click=${() => act.chooseProgram(idOf(program))}>${say('known.takeTest', { title: program.title })}</button>`)}
      </div>
    </section>`;
  }

  #response({ view }: App, { response }: ArcherToday) {
    const { direction, evidence } = response;
    return html`<section aria-labelledby="response">
      <h2 id="response">${say('known.response')}</h2>
      <p>${say(responseKeys[direction])}</p>
      ${evidenceLine(evidence, view.journal)}
      <p class="dim">${say('known.correctRecords')}</p>
    </section>`;
  }

  #numberField(
    label: string,
    about: string,
    value: number | undefined,
    [least, most]: readonly [number, number],
    change: (value: number | undefined) => unknown,
  ) {
    const read = (event: Event): void => {
      if (!(event.target instanceof HTMLInputElement)) return;
      const { value: text, validity } = event.target;
      const next = text === '' ? undefined : Math.round(Number(text));
      const isGood = next === undefined ? !validity.badInput : next >= least && next <= most;
      this.problem = isGood ? '' : say('known.holdRange', { least, most });
      if (isGood) change(next);
    };
    return html`<label
        >${label}
        <input type="number" inputmode="numeric" min=${least} max=${most} .value=${value === undefined ? '' : String(value)} @change=${read} />
      </label>
      <p class="dim small">${about}</p>
      <p class="problem" role="alert">${this.problem}</p>`;
  }
}

const responseKeys = {
  unknown: 'known.responseUnknown',
  up: 'known.responseUp',
  level: 'known.responseLevel',
  stuck: 'known.responseStuck',
  sliding: 'known.responseSliding',
} as const satisfies Record<ArcherToday['response']['direction'], string>;

function toolWords({ tool, atLbf }: Capacity, { units }: Kit): string {
  const kind = tool === 'light-bow' ? 'light' : tool;
  if (atLbf === undefined) return say('known.tool', { tool: kind });
  return say('known.toolAt', { tool: kind, weight: formatWeight(atLbf, units) });
}

function holdWords({ atLeastSeconds, likelySeconds, likelyFrom, atMostSeconds }: Capacity): string[] {
  const ms = (seconds: number) => ({ ms: Math.round(seconds * 10) * 100 });
  const key = { test: 'known.likelyTest', failures: 'known.likelyFailures', answer: 'known.likelyAnswer' } as const;
  return [
    ...(likelySeconds === undefined || likelyFrom === undefined ? [] : [say(key[likelyFrom], ms(likelySeconds))]),
    ...(atLeastSeconds === undefined ? [] : [say('known.atLeast', ms(atLeastSeconds))]),
    ...(atMostSeconds === undefined ? [] : [say('known.atMost', ms(atMostSeconds))]),
  ];
}

function painWords({ state: now, on, answers, needed }: ArcherToday['pain']): string {
  if (now === 'unknown') return say('known.painUnknown');
  if (now === 'clear') return say('known.painClear');
  if (now === 'painful') return say('known.painToday');
  const stage = now === 'light-bow' ? 'light' : now === 'bow' ? 'other' : now;
  return say('known.painStage', { day: on ?? '', stage, answers, needed });
}

function resultWords({ measure, value, isAtLeast }: TestResult): string {
  if (measure === 'longest-hold-seconds') {
    return say(isAtLeast ? 'known.testSecondsMore' : 'known.testSeconds', { ms: value * 1000 });
  }
  return say(isAtLeast ? 'known.testRepMore' : 'known.testRep', { rep: value });
}

function changeWords({ change }: TestResult): string {
  if (!change) return '';
  const { share, fromDate: day, isNews } = change;
  if (Math.round(share * 100) === 0) return say('known.changeNone', { day });
  const direction = share > 0 ? ('more' as const) : ('other' as const);
  return say(isNews ? 'known.changeNews' : 'known.changeNoise', { share: Math.abs(share), direction, day });
}

declare global {
  interface HTMLElementTagNameMap {
    'known-page': KnownPage;
  }
}

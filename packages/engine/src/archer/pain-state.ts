import { summariesOf } from './day-sum.ts';
import type { LoggedDay } from './logged-day.ts';

/** The stages of the way back after pain, in order; `clear` is none of them. */
export const painStages = ['mimed', 'band', 'light-bow', 'bow'] as const;
/** A stage of the way back after pain. `mimed`: a rest day with the question answered; then what is drawn. */
export type PainStage = (typeof painStages)[number];

/**
 * Pain-free answers, on different days, that each stage needs.
 * @source archerycoach.wordpress.com, 2014-11-24: without pain in more than one session, since pain may come the next day
 */
export const ANSWERS_A_STAGE = 2;
/** After how many painful drills within two weeks somebody who knows should look. Own, careful: no source. */
export const PAINFUL_DRILLS = 3;
const TWO_WEEKS = 14;
/** The climb after pain is over after this many days from its first drill on, and this many days with one. Own, careful: no source. */
const CLIMB_DAYS = 28;
const CLIMB_DRILL_DAYS = 10;
/** Days with a drill over which its limit then fades, by a fifth on each, so that nothing jumps when it ends. Own, careful: no source. */
const FADING_DAYS = 20;
const FADES = 1.2;
const nothing: DoneSincePain = { days: 0, holdMs: 0, heldMs: 0, addedLbf: 0 };

/**
 * The most that was done in one drill since the last pain, whatever the program; once the climb is over it grows from drill to drill, whatever was
 * done. Milliseconds, pounds-force.
 */
export interface DoneSincePain {
  /** Its first day with a drill, and how many there are. */
  firstDay?: number;
  days: number;
  holdMs: number;
  heldMs: number;
  addedLbf: number;
  /** Days with a drill since the climb was over; absent until it is. */
  fadingDays?: number;
}

/** What is known of pain, from drills and diary. */
export interface PainState {
  /** Where the way back has come to; absent: clear, as far as anybody said. */
  stage?: PainStage;
  /** Pain-free days in this stage, each counted once. */
  answers: number;
  /** The last painful day, from 1970-01-01. */
  painDay?: number;
  /** Days of the painful drills of the last two weeks, one each. */
  painfulDrillDays: readonly number[];
  /** The first day on which there may be a drill again after too many painful ones. */
  restUntilDay?: number;
  /** The most of any drill since the last pain; absent where there was none, or where the climb after it is over. */
  since?: DoneSincePain;
  /** Whether anybody ever answered the question. */
  isAnswered: boolean;
  /** Ids of the painful drills since it was last clear; a diary day as its date. */
  evidence: readonly string[];
}

/** Nobody ever said anything. */
export const noPain: PainState = { answers: 0, painfulDrillDays: [], isAnswered: false, evidence: [] };

/** A day's answer: one yes outweighs every no. */
export function painAnswer({ drills, entry }: LoggedDay): boolean | undefined {
  let answer = entry?.pain;
  for (const { pain } of drills) {
    if (pain) return true;
    answer ??= pain;
  }
  return answer;
}

/**
 * What a day's answers change. Pain sends back to the first stage; a day with "no" and without "yes" counts once; an open question changes nothing.
 * @param state what was known before
 * @param today the day, as logged
 * @returns what is known after it
 */
export function stepPain(state: PainState, today: LoggedDay): PainState {
  const answer = painAnswer(today);
  if (answer) return hurt(state, today);
  const answered = answer === undefined ? state : withoutPain(state, today);
  return answered.since === undefined ? answered : { ...answered, since: doneAfter(answered.since, today) };
}

function withoutPain(state: PainState, today: LoggedDay): PainState {
  const { day } = today;
  const { stage, answers } = painOn(state, day);
  if (stage === undefined) return state.isAnswered ? state : { ...state, isAnswered: true };
  if (answers + 1 < ANSWERS_A_STAGE || isResting(state, day)) {
    return { ...state, stage, answers: Math.min(ANSWERS_A_STAGE, answers + 1), isAnswered: true };
  }
  const next = painStages[painStages.indexOf(stage) + 1];
  if (next !== undefined) return { ...state, stage: next, answers: 0, isAnswered: true };
  return {
    answers: 0,
    painfulDrillDays: state.painfulDrillDays,
    painDay: state.painDay,
    since: state.since,
    isAnswered: true,
    evidence: [],
  };
}

function doneAfter(since: DoneSincePain, today: LoggedDay): DoneSincePain | undefined {
  const { day } = today;
  const { firstDay, fadingDays = 0 } = since;
  const isOver = firstDay !== undefined && day - firstDay > CLIMB_DAYS && since.days >= CLIMB_DRILL_DAYS;
  if (isOver && fadingDays >= FADING_DAYS) return undefined;
  const done = summariesOf(today).filter(({ heldMs }) => heldMs > 0);
  if (done.length === 0) return since;
  const next: DoneSincePain = { ...since, firstDay: firstDay ?? day, days: since.days + 1 };
  if (isOver) {
    next.fadingDays = fadingDays + 1;
    next.holdMs *= FADES;
    next.heldMs *= FADES;
  }
  for (const { blocks, heldMs, longestHeldMs, addedLbf = 0 } of done) {
    const count = blocks.reduce((sum, { repCount }) => sum + repCount, 0);
    // Where nothing was held to its end: what a rep held on average.
    next.holdMs = Math.max(next.holdMs, longestHeldMs, heldMs / count);
    next.heldMs = Math.max(next.heldMs, heldMs);
    next.addedLbf = Math.max(next.addedLbf, addedLbf);
  }
  return next;
}

/**
 * The stage on a day: a rest that was ordered ends by itself, when the question has been answered.
 * @param state what is known
 * @param day days from 1970-01-01
 * @returns stage and pain-free answers in it; no stage when it is clear
 */
export function painOn(state: PainState, day: number): { stage?: PainStage; answers: number } {
  const { stage, answers } = state;
  if (stage === undefined) return { answers: 0 };
  if (stage === 'mimed' && answers >= ANSWERS_A_STAGE && !isResting(state, day)) return { stage: 'band', answers: 0 };
  return { stage, answers };
}

/** Whether too many drills hurt lately: no drill until somebody has looked. */
export function isResting({ restUntilDay }: PainState, day: number): boolean {
  return restUntilDay !== undefined && day < restUntilDay;
}

function hurt(state: PainState, { day, drills, entry }: LoggedDay): PainState {
  const painful = drills.filter(({ pain }) => pain);
  // Pain that only the diary tells of belongs to the drill of the day, if there was one.
  const count = painful.length || (drills.length > 0 ? 1 : 0);
  const recent = state.painfulDrillDays.filter((one) => one > day - TWO_WEEKS);
  const painfulDrillDays = [...recent, ...new Array<number>(Math.min(count, PAINFUL_DRILLS)).fill(day)].slice(-8);
  const named = painful.map(({ id }) => id);
  if (named.length === 0 && entry) named.push(entry.date);
  return {
    ...{ stage: 'mimed', answers: 0, painDay: day, painfulDrillDays, since: nothing, isAnswered: true },
    restUntilDay: painfulDrillDays.length >= PAINFUL_DRILLS ? day + TWO_WEEKS : state.restUntilDay,
    evidence: [...state.evidence, ...named].slice(-8),
  };
}

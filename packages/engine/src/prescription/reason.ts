import type { Tool } from '../archer/capacity-state.ts';
import type { AskedNumber } from './asked-number.ts';

/** Numbers of a place on a ladder: seconds, counts, pounds-force. */
interface Place {
  hold: number;
  reps: number;
  sets: number;
  addedWeight: number;
}

/** What every reason that says how far a block has come holds: its place, where the program begins, and what leads on. */
export type LadderFacts = Place & {
  title: string;
  /** Steps climbed, and steps there are. */
  level: number;
  top: number;
  startHold: number;
  startReps: number;
  startSets: number;
  startAddedWeight: number;
  /** What is worked with today, before today asks for less. */
  workHold: number;
  workReps: number;
  workSets: number;
  workAddedWeight: number;
  /** Clean days still needed for the next step, and what it is; absent at the top. */
  needDays?: number;
  nextHold?: number;
  nextReps?: number;
  nextSets?: number;
  nextAddedWeight?: number;
  /** 1 where only more weight leads on, and it may not rise yet. */
  weightWaits?: number;
  /** Where only more weight leads on, and there may never be more: the most there may be, pounds-force. */
  weightMost?: number;
  /** Steps beyond the last are not counted. */
  isCut?: number;
  /** How many times a hold the rest is, and which hold. */
  restTimesHold?: number;
  restHold?: number;
  restFactor?: number;
  /** 'rest': the file gives no rest after a set, so the rest between reps is used. */
  setRestFrom?: string;
};

/** What the last move on a ladder was. */
export type MoveFacts = LadderFacts & {
  /** ISO 8601 day. */
  on: string;
  /** Clean days, failed days, or days away. */
  because: number;
  fromHold: number;
  fromReps: number;
  fromSets: number;
  fromAddedWeight: number;
};

/** A cut of the reps today: what is kept, and what is left. */
type CutFacts = { title: string; keep: number; from: number; reps: number; sets: number; hold: number };

/** What a lever was and is. */
export type LessFacts = {
  title: string;
  fromHold: number;
  hold: number;
  fromReps: number;
  reps: number;
  fromSets: number;
  sets: number;
  fromAddedWeight: number;
  addedWeight: number;
};

/** Every rule that can act on a prescription, and the facts it reads. Days are ISO 8601, times seconds, weights pounds-force. */
export interface RuleFacts {
  fixed: LadderFacts;
  start: LadderFacts;
  /** Where a block is after it went down, when a drill was done since. */
  steady: LadderFacts & { on: string };
  climb: MoveFacts;
  recover: MoveFacts;
  stepDown: MoveFacts;
  strain: MoveFacts;
  layoff: MoveFacts;
  sore: MoveFacts;
  /** A first dose from what the archer is known to hold. */
  firstDose: LadderFacts & {
    longestHold?: number;
    from: 'test' | 'failures' | 'answer' | 'held' | 'cautious';
    knownHold: number;
  };
  top: { title: string; hold: number; next?: string };
  stuck: { title: string; times: number; hold: number };
  away: LessFacts & { days: number; isOlder: number };
  yearAway: { days: number };
  wayBack: LessFacts & { stage: string; on: string; answers: number; needed: number };
  elsewhere: LessFacts & { on: string; heldSeconds: number; askedSeconds: number };
  deload: CutFacts & { week: number; everyWeeks: number };
  /** A lighter week of the archer's season. */
  lighterWeek: CutFacts & { seasonBlock: string; week: number; ofWeeks: number };
  taper: CutFacts & { daysLeft: number; competition: string };
  effort: CutFacts & { effort: number; on: string };
  heavy: CutFacts & { readiness: string };
  arrows: CutFacts & { arrows: number; on: string; isToday: number; many: number };
  /** The climb after pain: no more than a step above what was done since. */
  afterPain: LessFacts & { on: string };
  cap: LessFacts & { drills: number };
  pace: { title: string; fromReps: number; fromSets: number; reps: number; sets: number; mostSeconds: number };
  weeklyGrowth: {
    title: string;
    growth: number;
    meanSeconds: number;
    doneSeconds: number;
    fromReps: number;
    fromSets: number;
    reps: number;
    sets: number;
  };
  weightWaits: { title: string; wished: number; addedWeight: number; most?: number };
  age: { ageYears: number; tool: Tool };
  ageWeight: { title: string; ageYears: number; fromLbf: number; addedWeight: number };
  ageDose: LessFacts & { ageYears: number };
  minutes: { minutes: number; sharePercent: number; isOver: number; counts: 'climb' | 'place' };
  halfHour: { minutes: number; sharePercent: number; counts: 'climb' | 'place' };
  /** What one block gave up to the minutes; 0 sets: left out. */
  shorter: {
    title: string;
    fromSets: number;
    fromReps: number;
    fromHold: number;
    sets: number;
    reps: number;
    hold: number;
  };
  small: { title: string };
  /** Today leads no further, however clean: it is too little or too short, a lighter week of the file, or on the way back after pain. */
  holdsPlace: { title: string };
  /** In the block's last drill a camera and the clock were apart on some reps, counted: what each has of them, seconds. The numbers go by the camera. */
  seen: { title: string; on: string; reps: number; clockSeconds: number; seenSeconds: number };
  restLess: { title: string; from: number; reps: number; sets: number; hold: number };
  clicker: { title: string };
  impossibleDate: { records: number; dates: string };
  future: { records: number };
  test: { title: string };
  pain: { on: string };
  painAgain: { on: string; drills: number; until: string };
  painMimed: { on: string; answers: number; needed: number };
  painTool: { stage: string; tool: Tool; on: string; answers: number; needed: number };
  daysInRow: { days: number; most: number };
  youthDay: { ageYears: number; on: string };
  competition: { daysLeft: number; competition: string };
  /** The archer's season has rest today: its rule, and the next day with a drill, ISO 8601. */
  seasonRest: { because: string; nextDay?: string };
  noClicker: { title: string };
  testPain: { title: string; on: string };
  testCompetition: { title: string; competition: string; daysLeft: number };
  testAge: { title: string; ageYears: number };
  testMinutes: { title: string; minutes: number; needed: number };
}

/** The name of a rule. */
export type Rule = keyof RuleFacts;

/** One rule that acted on a prescription. */
export type Reason = {
  [R in Rule]: {
    rule: R;
    /** The block it acted on, 0-based; absent when it acted on all. */
    block?: number;
    facts: RuleFacts[R];
    /** What it changed: one or more plain sentences. */
    change: string;
    /** The numbers it decided or changed. */
    acts?: readonly AskedNumber[];
  };
}[Rule];

import { MOST_ADDED_LBF, WEIGHT_STEP_LBF } from './added-weight.ts';
import type { Dose } from './dose.ts';
import { mostClimbs } from './ladder-path.ts';
import type { LadderFacts, MoveFacts, Rule, RuleFacts } from './reason.ts';
import type { Sayer } from './sayer.ts';

/** What a dose was and is. */
type Less = Dose & { fromHold: number; fromReps: number; fromSets: number; fromAddedWeight: number };

/**
 * A rule that acted on a prescription, in words.
 * @param reason its rule and facts
 * @param words the language
 * @returns one or more plain sentences
 */
export function sayReason({ rule, facts }: { rule: Rule; facts: RuleFacts[Rule] }, words: Sayer): string {
  return (sentences[rule] as (facts: unknown, words: Sayer) => string)(facts, words);
}

const s = (seconds: number): number => seconds * 1000;
const lb = (words: Sayer, lbf: number): string => words.weight(lbf, 'imperial');

type Sentences = { [R in Rule]: (facts: RuleFacts[R], words: Sayer) => string };
const sentences: Sentences = {
  fixed: (f, w) => w.say('reason.fixed', { title: f.title, dose: doseWords(work(f), w) }),
  start: (f, w) => w.say('reason.start', { title: f.title, dose: doseWords(work(f), w), next: sayNext(f, w) }),
  steady: (f, w) =>
    w.say('reason.steady', { title: f.title, dose: doseWords(work(f), w), next: sayNext(f, w), on: f.on }),
  climb: (f, w) => w.say('reason.climb', { ...moved(f, w), days: f.because }),
  recover: (f, w) => w.say('reason.recover', { ...moved(f, w), days: f.because }),
  stepDown: (f, w) => w.say('reason.stepDown', moved(f, w)),
  strain: (f, w) => w.say('reason.strain', moved(f, w)),
  layoff: (f, w) => {
    const { title, change, next } = moved(f, w);
    return w.say('reason.layoff', { title, change, next, days: f.because });
  },
  sore: (f, w) => w.say('reason.sore', moved(f, w)),
  firstDose: (f, w) => {
    const base = { title: f.title, dose: doseWords(work(f), w), next: sayNext(f, w) };
    const longest = s(f.longestHold ?? f.knownHold);
    const known = s(f.knownHold);
    if (f.from === 'test') return w.say('reason.firstTest', { ...base, longest });
    if (f.from === 'failures') return w.say('reason.firstFailures', { ...base, longest });
    if (f.from === 'answer') return w.say('reason.firstAnswer', { ...base, longest });
    return f.from === 'held'
      ? w.say('reason.firstHeld', { ...base, known })
      : w.say('reason.firstCautious', { ...base, known });
  },
  top: (f, w) =>
    f.next === undefined
      ? w.say('reason.top', { title: f.title })
      : w.say('reason.topNext', { title: f.title, program: f.next }),
  stuck: (f, w) => w.say('reason.stuck', { title: f.title, hold: s(f.hold), times: f.times }),
  away: (f, w) =>
    w.say(f.isOlder ? 'reason.awayOlder' : 'reason.away', { title: f.title, change: lessWords(f, w), days: f.days }),
  yearAway: (f, w) => w.say('reason.yearAway', { days: f.days }),
  wayBack: (f, w) =>
    w.say('reason.wayBack', {
      ...{ title: f.title, change: lessWords(f, w), on: f.on, stage: stageOf(f.stage) },
      days: f.needed - f.answers,
    }),
  elsewhere: (f, w) =>
    w.say('reason.elsewhere', {
      ...{ title: f.title, change: lessWords(f, w), on: f.on },
      ...{ held: s(f.heldSeconds), asked: s(f.askedSeconds) },
    }),
  deload: (f, w) => w.say('reason.deload', { title: f.title, cut: cutWords(f, w), week: f.week, every: f.everyWeeks }),
  lighterWeek: (f, w) =>
    w.say('reason.lighterWeek', {
      ...{ title: f.title, cut: cutWords(f, w), week: f.week, weeks: f.ofWeeks, block: f.seasonBlock },
    }),
  taper: (f, w) => {
    const base = { title: f.title, cut: cutWords(f, w) };
    return f.daysLeft === 0 ? w.say('reason.taperToday', base) : w.say('reason.taper', { ...base, on: f.competition });
  },
  effort: (f, w) => w.say('reason.effort', { title: f.title, cut: cutWords(f, w), effort: f.effort }),
  heavy: (f, w) => w.say('reason.heavy', { title: f.title, cut: cutWords(f, w) }),
  arrows: (f, w) =>
    w.say('reason.arrows', {
      ...{ title: f.title, cut: cutWords(f, w), arrows: f.arrows, many: f.many },
      day: f.isToday ? 'today' : 'other',
    }),
  afterPain: (f, w) => w.say('reason.afterPain', { title: f.title, change: lessWords(f, w), on: f.on }),
  cap: (f, w) => w.say('reason.cap', { title: f.title, change: lessWords(f, w), drills: f.drills }),
  pace: ({ title, sets, reps, fromSets, fromReps }, w) =>
    w.say('reason.pace', { title, sets, reps, fromSets, fromReps }),
  weeklyGrowth: ({ title, sets, reps, fromSets, fromReps, growth, meanSeconds, doneSeconds }, w) => {
    const base = { title, sets, reps, growth, mean: s(meanSeconds), done: s(doneSeconds) };
    return sets === fromSets && reps === fromReps
      ? w.say('reason.weeklyGrowthLeast', base)
      : w.say('reason.weeklyGrowth', { ...base, fromSets, fromReps });
  },
  weightWaits: ({ title, addedWeight, wished, most }, w) => {
    const base = { title, weight: lb(w, addedWeight), wished: lb(w, wished) };
    return most === undefined
      ? w.say('reason.weightWaits', { ...base, step: lb(w, WEIGHT_STEP_LBF) })
      : w.say('reason.weightMost', { ...base, most: lb(w, most), limit: lb(w, MOST_ADDED_LBF) });
  },
  age: (f, w) => w.say(f.ageYears < 12 ? 'reason.ageChild' : 'reason.ageYouth'),
  ageWeight: (f, w) => w.say('reason.ageWeight', { title: f.title, weight: lb(w, f.fromLbf) }),
  ageDose: (f, w) =>
    w.say(f.ageYears < 12 ? 'reason.ageDoseChild' : 'reason.ageDoseYouth', {
      title: f.title,
      change: lessWords(f, w),
    }),
  minutes: (f, w) =>
    w.say(f.isOver ? 'reason.minutesOver' : 'reason.minutes', {
      ...{ minutes: f.minutes, share: f.sharePercent / 100, counts: countsWords(f.counts, w) },
    }),
  halfHour: (f, w) =>
    w.say('reason.halfHour', { minutes: f.minutes, share: f.sharePercent / 100, counts: countsWords(f.counts, w) }),
  shorter: ({ title, sets, reps, hold, fromSets, fromReps, fromHold }, w) => {
    if (sets === 0) return w.say('reason.shorterOut', { title });
    if (hold < fromHold) return w.say('reason.shorterHold', { title, hold: s(hold) });
    return w.say('reason.shorter', { title, sets, reps, fromSets, fromReps });
  },
  seen: (f, w) =>
    w.say('reason.seen', {
      ...{ title: f.title, on: f.on, reps: f.reps },
      ...{ clock: s(f.clockSeconds), seen: s(f.seenSeconds) },
    }),
  small: ({ title }, w) => w.say('reason.small', { title }),
  holdsPlace: ({ title }, w) => w.say('reason.holdsPlace', { title }),
  restLess: ({ title, sets, reps, hold }, w) => w.say('reason.restLess', { title, sets, reps, hold: s(hold) }),
  clicker: ({ title }, w) => w.say('reason.clicker', { title }),
  impossibleDate: ({ records, dates }, w) => w.say('reason.impossibleDate', { records, dates }),
  future: ({ records }, w) => w.say('reason.future', { records }),
  test: ({ title }, w) => w.say('reason.test', { title }),
  pain: ({ on }, w) => w.say('reason.pain', { on }),
  painAgain: ({ on, drills, until }, w) => w.say('reason.painAgain', { on, drills, until }),
  painMimed: ({ on, answers, needed }, w) => w.say('reason.painMimed', { on, days: needed - answers }),
  painTool: ({ on, answers, needed, stage }, w) =>
    w.say('reason.painTool', { on, days: needed - answers, stage: stageOf(stage) }),
  daysInRow: ({ days, most }, w) => w.say('reason.daysInRow', { days, most }),
  youthDay: ({ on }, w) => w.say('reason.youthDay', { on }),
  competition: (f, w) => w.say(f.daysLeft === 0 ? 'reason.competitionToday' : 'reason.competitionTomorrow'),
  seasonRest: ({ nextDay }, w) =>
    nextDay === undefined ? w.say('reason.seasonRest') : w.say('reason.seasonRestUntil', { on: nextDay }),
  noClicker: ({ title }, w) => w.say('reason.noClicker', { title }),
  testPain: ({ title, on }, w) => w.say('reason.testPain', { title, on }),
  testCompetition: ({ title, competition }, w) => w.say('reason.testCompetition', { title, on: competition }),
  testAge: ({ title }, w) => w.say('reason.testAge', { title }),
  testMinutes: ({ title, minutes, needed }, w) => w.say('reason.testMinutes', { title, minutes, needed }),
};

function work({ workHold, workReps, workSets, workAddedWeight }: LadderFacts): Dose {
  return { hold: workHold, reps: workReps, sets: workSets, addedWeight: workAddedWeight };
}

function doseWords({ hold, reps, sets, addedWeight }: Dose, words: Sayer): string {
  const base = { sets, reps, hold: s(hold) };
  return addedWeight > 0
    ? words.say('reason.doseAdded', { ...base, weight: lb(words, addedWeight) })
    : words.say('reason.dose', base);
}

function lessWords(f: Less, words: Sayer): string {
  return [
    f.fromHold !== f.hold && words.say('reason.lessHold', { from: s(f.fromHold), to: s(f.hold) }),
    f.fromReps !== f.reps && words.say('reason.lessReps', { from: f.fromReps, to: f.reps }),
    f.fromSets !== f.sets && words.say('reason.lessSets', { from: f.fromSets, to: f.sets }),
    f.fromAddedWeight !== f.addedWeight &&
      words.say('reason.lessWeight', { from: lb(words, f.fromAddedWeight), to: lb(words, f.addedWeight) }),
  ]
    .filter((part) => part !== false)
    .join(', ');
}

function moved(f: MoveFacts, words: Sayer) {
  const { fromHold, fromReps, fromSets, fromAddedWeight } = f;
  const change = lessWords({ fromHold, fromReps, fromSets, fromAddedWeight, ...work(f) }, words);
  return {
    ...{ title: f.title, on: f.on, next: sayNext(f, words) },
    change: change === '' ? doseWords(work(f), words) : change,
  };
}

/**
 * What leads on from a place on a ladder.
 * @param f where a block is, as a ladder's reason says it
 * @param words the language
 * @returns one plain sentence
 */
export function sayNext(f: LadderFacts, words: Sayer): string {
  if (f.weightWaits) return words.say('reason.nextWaits');
  if (f.weightMost !== undefined) return words.say('reason.nextMost', { most: lb(words, f.weightMost) });
  if (f.needDays === undefined) {
    return f.isCut ? words.say('reason.nextCut', { most: mostClimbs }) : words.say('reason.nextTop');
  }
  const { hold, reps, sets, addedWeight } = work(f);
  const from = { fromHold: hold, fromReps: reps, fromSets: sets, fromAddedWeight: addedWeight };
  const to = {
    ...{ hold: f.nextHold ?? hold, reps: f.nextReps ?? reps, sets: f.nextSets ?? sets },
    addedWeight: f.nextAddedWeight ?? addedWeight,
  };
  return words.say('reason.next', { days: f.needDays, change: lessWords({ ...from, ...to }, words) });
}

function cutWords({ reps, from }: { reps: number; from: number }, words: Sayer): string {
  return reps < from ? words.say('reason.cut', { reps, from }) : words.say('reason.cutLeast', { reps });
}

function countsWords(counts: 'climb' | 'place', words: Sayer): string {
  return words.say(counts === 'climb' ? 'reason.countsFull' : 'reason.countsPlace');
}

function stageOf(stage: string): 'mimed' | 'band' | 'light' | 'other' {
  if (stage === 'mimed' || stage === 'band') return stage;
  return stage === 'light-bow' ? 'light' : 'other';
}

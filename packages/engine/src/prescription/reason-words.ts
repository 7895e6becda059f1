import type { AskedNumber } from './asked-number.ts';
import { mostClimbs } from './ladder-path.ts';
import { counted, dateWords, lessWords, numbersWords } from './number-words.ts';
import type { LadderFacts, MoveFacts, Reason, Rule, RuleFacts } from './reason.ts';

/**
 * A reason, with its sentence made from its facts.
 * @param rule which rule acted
 * @param facts what it read and changed
 * @param where the block it acted on, and which numbers; nothing where it acted on all
 * @returns the reason
 */
export function reasonOf<R extends Rule>(
  rule: R,
  facts: RuleFacts[R],
  where: { block?: number; acts?: readonly AskedNumber[] } = {},
): Reason {
  const change = (sentences[rule] as (facts: RuleFacts[R]) => string)(facts);
  const { block, acts } = where;
  const reason: { rule: R; block?: number; acts?: readonly AskedNumber[]; facts?: RuleFacts[R]; change?: string } = {
    rule,
  };
  if (block !== undefined) reason.block = block;
  if (acts !== undefined) reason.acts = acts;
  reason.facts = facts;
  reason.change = change;
  return reason as Reason;
}

const HABIT =
  'This is a habit, not a proven protection: Buist and others found no fewer injuries with such a limit in 2008.';
const stages: Record<string, string> = {
  mimed: 'without anything in the hand',
  band: 'with a stretch band',
  'light-bow': 'with a light bow',
  bow: 'with your own bow',
};

// One sentence for every rule, and no words from anywhere but the facts: another language does the same.
const sentences: { [R in Rule]: (facts: RuleFacts[R]) => string } = {
  fixed: (f) => `${f.title}: ${workWords(f)}, as the program says. It has no ladder.`,
  start: (f) => `${f.title}: ${workWords(f)}, where the program begins. ${nextWords(f)}`,
  steady: (f) => `${f.title}: ${workWords(f)}, where it stands since ${dateWords(f.on)}. ${nextWords(f)}`,
  climb: (f) => moved(f, `${counted(f.because, 'clean day')} in a row, the last on ${dateWords(f.on)}`),
  recover: (f) =>
    moved(f, `${counted(f.because, 'clean day')}, the last on ${dateWords(f.on)}; it goes back up in small steps`),
  stepDown: (f) => moved(f, `too many holds let down early or skipped on ${dateWords(f.on)}`),
  strain: (f) => moved(f, `effort of nine or ten again and again, the last time on ${dateWords(f.on)}`),
  layoff: (f) => moved(f, `${counted(f.because, 'day')} without a bow or a band`),
  sore: (f) => moved(f, `pain on ${dateWords(f.on)}`),
  firstDose: (f) => {
    const known = {
      test: `a test gave ${f.longestHold} s`,
      failures: `your longest hold is about ${f.longestHold} s`,
      answer: `you said that you can hold ${f.longestHold} s`,
      held: `you have held ${f.knownHold} s in other drills`,
      cautious: `you have held ${f.knownHold} s so far, and nobody knows how much more it can be: a test, or your own word for your longest hold, would say`,
    }[f.from];
    return `${f.title}: ${workWords(f)} to begin with, because ${known}. ${nextWords(f)}`;
  },
  top: (f) =>
    `${f.title}: this is the top of its ladder. ${f.next === undefined ? 'If it stays easy, take a test, and ask your coach for what comes next.' : `If it stays easy, go on with ${f.next}.`}`,
  stuck: (f) =>
    `${f.title}: a hold of ${f.hold} s has failed ${counted(f.times, 'time')}. Take a test, or another program with shorter holds; a coach may see what it is.`,
  away: (f) =>
    `${f.title}: ${lessWords(f)}, after ${counted(f.days, 'day')} without a bow or a band.${f.isOlder ? ' Over 45 it is lost faster.' : ''} The shares are ours.`,
  yearAway: (f) =>
    `After ${counted(f.days, 'day')} away begin with lighter limbs or a stretch band, and without added weight.`,
  wayBack: (f) =>
    `${f.title}: ${lessWords(f)}, on the way back after pain on ${dateWords(f.on)}: ${stages[f.stage]}, until ${counted(f.needed - f.answers, 'more day')} without pain.`,
  elsewhere: (f) =>
    `${f.title}: ${lessWords(f)}, because on ${dateWords(f.on)} most reps of another drill held ${f.heldSeconds} s of ${f.askedSeconds} s.`,
  deload: (f) => cut(f, `this is training week ${f.week}, and every ${f.everyWeeks} weeks is a lighter one`),
  lighterWeek: (f) => cut(f, `week ${f.week} of ${f.ofWeeks} in "${f.seasonBlock}" is a lighter one`),
  taper: (f) =>
    cut(
      f,
      f.daysLeft === 0
        ? 'the competition is today'
        : `the competition is on ${dateWords(f.competition)}: fewer reps, the hold stays`,
    ),
  effort: (f) => cut(f, `last time cost ${f.effort} of 10`),
  heavy: (f) => cut(f, 'you said today is heavy'),
  arrows: (f) =>
    cut(
      f,
      `you shot ${f.arrows} arrows ${f.isToday ? 'today' : 'yesterday'}; a rule of thumb: after ${f.many} arrows, a little less`,
    ),
  afterPain: (f) =>
    `${f.title}: ${lessWords(f)}, after pain on ${dateWords(f.on)}: hold and time grow by a fifth at most, or by a second and a rep, over what you have done since. The step is ours.`,
  cap: (f) =>
    `${f.title}: ${lessWords(f)}. While something eases, nothing rises above the most of the last ${counted(f.drills, 'drill')}.`,
  pace: (f) =>
    `${f.title}: ${f.sets} × ${f.reps} instead of ${f.fromSets} × ${f.fromReps}, so that the time at full draw grows by a fifth at most from one drill to the next; up to where the program begins it may be three times as much. This limit is ours.`,
  weeklyGrowth: (f) => {
    const less =
      f.sets === f.fromSets && f.reps === f.fromReps
        ? `${f.sets} × ${f.reps}, the least there is`
        : `${f.sets} × ${f.reps} instead of ${f.fromSets} × ${f.fromReps}`;
    return `${f.title}: ${less}, so that these seven days hold at most ${f.growth} times the ${f.meanSeconds} s of the last training weeks; ${f.doneSeconds} s are done. ${HABIT}`;
  },
  weightWaits: (f) =>
    f.most === undefined
      ? `${f.title}: ${f.addedWeight} lb added, not ${f.wished} lb yet. Weight waits for the first two weeks to pass, and rises by 2 lb every two weeks at most, over all programs.`
      : `${f.title}: ${f.addedWeight} lb added, not ${f.wished} lb: ${f.most} lb is the most, 5 lb or a fifth of the bow, unless a coach's file says more.`,
  age: (f) =>
    f.ageYears < 12
      ? 'Under 12: take a stretch band, not a bow.'
      : 'From 12 to 15: take a light bow, not your own full weight.',
  ageWeight: (f) => `${f.title}: no added weight under 16, instead of ${f.fromLbf} lb.`,
  ageDose: (f) =>
    f.ageYears < 12
      ? `${f.title}: ${lessWords(f)}. Under 12 no more than the club starter: 5 holds of 5 s. The number is ours.`
      : `${f.title}: ${lessWords(f)}. From 12 to 15 at most half of an adult's first drill. The number is ours.`,
  minutes: (f) =>
    `In ${counted(f.minutes, 'minute')} there is room for ${f.sharePercent} % of today's time at full draw.${f.isOver ? ' Even one rep takes longer than that.' : ''} ${countsWords(f.counts)}`,
  halfHour: (f) =>
    `Unless you give it more, a drill grows to ${counted(f.minutes, 'minute')}: that leaves ${f.sharePercent} % of the time at full draw that its ladder asks for. ${countsWords(f.counts)}`,
  shorter: (f) => {
    if (f.sets === 0) return `${f.title}: left out, to fit the minutes.`;
    if (f.hold < f.fromHold) return `${f.title}: cut to one hold of ${f.hold} s, to fit the minutes.`;
    return `${f.title}: ${f.sets} × ${f.reps} instead of ${f.fromSets} × ${f.fromReps}, to fit the minutes.`;
  },
  seen: (f) =>
    `${f.title}: on ${dateWords(f.on)} the camera saw ${f.seenSeconds} s at full draw in ${counted(f.reps, 'rep')} that the clock has as ${f.clockSeconds} s. The numbers go by what was seen.`,
  small: (f) => `${f.title}: the last drill was too short to count. It holds the place and does not climb.`,
  holdsPlace: (f) => `${f.title}: today holds the place and does not climb, however clean it is.`,
  restLess: (f) => `${f.title}: ${f.sets} × ${f.reps}, hold ${f.hold} s, is the most if you drill all the same.`,
  clicker: (f) => `${f.title} is left out: it needs a clicker.`,
  impossibleDate: (f) =>
    `${counted(f.records, 'record')} ${were(f.records)} left out: there is no such day as ${f.dates}. Correct the date in the journal.`,
  future: (f) =>
    `${counted(f.records, 'record')} dated after today ${were(f.records)} left out. Check the device's date.`,
  test: (f) => `${f.title} is a test: it is done as it is written, and never eased or cut. Stop when the form goes.`,
  pain: (f) =>
    `Pain on ${dateWords(f.on)}: no drill today. Pain is pain in a joint or a sharp pain, not tired muscles. If it stays, see a doctor or a physiotherapist.`,
  painAgain: (f) =>
    `${counted(f.drills, 'painful drill')} within two weeks, the last on ${dateWords(f.on)}: no drill before ${dateWords(f.until)}. See a doctor or a physiotherapist first.`,
  painMimed: (f) =>
    `There was pain on ${dateWords(f.on)}. Today is a rest day: go through the shot with nothing in your hands, and answer whether it hurts. ${counted(f.needed - f.answers, 'more day')} without pain, and it goes on with a stretch band.`,
  painTool: (f) =>
    `The way back after pain on ${dateWords(f.on)} goes on ${stages[f.stage]}, and there is none in your kit: rest, and answer whether it hurts. ${counted(f.needed - f.answers, 'more day')} without pain to the next stage.`,
  daysInRow: (f) =>
    `${counted(f.days, 'day')} in a row with a bow in the hand: rest today. Never more than ${f.most} in a row (bow-international.com, "Ask the experts").`,
  youthDay: (f) =>
    `There was a drill on ${dateWords(f.on)}. From 8 to 15, two or three days a week and never two running: rest today (2014 international consensus, Lloyd and others).`,
  competition: (f) =>
    f.daysLeft === 0 ? 'The competition is today: no drill.' : 'The competition is tomorrow: rest today.',
  seasonRest: (f) =>
    `The season has no drill today${f.nextDay === undefined ? '' : `; the next one is on ${dateWords(f.nextDay)}`}. All the same at most half a day's.`,
  noClicker: (f) => `${f.title} needs a clicker, and your bow has none. Choose another program.`,
  testPain: (f) => `${f.title} waits: no test on the way back after pain on ${dateWords(f.on)}.`,
  testCompetition: (f) =>
    `${f.title} waits: no test in the two days before a competition, which is on ${dateWords(f.competition)}.`,
  testAge: (f) => `${f.title} goes on until the form fails: under 16 only with a coach, not from here.`,
  testMinutes: (f) =>
    `${f.title} takes ${counted(f.needed, 'minute')} and is never cut: ${counted(f.minutes, 'minute')} are too few.`,
};

function workWords(f: LadderFacts): string {
  return numbersWords({ hold: f.workHold, reps: f.workReps, sets: f.workSets, addedWeight: f.workAddedWeight });
}

function moved(f: MoveFacts, because: string): string {
  const { workHold: hold, workReps: reps, workSets: sets, workAddedWeight: addedWeight } = f;
  const { fromHold, fromReps, fromSets, fromAddedWeight } = f;
  const less = lessWords({ fromHold, hold, fromReps, reps, fromSets, sets, fromAddedWeight, addedWeight });
  return `${f.title}: ${less || workWords(f)}, because of ${because}. ${nextWords(f)}`;
}

function nextWords(f: LadderFacts): string {
  if (f.weightWaits) return 'More weight comes next, but not before the two weeks are over.';
  if (f.weightMost !== undefined) return `More weight would come next, but ${f.weightMost} lb added is the most.`;
  if (f.needDays === undefined) {
    return f.isCut
      ? `The ladder goes on, but only its first ${mostClimbs} steps are counted.`
      : 'This is the top of its ladder.';
  }
  const days = f.needDays === 1 ? 'One more clean day leads' : `${f.needDays} more clean days lead`;
  const more = lessWords({
    fromHold: f.workHold,
    hold: f.nextHold!,
    fromReps: f.workReps,
    reps: f.nextReps!,
    fromSets: f.workSets,
    sets: f.nextSets!,
    fromAddedWeight: f.workAddedWeight,
    addedWeight: f.nextAddedWeight!,
  });
  return `${days} on: ${more}.`;
}

function cut(f: { title: string; reps: number; from: number; sets: number; hold: number }, because: string): string {
  const left =
    f.reps < f.from
      ? `${counted(f.reps, 'rep')} instead of ${f.from}`
      : `${counted(f.reps, 'rep')}, the least there is`;
  return `${f.title}: ${left}, because ${because}.`;
}

function countsWords(counts: 'climb' | 'place'): string {
  return counts === 'climb'
    ? 'Clean, it counts in full.'
    : 'Too short to count: it holds the place and does not climb.';
}

function were(count: number): string {
  return count === 1 ? 'was' : 'were';
}

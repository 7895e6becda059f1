import type { DatedSessions, Due, Lighter, Planner, RestReason, SeasonNotice } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/** What a season's sentences depend on besides their facts. */
interface Whose {
  /** Whether the weekdays are the archer's own; without a season of one's own they are the sensible ones. */
  isOwn: boolean;
}

/**
 * Why something is due today: who planned it, what test it is, and why less is done.
 * @param due one thing that a day holds, as `dueToday` gives it
 * @param whose whether the weekdays are the archer's own
 * @param words the language
 * @returns plain sentences
 * @example dueWords(due, { isOwn: true }) // ['Week 4 of 6 in “Base”.', 'A lighter week: 60 % of the reps.']
 */
export function dueWords(due: Due, whose: Whose, words: Words = presentWords()): string[] {
  if (due.kind === 'rest') return [restWords(due.because, whose, words)];
  if (due.kind === 'test') {
    const { day, lateDays } = due.because;
    const { title } = due.program;
    return [lateDays === 0 ? words.say('due.test', { title }) : words.say('due.testLate', { title, day })];
  }
  return [plannerWords(due.because, whose, words), ...(due.lighter ? [lighterWords(due.lighter, words)] : [])];
}

/**
 * Why less is done on a day.
 * @param lighter as a season gives it
 * @param words the language
 * @returns a plain sentence
 */
export function lighterWords(lighter: Lighter, words: Words = presentWords()): string {
  const share = lighter.keepRatio;
  if (lighter.rule === 'lighterWeek') return words.say('due.lighterWeek', { share });
  return words.say('due.taper', { share, title: lighter.competition, day: lighter.day });
}

function plannerWords(planner: Planner, { isOwn }: Whose, words: Words): string {
  if (planner.rule === 'coach') return words.say('due.coach', { by: planner.by });
  if (!isOwn) return words.say('due.sensible');
  return words.say('due.weekday', { block: planner.block, week: planner.week, weeks: planner.ofWeeks });
}

/**
 * Why a day is better without a drill.
 * @param reason as `dueToday` gives it
 * @param whose whether the weekdays are the archer's own
 * @param words the language
 * @returns a plain sentence or two
 */
export function restWords(reason: RestReason, whose: Whose, words: Words = presentWords()): string {
  switch (reason.rule) {
    case 'pain':
      return words.say('due.restPain', { day: reason.day });
    case 'competition':
      return words.say('due.restCompetition', { title: reason.title });
    case 'dayBeforeCompetition':
      return words.say('due.restBefore', { title: reason.title });
    case 'restDay':
      return reason.why
        ? words.say('due.restDayWhy', { to: reason.to, why: reason.why })
        : words.say('due.restDay', { to: reason.to });
    case 'daysInRow':
      return words.say('due.restRow', { days: reason.days });
    case 'youngDayBetween':
      return words.say('due.restYoung', { day: reason.lastDrawDay });
    case 'programMissing':
      return words.say('due.restMissing', { titles: words.list(reason.titles) });
    case 'outsideSeason':
      return reason.nextDay ? words.say('due.restOutside', { day: reason.nextDay }) : words.say('due.restOver');
    case 'noSession':
      return noSessionWords(reason, whose, words);
  }
}

function noSessionWords(
  { planner, nextDay }: Extract<RestReason, { rule: 'noSession' }>,
  { isOwn }: Whose,
  words: Words,
): string {
  if (planner.rule === 'coach') {
    const { by } = planner;
    return nextDay ? words.say('due.restCoach', { by, day: nextDay }) : words.say('due.restCoachLast', { by });
  }
  if (nextDay === undefined) return words.say('due.restNothing');
  return words.say(isOwn ? 'due.restNoSession' : 'due.restSensible', { day: nextDay });
}

/**
 * The parts of a season that will not happen as written.
 * @param notice as `seasonNotices` gives it
 * @param words the language
 * @returns one or two plain sentences
 */
export function noticeWords(notice: SeasonNotice, words: Words = presentWords()): string {
  switch (notice.rule) {
    case 'blocksOverlap': {
      const { title, wins, from, to } = notice;
      return words.say('notice.blocksOverlap', { title, wins, from, to });
    }
    case 'answersOverlap': {
      const { by, wins, from, to } = notice;
      return words.say('notice.answersOverlap', { by, wins: wins.slice(0, 10), from, to });
    }
    case 'testNearCompetition':
      return words.say('notice.testNearCompetition', { title: notice.title, day: notice.day });
    case 'testOnRestDay':
      return words.say('notice.testOnRestDay', { title: notice.title, day: notice.day });
    case 'notATest':
      return words.say('notice.notATest', { title: notice.title, day: notice.day });
    case 'everyDay':
      return words.say('notice.everyDay', { title: notice.title });
    case 'sessionOnRestDay':
      return words.say('notice.sessionOnRestDay', { by: notice.by, day: notice.day });
    case 'programMissing':
      return words.say('notice.programMissing', { title: notice.title });
  }
}

/**
 * A day that a coach wrote, and its programs.
 * @param session one of the days of an answer
 * @param words the language
 * @returns one line: 'Mon 30 Nov: Holding and Flexibility, 20 minutes each'
 */
export function sessionWords(session: DatedSessions['sessions'][number], words: Words = presentWords()): string {
  const { day, programs, minutes } = session;
  const titles = words.list(programs.map(({ title }) => title));
  if (minutes === undefined) return words.say('coach.dayLine', { day, titles });
  return words.say('coach.dayLineMinutes', { day, titles, minutes });
}

import type { RuleBreak } from '../program/program-rules.ts';
import { dayNumber } from '../units/calendar-day.ts';
import type { Season } from './season.ts';

/** The longest stretch that one answer of a coach speaks of, days: two months. */
const mostDatedDays = 62;

/**
 * The rules of a season that no single key shows: a stretch ends after it begins, and a day is named once.
 * @param season what the schema accepts
 * @returns every rule it breaks, with the path of the value to change
 */
export function checkSeason({ blocks, competitions, restDays, dated }: Season): RuleBreak[] {
  const breaks: RuleBreak[] = [];
  const notBefore = (first: string, last: string, path: RuleBreak['path']) => {
    if (last < first) breaks.push({ path, fault: { rule: 'endsBefore', first, found: last } });
  };
  blocks.forEach(({ weeks, lighterWeeks }, index) => {
    lighterWeeks.forEach((week, at) => {
      const path = ['blocks', index, 'lighterWeeks', at];
      if (week > weeks) breaks.push({ path, fault: { rule: 'weekBeyond', weeks, found: week } });
      if (lighterWeeks.indexOf(week) < at) breaks.push({ path, fault: { rule: 'weekTwice', week } });
    });
  });
  competitions.forEach(({ day, lastDay = day }, index) => {
    notBefore(day, lastDay, ['competitions', index, 'lastDay']);
  });
  restDays.forEach(({ from, to }, index) => {
    notBefore(from, to, ['restDays', index, 'to']);
  });
  dated.forEach(({ from, to, sessions }, index) => {
    const path = ['dated', index];
    notBefore(from, to, [...path, 'to']);
    const days = dayNumber(to) - dayNumber(from) + 1;
    if (days > mostDatedDays)
      breaks.push({ path: [...path, 'to'], fault: { rule: 'tooManyDays', most: mostDatedDays, found: days } });
    const seen = new Set<string>();
    sessions.forEach(({ day }, at) => {
      const where = [...path, 'sessions', at, 'day'];
      if (day < from || day > to) breaks.push({ path: where, fault: { rule: 'dayOutside', from, to, found: day } });
      if (seen.has(day)) breaks.push({ path: where, fault: { rule: 'dayTwice', day } });
      seen.add(day);
    });
  });
  return breaks;
}

import { compareInstants } from '../journal/edit-order.ts';
import { pointerOf } from '../program/problem.ts';
import type { Program } from '../program/program.ts';
import { dayNumber, dayOfNumber } from '../units/calendar-day.ts';
import { isNearCompetition, MOST_DAYS_IN_ROW } from './due-today.ts';
import { findProgram } from './find-program.ts';
import { type ProgramRef, type Season, weekdays } from './season.ts';

/** Something in a valid season that will not happen as written. Nothing of it is lost, and it never leads to more work. */
export type SeasonNotice = {
  /** RFC 6901 pointer into the file, to what will not happen. */
  pointer: string;
  /** What is wrong and what is done about it, in plain English. */
  message: string;
} & (
  | { rule: 'blocksOverlap'; from: string; to: string; title: string; wins: string }
  | { rule: 'answersOverlap'; from: string; to: string; by: string; wins: string }
  | { rule: 'testNearCompetition'; day: string; title: string }
  | { rule: 'testOnRestDay'; day: string; title: string }
  | { rule: 'notATest'; day: string; title: string }
  | { rule: 'everyDay'; title: string }
  | { rule: 'sessionOnRestDay'; day: string; by: string }
  | { rule: 'programMissing'; title: string }
);

/**
 * The parts of a season that will not happen as written.
 * @param season a valid season
 * @param programs that the archer has; without them no program is looked for
 * @returns notices in the order of the file's lists; empty where all of it will happen
 * @example seasonNotices(sensibleSeason({ today: '2026-11-23' })) // []
 */
export function seasonNotices(season: Season, programs?: readonly Program[]): SeasonNotice[] {
  return [
    ...overlappingBlocks(season),
    ...fullWeeks(season),
    ...testNotices(season, programs),
    ...overlappingAnswers(season),
    ...sessionNotices(season),
    ...(programs ? missingPrograms(season, programs) : []),
  ];
}

function overlappingBlocks({ blocks }: Season): SeasonNotice[] {
  const ends = ({ from, weeks }: Season['blocks'][number]) => dayOfNumber(dayNumber(from) + 7 * weeks - 1);
  return pairsOf(blocks).flatMap(([a, b, at, other]): SeasonNotice[] => {
    const [from, to] = shared([a.from, ends(a)], [b.from, ends(b)]);
    if (to < from) return [];
    const [loser, winner, index] = a.from > b.from ? [b, a, other] : [a, b, at];
    const message = `"${loser.title}" and "${winner.title}" overlap from ${from} to ${to}. There the one that begins later counts, "${winner.title}"; they are not added up.`;
    const facts = { from, to, title: loser.title, wins: winner.title };
    return [{ pointer: pointerOf(['blocks', index]), message, rule: 'blocksOverlap', ...facts }];
  });
}

function overlappingAnswers({ dated }: Season): SeasonNotice[] {
  return pairsOf(dated).flatMap(([a, b, at, other]): SeasonNotice[] => {
    const [from, to] = shared([a.from, a.to], [b.from, b.to]);
    if (to < from) return [];
    const [loser, winner, index] = compareInstants(a.madeAt, b.madeAt) > 0 ? [b, a, other] : [a, b, at];
    const message = `What ${loser.by} and ${winner.by} wrote overlaps from ${from} to ${to}. There the later written one counts, of ${winner.madeAt}; they are not added up.`;
    const facts = { from, to, by: loser.by, wins: winner.madeAt };
    return [{ pointer: pointerOf(['dated', index]), message, rule: 'answersOverlap', ...facts }];
  });
}

function fullWeeks({ blocks }: Season): SeasonNotice[] {
  return blocks.flatMap(({ title, days }, index): SeasonNotice[] => {
    if (weekdays.some((name) => days[name] === undefined)) return [];
    const message = `"${title}" has a session on all seven days. After ${MOST_DAYS_IN_ROW} days in a row there is a rest day all the same.`;
    return [{ pointer: pointerOf(['blocks', index, 'days']), message, rule: 'everyDay', title }];
  });
}

function testNotices(season: Season, programs: readonly Program[] | undefined): SeasonNotice[] {
  return season.tests.flatMap(({ day, program }, index): SeasonNotice[] => {
    const pointer = pointerOf(['tests', index, 'day']);
    const { title } = program;
    const found = programs && findProgram(program, programs);
    if (found && found.kind !== 'test') {
      const message = `"${title}" is not a test: it measures nothing. On ${day} it is due as a drill.`;
      return [{ pointer: pointerOf(['tests', index, 'program']), message, rule: 'notATest', day, title }];
    }
    if (isNearCompetition(season, dayNumber(day))) {
      const message = `The test "${title}" on ${day} is on a competition or in the two days before. It waits until after it, for a week at most.`;
      return [{ pointer, message, rule: 'testNearCompetition', day, title }];
    }
    if (!isInRest(season, day)) return [];
    const message = `The test "${title}" on ${day} is on a rest day. It waits until after it, for a week at most.`;
    return [{ pointer, message, rule: 'testOnRestDay', day, title }];
  });
}

function sessionNotices(season: Season): SeasonNotice[] {
  return season.dated.flatMap(({ by, sessions }, index) =>
    sessions.flatMap(({ day }, at): SeasonNotice[] => {
      const number = dayNumber(day);
      const isCompetition = season.competitions.some(({ day: first, lastDay = first }) => {
        return dayNumber(first) - 1 <= number && number <= dayNumber(lastDay);
      });
      if (!isCompetition && !isInRest(season, day)) return [];
      const message = `The session of ${by} on ${day} is on a rest day, on a competition or on the day before it. That day stays a rest day.`;
      return [{ pointer: pointerOf(['dated', index, 'sessions', at]), message, rule: 'sessionOnRestDay', day, by }];
    }),
  );
}

function isInRest({ restDays }: Season, day: string): boolean {
  return restDays.some(({ from, to }) => from <= day && day <= to);
}

function missingPrograms(season: Season, programs: readonly Program[]): SeasonNotice[] {
  const named = new Map<string, PropertyKey[]>();
  const name = (ref: ProgramRef, path: PropertyKey[]) => {
    if (!findProgram(ref, programs) && !named.has(ref.title)) named.set(ref.title, path);
  };
  const all = (refs: readonly ProgramRef[], path: PropertyKey[]) => {
    for (const [at, ref] of refs.entries()) name(ref, [...path, at]);
  };
  season.blocks.forEach(({ days }, index) => {
    for (const weekday of weekdays) all(days[weekday] ?? [], ['blocks', index, 'days', weekday]);
  });
  season.tests.forEach(({ program }, index) => {
    name(program, ['tests', index, 'program']);
  });
  season.dated.forEach(({ sessions }, index) => {
    for (const [at, session] of sessions.entries()) all(session.programs, ['dated', index, 'sessions', at, 'programs']);
  });
  return [...named].map(([title, path]) => {
    const message = `There is no program "${title}" here. Its days are without it until it is opened; nothing is put in its place.`;
    return { pointer: pointerOf(path), message, rule: 'programMissing', title };
  });
}

function pairsOf<T>(list: readonly T[]): [T, T, number, number][] {
  return list.flatMap((a, at) =>
    list.slice(at + 1).map((b, after): [T, T, number, number] => [a, b, at, at + 1 + after]),
  );
}

/** Of two stretches, the days that both have; the first is after the last where there are none. */
function shared(a: readonly [string, string], b: readonly [string, string]): [string, string] {
  return [[a[0], b[0]].sort()[1]!, [a[1], b[1]].sort()[0]!];
}

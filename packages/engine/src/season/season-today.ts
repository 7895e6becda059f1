import type { Archer } from '../archer/archer.ts';
import { knowArcher } from '../archer/know-archer.ts';
import { logDays } from '../archer/logged-days.ts';
import type { Past } from '../archer/past.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry, SeasonCopy, WeekPage } from '../journal/journal.ts';
import type { Problem } from '../program/problem.ts';
import type { Program } from '../program/program.ts';
import { dayOfNumber, isoWeek } from '../units/calendar-day.ts';
import { type Due, dueToday } from './due-today.ts';
import { findProgram } from './find-program.ts';
import { knowForSeason } from './know-for-season.ts';
import { parseSeason } from './parse-season.ts';
import type { Season } from './season.ts';
import { sensibleSeason } from './sensible-season.ts';

/** What is asked: what is due today, by the archer's own season or the one that is there without set-up. */
export interface SeasonTodayInput {
  /** The archer's own season as the journal keeps it. */
  stored?: SeasonCopy;
  /** Any order. */
  records: readonly DrillRecord[];
  days?: readonly DayEntry[];
  /** In place of the records and entries before a day, what they fold into. */
  past?: Past;
  /** Week pages: the days that are planned on this week's page. */
  weeks?: readonly WeekPage[];
  /** ISO 8601 day. */
  today: string;
  archer?: Archer;
  /** The archer's programs. */
  programs: readonly Program[];
  /** The program that the archer is on, where one was chosen or drilled. */
  chosen?: Program;
  /** What the archer says of their weeks; without it, what the journal shows. */
  usualMinutes?: number;
  usualDays?: number;
  /** A competition that is kept beside the season, ISO 8601 day; older kits have one. */
  competitionDay?: string;
}

/** A season in force, and what it has for today. */
export interface SeasonToday {
  /** The day that `due` is for, ISO 8601. */
  date: string;
  /** The archer's own, else the sensible one. Where the archer's own names no weekdays, it has the sensible one's. */
  season: Season;
  /** What the archer or a coach wrote down; undefined while nobody did, or where it cannot be read. */
  own?: Season;
  /** Whether the weekdays are the archer's own. */
  isOwn: boolean;
  due: readonly Due[];
  /** Why the stored season cannot be read. It stays stored as it is. */
  problems?: readonly Problem[];
}

/**
 * What is due today: the archer's own season, or a sensible one where there is none.
 * @param input the stored season, the journal, the day, who the archer is
 * @returns the season in force, what is due, and what is wrong with a stored season that cannot be read
 * @throws RangeError when there is no such day or the archer cannot be
 * @example seasonToday({ records: [], programs: builtInPrograms, today: '2026-11-25' }).due[0]!.kind // 'program'
 */
export function seasonToday(input: SeasonTodayInput): SeasonToday {
  const { records, days, past, today, archer, programs, stored } = input;
  const read = stored && parseSeason(JSON.stringify(stored.document));
  const own = read?.ok ? read.season : undefined;
  const isOwn = own !== undefined && own.blocks.length > 0;
  const season = withCompetition(isOwn ? own : { ...sensibleFor(input), ...listsOf(own) }, input.competitionDay);
  const known = knowForSeason({ records, days, past, today, ...(archer ? { archer } : {}) });
  return {
    ...{ date: today, season, isOwn },
    ...(own ? { own } : {}),
    due: dueToday(season, known, today, (ref) => findProgram(ref, programs) !== undefined),
    ...(read && !read.ok ? { problems: read.problems } : {}),
  };
}

/** What somebody wrote down who wrote no weekdays. */
function listsOf(own: Season | undefined): Partial<Season> {
  if (!own) return {};
  const { tests, competitions, restDays, dated } = own;
  return { tests, competitions, restDays, dated };
}

function sensibleFor({
  records,
  days,
  past,
  weeks,
  today,
  archer,
  programs,
  chosen,
  ...said
}: SeasonTodayInput): Season {
  const { capacity, rhythm } = knowArcher({ records, days, past, today, archer, programs });
  const firstDay = past?.firstDay ?? logDays(records, days).days[0]?.day;
  const longest = archer?.longestHoldSeconds ?? capacity.find(({ tool }) => tool === 'bow')?.atLeastSeconds;
  const plannedDays = weeks?.find(({ week }) => week === isoWeek(today))?.plannedDays;
  const usualMinutes = said.usualMinutes ?? rhythm.minutes;
  return sensibleSeason({
    ...{ today, usualDays: said.usualDays ?? Math.round(rhythm.daysPerWeek), drilledDays: rhythm.evidence },
    ...(firstDay === undefined ? {} : { firstDay: dayOfNumber(firstDay) }),
    ...(archer?.ageYears === undefined ? {} : { ageYears: archer.ageYears }),
    ...(archer?.tools === undefined ? {} : { tools: archer.tools }),
    ...(usualMinutes === undefined ? {} : { usualMinutes }),
    ...(longest === undefined ? {} : { longestHoldSeconds: longest }),
    ...(plannedDays === undefined ? {} : { plannedDays }),
    ...(chosen === undefined ? {} : { program: chosen }),
  });
}

function withCompetition(season: Season, day: string | undefined): Season {
  if (day === undefined || season.competitions.some((one) => one.day === day)) return season;
  return { ...season, competitions: [...season.competitions, { title: 'Competition', day, importance: 'main' }] };
}

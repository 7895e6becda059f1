import {
  dayNumber,
  isoWeek,
  type Journal,
  mondayNumber,
  type PlanRow,
  type Program,
  planWeeks,
  type Season,
} from '@larkhold/engine';
import { archerOf } from '@larkhold/store';
import type { AppView } from '../../shell/app-context.ts';

/** Days a week where nothing else is known: what most sources of the built-in programs say lies around three. */
const USUAL_DAYS = 3;

/**
 * Days with a drill in each planned week: as chosen here, else as many as the last week's page plans, else three.
 * @param view the app as it is
 * @returns 1 to 7
 */
export function daysPerWeekOf({ kit, journal }: Pick<AppView, 'kit' | 'journal'>): number {
  return kit.plan?.daysPerWeek ?? (lastPlannedDays(journal.weeks) || USUAL_DAYS);
}

function lastPlannedDays(weeks: Journal['weeks']): number {
  const planned = weeks.filter(({ plannedDays }) => plannedDays !== undefined && plannedDays.length > 0);
  const last = planned.reduce<Journal['weeks'][number] | undefined>(
    (latest, page) => (latest === undefined || page.week > latest.week ? page : latest),
    undefined,
  );
  return new Set(last?.plannedDays).size;
}

/** A week of the plan. */
export interface PlannedWeek {
  /** ISO 8601 week, '2026-W48'. */
  week: string;
  kind: 'usual' | 'deload' | 'taper';
  heldMs: number;
  rows: readonly ShownRow[];
}

/** A row of the plan, or the rest days in its place. */
export type ShownRow = PlanRow & { rest?: { to: string; why?: string } };

/**
 * The coming weeks of a program, by what was done so far and who the archer is.
 * @param view the app as it is
 * @param program one of the rack's
 * @param weeks how many, 1 to 52
 * @returns weeks in order; a week without a planned day is left out
 */
export function planFor(
  view: Pick<AppView, 'kit' | 'journal' | 'today'> & { season?: Pick<AppView['season'], 'season'> },
  program: Program,
  weeks: number,
): PlannedWeek[] {
  const { kit, journal, today, season } = view;
  const main = season?.season.competitions.find(({ day, importance }) => day >= today && importance === 'main');
  const rows = planWeeks({
    ...{ program, records: journal.drills, today, weeks, daysPerWeek: daysPerWeekOf(view) },
    ...{ archer: archerOf(kit), competitionDay: main?.day ?? kit.plan?.competitionDay },
  });
  return byWeeks(rows);
}

/**
 * The coming weeks of the season in force, rest days of the file among them.
 * @param view the app as it is
 * @param weeks how many, 1 to 52
 * @returns weeks in order; a week without a planned day is left out
 */
export function seasonPlan(
  view: Pick<AppView, 'kit' | 'journal' | 'today' | 'programs'> & { season: Pick<AppView['season'], 'season'> },
  weeks: number,
): PlannedWeek[] {
  const { kit, journal, today, programs } = view;
  const { season } = view.season;
  const { drills: records, days } = journal;
  const rows = planWeeks({ season, programs, records, days, today, weeks, archer: archerOf(kit) });
  const end = mondayNumber(dayNumber(today)) + 7 * weeks;
  const rests = season.restDays
    .filter(({ from, to }) => to >= today && dayNumber(from) < end)
    .map((one) => restRow(one, today));
  return byWeeks([...rows, ...rests].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0)));
}

function restRow({ from, to, why }: Season['restDays'][number], today: string): ShownRow {
  const date = from < today ? today : from;
  const empty = { kind: 'usual', drills: [], heldMs: 0, durationMs: 0, reasons: [] } as const;
  return { week: isoWeek(date), date, ...empty, rest: { to, ...(why && { why }) } };
}

function byWeeks(rows: readonly ShownRow[]): PlannedWeek[] {
  const byWeek = new Map<string, ShownRow[]>();
  for (const row of rows) {
    const ofWeek = byWeek.get(row.week);
    if (ofWeek) ofWeek.push(row);
    else byWeek.set(row.week, [row]);
  }
  return [...byWeek].map(([week, ofWeek]) => ({
    ...{ week, rows: ofWeek, kind: kindOf(ofWeek) },
    heldMs: ofWeek.reduce((sum, { heldMs }) => sum + heldMs, 0),
  }));
}

function kindOf(rows: readonly PlanRow[]): PlannedWeek['kind'] {
  if (rows.some(({ kind }) => kind === 'taper')) return 'taper';
  return rows.some(({ kind }) => kind === 'deload') ? 'deload' : 'usual';
}

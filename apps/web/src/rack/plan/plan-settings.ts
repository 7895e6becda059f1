import { type Journal, type PlanRow, type Program, planWeeks } from '@larkhold/engine';
import { archerOf } from '@larkhold/store';
import type { AppView } from '../../shell/app-context.ts';

/** Days a week where nothing else is known: what most sources of the built-in programs say lies around three. */
const USUAL_DAYS = 3;

/**
 * Days with a drill in each planned week: as chosen here, else as many as the last week's page plans, else three.
 * @param view the app as it stands
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
  rows: readonly PlanRow[];
}

/**
 * The coming weeks of a program, by what was done so far and who the archer is.
 * @param view the app as it stands
 * @param program one of the rack's
 * @param weeks how many, 1 to 52
 * @returns weeks in order; a week without a planned day is left out
 */
export function planFor(
  view: Pick<AppView, 'kit' | 'journal' | 'today'>,
  program: Program,
  weeks: number,
): PlannedWeek[] {
  const { kit, journal, today } = view;
  const rows = planWeeks({
    ...{ program, records: journal.drills, today, weeks, daysPerWeek: daysPerWeekOf(view) },
    ...{ archer: archerOf(kit), competitionDay: kit.plan?.competitionDay },
  });
  const byWeek = new Map<string, PlanRow[]>();
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

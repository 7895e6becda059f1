import type { DrillRecord, Outcome, RepRecord } from '../journal/drill-record.ts';
import { heldOf } from '../journal/held-of.ts';
import type { Arrows, DayEntry, Journal } from '../journal/journal.ts';
import { visibleJournal } from '../journal/merge-journals.ts';
import { trueHeldMs, trueOutcome } from '../journal/true-held-ms.ts';
import { createTotals, type Totals, totalsByDay } from '../load/totals.ts';

/** What a cell of a table holds; `undefined` where nothing is known. */
export type Cell = string | number | boolean | undefined;

/** A column of a table. */
export interface Column<Row> {
  name: string;
  /** What it holds, with its unit: one line for the page of journal files. */
  says: string;
  cell(row: Row): Cell;
}

interface RepRow {
  record: DrillRecord;
  rep: RepRecord;
}

interface DayRow {
  date: string;
  entry: DayEntry | undefined;
  totals: Totals;
}

const column = <Row>(name: string, says: string, cell: (row: Row) => Cell): Column<Row> => ({ name, says, cell });

function countOf(outcome: Outcome): (record: DrillRecord) => number {
  return ({ reps }) => reps.reduce((count, rep) => count + (trueOutcome(rep) === outcome ? 1 : 0), 0);
}

function secondsOf(ms: number | undefined): number | undefined {
  return ms === undefined ? undefined : ms / 1000;
}

function arrowsOf(kind: Arrows['kind']): (row: DayRow) => number {
  return ({ entry }) =>
    (entry?.arrows ?? []).reduce((sum, arrows) => sum + (arrows.kind === kind ? arrows.count : 0), 0);
}

const drillColumns: readonly Column<DrillRecord>[] = [
  column('date', "the archer's local day, ISO 8601", ({ date }) => date),
  column('started', 'instant, ISO 8601 with offset', ({ startedAt }) => startedAt),
  column('ended', 'instant, ISO 8601 with offset', ({ endedAt }) => endedAt),
  column('program', 'title as it was on the day', ({ program }) => program),
  column('reps', 'reps that were logged', ({ reps }) => reps.length),
  column('held', 'reps held in full', countOf('held')),
  column('short', 'reps let down early', countOf('short')),
  column('skipped', 'reps skipped', countOf('skipped')),
  column('unsure', 'reps whose outcome is unknown', countOf('unsure')),
  column('hold seconds', 'time at full draw, s', ({ reps }) => heldOf(reps).heldMs / 1000),
  column('effort', '0 to 10', ({ effort }) => effort),
  column('pain', 'yes or no; empty where it was not answered', ({ pain }) => pain),
  column('on the fingers lbf', 'weight on the fingers, pounds-force', ({ onFingersLbf }) => onFingersLbf),
  column('tool', 'bow, light-bow, band or strap', ({ tool }) => tool),
  column('note', "the archer's own words", ({ note }) => note),
  column('id', 'the drill', ({ id }) => id),
  column('program id', "the program file's id, where it has one", ({ programId }) => programId),
  column('prescribed reps', 'reps that were prescribed, done or not', ({ prescribedReps }) => prescribedReps),
  column('duration seconds', 'length without pauses, s', ({ durationMs }) => secondsOf(durationMs)),
  column('seen seconds', 'of the time at full draw, what a camera saw, s', ({ reps }) => heldOf(reps).seenMs / 1000),
];

const repColumns: readonly Column<RepRow>[] = [
  column('date', "the archer's local day, ISO 8601", ({ record }) => record.date),
  column('program', 'title as it was on the day', ({ record }) => record.program),
  column('block', 'from 1', ({ rep }) => rep.block + 1),
  column('set', 'from 1', ({ rep }) => rep.set + 1),
  column('rep', 'from 1', ({ rep }) => rep.rep + 1),
  column('hand', 'usual or opposite', ({ rep }) => rep.hand),
  column('prescribed seconds', 'the hold that was prescribed, s', ({ rep }) => rep.prescribedMs / 1000),
  column('held seconds', 'the hold, s', ({ rep }) => trueHeldMs(rep) / 1000),
  column('outcome', 'held, short, skipped or unsure', ({ rep }) => trueOutcome(rep)),
  column('drill id', 'the drill', ({ record }) => record.id),
  column('program id', "the program file's id, where it has one", ({ record }) => record.programId),
  column('clock seconds', 'the hold as the clock has it, s', ({ rep }) => rep.heldMs / 1000),
  column('clock outcome', 'held, short, skipped or unsure, as the clock has it', ({ rep }) => rep.outcome),
  column('seen from', 'where a camera saw it: from the moment at which the hold began by the clock, s', ({ rep }) =>
    secondsOf(rep.seen?.fromMs),
  ),
  column('seen to', 'as `seen from`, to the end of the hold, s', ({ rep }) => secondsOf(rep.seen?.toMs)),
];

const dayColumns: readonly Column<DayRow>[] = [
  column('date', 'ISO 8601', ({ date }) => date),
  column('blank bale arrows', 'count', arrowsOf('blank bale')),
  column('practice arrows', 'count', arrowsOf('practice')),
  column('scoring arrows', 'count', arrowsOf('scoring')),
  column('shooting minutes', 'min', ({ entry }) => entry?.shootingMinutes),
  column('shooting effort', '0 to 10', ({ entry }) => entry?.shootingEffort),
  column('strength minutes', 'min', ({ totals }) => totals.strengthMinutes),
  column('mobility minutes', 'min', ({ totals }) => totals.mobilityMinutes),
  column('fitness minutes', 'min', ({ totals }) => totals.fitnessMinutes),
  column('drills', 'count', ({ totals }) => totals.drillsCount),
  column('hold seconds', 'time at full draw, s', ({ totals }) => totals.holdMs / 1000),
  column('readiness', 'fresh, as usual or heavy', ({ entry }) => entry?.readiness),
  column('feel', '1 to 5', ({ entry }) => entry?.feel),
  column('feel in words', "the archer's own words", ({ entry }) => entry?.feelWords),
  column('pain', 'yes or no; empty where it was not answered', ({ entry }) => entry?.pain),
  column('note', "the archer's own words", ({ entry }) => entry?.note),
  column('place', "the archer's own name for it", ({ entry }) => entry?.place),
  column('seen seconds', 'of the time at full draw, what a camera saw, s', ({ totals }) => (totals.seenMs ?? 0) / 1000),
];

/** The tables that a journal can be written as. */
export type TableName = 'drills' | 'reps' | 'days';

/** The columns of each table, for documentation. */
export const tableColumns: Readonly<Record<TableName, readonly Pick<Column<never>, 'name' | 'says'>[]>> = {
  drills: drillColumns,
  reps: repColumns,
  days: dayColumns,
};

/**
 * A journal as tables: drills one a row, reps one a row, and days one a row, those with an entry, a drill, or both.
 * @param journal removed things are left out.
 * @returns each table's rows, the first the names of its columns.
 */
export function journalTables(journal: Journal): Record<TableName, Cell[][]> {
  const visible = visibleJournal(journal);
  const entries = new Map(visible.days.map((entry) => [entry.date, entry]));
  const totals = totalsByDay(visible);
  const dates = [...totals.keys()].sort();
  return {
    drills: rowsOf(drillColumns, visible.drills),
    reps: rowsOf(
      repColumns,
      visible.drills.flatMap((record) => record.reps.map((rep) => ({ record, rep }))),
    ),
    days: rowsOf(
      dayColumns,
      dates.map((date) => ({ date, entry: entries.get(date), totals: totals.get(date) ?? createTotals() })),
    ),
  };
}

function rowsOf<Row>(columns: readonly Column<Row>[], rows: readonly Row[]): Cell[][] {
  return [columns.map(({ name }) => name), ...rows.map((row) => columns.map(({ cell }) => cell(row)))];
}

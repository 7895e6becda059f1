import type { DrillRecord, Outcome } from '../journal/drill-record.ts';
import type { Arrows, Journal } from '../journal/journal.ts';
import { visibleJournal } from '../journal/merge-journals.ts';
import { createTotals, totalsByDay } from '../load/totals.ts';

type Cell = string | number | boolean | undefined;

/**
 * Writes a table as CSV: commas, CRLF, quotes where needed. A text that a spreadsheet would run as a formula gets an apostrophe in front.
 * @param rows the first is the header.
 * @returns the text, with a final line break.
 * @source RFC 4180, section 2; OWASP, CSV Injection (characters that start a formula, full-width forms included).
 */
export function formatCsv(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(formatCell).join(',')}\r\n`).join('');
}

/**
 * Writes the drills as CSV, one a row.
 * @param journal removed records are left out.
 * @returns the text.
 */
export function formatDrillsCsv(journal: Journal): string {
  const header = ['date', 'started', 'ended', 'program', 'reps', 'held', 'short', 'skipped', 'unsure'];
  const more = ['hold seconds', 'effort', 'pain', 'on the fingers lbf', 'tool', 'note', 'id'];
  return formatCsv([
    [...header, ...more],
    ...visibleJournal(journal).drills.map((record) => [
      record.date,
      record.startedAt,
      record.endedAt,
      record.program,
      record.reps.length,
      countOf(record, 'held'),
      countOf(record, 'short'),
      countOf(record, 'skipped'),
      countOf(record, 'unsure'),
      record.reps.reduce((sum, rep) => sum + rep.heldMs, 0) / 1000,
      record.effort,
      record.pain,
      record.onFingersLbf,
      record.tool,
      record.note,
      record.id,
    ]),
  ]);
}

/**
 * Writes every rep as CSV, one a row. Blocks, sets and reps are counted from 1, as people do.
 * @param journal removed records are left out.
 * @returns the text.
 */
export function formatRepsCsv(journal: Journal): string {
  const header = ['date', 'program', 'block', 'set', 'rep', 'hand', 'prescribed seconds', 'held seconds', 'outcome'];
  return formatCsv([
    [...header, 'drill id'],
    ...visibleJournal(journal).drills.flatMap((record) =>
      record.reps.map((rep) => [
        record.date,
        record.program,
        rep.block + 1,
        rep.set + 1,
        rep.rep + 1,
        rep.hand,
        rep.prescribedMs / 1000,
        rep.heldMs / 1000,
        rep.outcome,
        record.id,
      ]),
    ),
  ]);
}

/**
 * Writes the days as CSV, one a row: those with an entry, a drill, or both.
 * @param journal removed things are left out.
 * @returns the text.
 */
export function formatDaysCsv(journal: Journal): string {
  const visible = visibleJournal(journal);
  const entries = new Map(visible.days.map((entry) => [entry.date, entry]));
  const totals = totalsByDay(visible);
  const header = [
    'date',
    'blank bale arrows',
    'practice arrows',
    'scoring arrows',
    'shooting minutes',
    'shooting effort',
  ];
  const work = ['strength minutes', 'mobility minutes', 'fitness minutes', 'drills', 'hold seconds'];
  const words = ['readiness', 'feel', 'feel in words', 'pain', 'note', 'place'];
  return formatCsv([
    [...header, ...work, ...words],
    ...[...totals.keys()].sort().map((date) => {
      const entry = entries.get(date);
      const day = totals.get(date) ?? createTotals();
      const arrowsOf = (kind: Arrows['kind']): number =>
        (entry?.arrows ?? []).reduce((sum, arrows) => sum + (arrows.kind === kind ? arrows.count : 0), 0);
      return [
        date,
        arrowsOf('blank bale'),
        arrowsOf('practice'),
        arrowsOf('scoring'),
        entry?.shootingMinutes,
        entry?.shootingEffort,
        day.strengthMinutes,
        day.mobilityMinutes,
        day.fitnessMinutes,
        day.drillsCount,
        day.holdMs / 1000,
        entry?.readiness,
        entry?.feel,
        entry?.feelWords,
        entry?.pain,
        entry?.note,
        entry?.place,
      ];
    }),
  ]);
}

const startsFormula = /^[=+\-@\t\r\n＝＋－＠]/;
const needsQuotes = /[",\r\n]/;

function formatCell(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  if (typeof cell === 'number') return String(cell);
  const safe = startsFormula.test(cell) ? `'${cell}` : cell;
  return needsQuotes.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function countOf(record: DrillRecord, outcome: Outcome): number {
  return record.reps.reduce((count, rep) => count + (rep.outcome === outcome ? 1 : 0), 0);
}

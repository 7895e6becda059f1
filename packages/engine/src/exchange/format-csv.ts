import type { Journal } from '../journal/journal.ts';
import { type Cell, journalTables } from './journal-tables.ts';

/**
 * Writes a table as CSV: commas, CRLF, quotes where needed, also around a semicolon, by which spreadsheets of many countries split a line. A text
 * that a spreadsheet would run as a formula gets an apostrophe in front.
 * @param rows the first is the header.
 * @returns the text, with a final line break.
 * @source RFC 4180, section 2; OWASP, CSV Injection (characters that start a formula, full-width forms included).
 */
export function formatCsv(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(formatCell).join(',')}\r\n`).join('');
}

/**
 * Writes the drills as CSV, one a row; the columns are those of `tableColumns`.
 * @param journal removed records are left out.
 * @returns the text.
 */
export function formatDrillsCsv(journal: Journal): string {
  return formatCsv(journalTables(journal).drills);
}

/**
 * Writes every rep as CSV, one a row. Blocks, sets and reps are counted from 1, as people do.
 * @param journal removed records are left out.
 * @returns the text.
 */
export function formatRepsCsv(journal: Journal): string {
  return formatCsv(journalTables(journal).reps);
}

/**
 * Writes the days as CSV, one a row: those with an entry, a drill, or both.
 * @param journal removed things are left out.
 * @returns the text.
 */
export function formatDaysCsv(journal: Journal): string {
  return formatCsv(journalTables(journal).days);
}

const startsFormula = /^[=+\-@\t\r\n＝＋－＠]/;
const needsQuotes = /[",;\r\n]/;

function formatCell(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  if (typeof cell === 'number') return String(cell);
  const safe = startsFormula.test(cell) ? `'${cell}` : cell;
  return needsQuotes.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

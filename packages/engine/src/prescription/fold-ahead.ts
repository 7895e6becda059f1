import { foldBodyAhead } from '../archer/body-state.ts';
import { logDays } from '../archer/logged-days.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import type { Program } from '../program/program.ts';
import { isOlderArcher } from './layoff.ts';
import { foldProgramAhead } from './program-state.ts';
import { validProgram } from './valid-program.ts';

/** How many days are folded in one turn: a few milliseconds. */
const DAYS_AT_ONCE = 250;

/**
 * Folds a long journal in parts, so that a page can do other work in between: whatever is asked of the same records and days afterwards finds
 * them folded. No answer depends on whether it was walked to its end, in part, or not at all.
 * @param input drill records and diary, as they will be given to `prescribe` and `knowArcher`; for a program, that one and the archer's age
 * @returns one turn after the other; nothing comes with them
 * @throws TypeError when the program is not valid
 * @example for (const _ of foldAhead({ records: [] })) await nextTask();
 */
export function* foldAhead(input: {
  records: readonly DrillRecord[];
  days?: readonly DayEntry[];
  program?: Program;
  ageYears?: number;
}): Generator<undefined, void> {
  const { days } = logDays(input.records, input.days);
  yield;
  const program = input.program && validProgram(input.program);
  const isOlder = isOlderArcher(input.ageYears);
  for (let count = DAYS_AT_ONCE; count - DAYS_AT_ONCE < days.length; count += DAYS_AT_ONCE) {
    if (program) foldProgramAhead(program, days, count, isOlder);
    else foldBodyAhead(days, count);
    yield;
  }
}

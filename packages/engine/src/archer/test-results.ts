import type { DrillRecord } from '../journal/drill-record.ts';
import { isOfProgram } from '../journal/is-of-program.ts';
import { trueHeldMs, trueOutcome } from '../journal/true-held-ms.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { isTestProgram, type Program, type TestMeasure, type TestProgram } from '../program/program.ts';
import { OWN_NOISE_SHARE } from './capacity.ts';
import { logDays } from './logged-days.ts';

/** One test, scored by its own published measure. */
export interface TestResult {
  /** The drill record's. */
  id: string;
  /** ISO 8601 day. */
  date: string;
  program: string;
  programId?: string;
  measure: TestMeasure;
  /** A rep's number, counted from 1, or seconds. */
  value: number;
  /** The form lasted to the end of the test: it would have been more. */
  isAtLeast: boolean;
  /** Against the last result of the same test. */
  change?: {
    from: number;
    fromDate: string;
    /** 0.1 is a tenth more. */
    share: number;
    /** Whether it is more than the noise of such a test. A tenth is no news. */
    isNews: boolean;
  };
}

/**
 * The results of all tests, each with its change since the one before.
 * @param records drill records in any order; those of tests are marked, or belong to a program that is one
 * @param programs among which a test's measure is looked for, by id where both have one, else by title; the built-in ones are known
 * @returns results in order of time; a test in which nothing ended is left out
 * @source noise: smallest real difference of shoulder strength 17-28 % (J Exerc Sci Fitness 2012, n = 21), the wider end; a shoulder endurance test
 * repeated on another day correlates .59 and .60 (Hughes et al. 1999, J Musculoskelet Res 3:195)
 * @example testResults(records, builtInPrograms)
 */
export function testResults(records: readonly DrillRecord[], programs: readonly Program[] = []): TestResult[] {
  const tests = [...programs, ...builtInPrograms].filter(isTestProgram);
  const results: TestResult[] = [];
  const lastOf = new Map<string, TestResult>();
  for (const { drills } of logDays(records).days) {
    for (const record of drills) {
      const test = tests.find((one) => isOfProgram(record, one));
      const scored = test && scoreOf(record, test);
      if (!test || !scored) continue;
      const key = test.id ?? test.title;
      const result: TestResult = {
        ...about(record),
        measure: test.measure,
        ...scored,
        ...changeSince(lastOf.get(key), scored.value),
      };
      lastOf.set(key, result);
      results.push(result);
    }
  }
  return results;
}

function about({ id, date, program, programId }: DrillRecord) {
  return { id, date, program, ...(programId === undefined ? {} : { programId }) };
}

/** The rep at which form fails, or the seconds of the longest hold; an interrupted or unsure rep says nothing. */
function scoreOf({ reps }: DrillRecord, { measure }: TestProgram): { value: number; isAtLeast: boolean } | undefined {
  const known = reps.filter(
    ({ outcome, why }) => outcome !== 'unsure' && outcome !== 'skipped' && why !== 'interrupted',
  );
  if (known.length === 0) return undefined;
  if (measure === 'longest-hold-seconds') {
    const longest = known.reduce((best, rep) => (trueHeldMs(rep) > trueHeldMs(best) ? rep : best));
    return { value: trueHeldMs(longest) / 1000, isAtLeast: trueOutcome(longest) === 'held' };
  }
  const failed = known.findIndex((rep) => trueOutcome(rep) === 'short');
  return failed < 0 ? { value: known.length, isAtLeast: true } : { value: failed + 1, isAtLeast: false };
}

function changeSince(before: TestResult | undefined, value: number): Pick<TestResult, 'change'> {
  if (!before || before.value <= 0) return {};
  const share = value / before.value - 1;
  return { change: { from: before.value, fromDate: before.date, share, isNews: Math.abs(share) >= OWN_NOISE_SHARE } };
}

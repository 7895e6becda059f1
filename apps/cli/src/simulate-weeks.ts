import { type PlanRow, planWeeks } from '@larkhold/engine';
import { plannedWords, say, type Units } from '@larkhold/words';
import { openFile, strong } from './open-file.ts';
import type { Surroundings } from './surroundings.ts';
import { knownOf, programOf } from './todays-drill.ts';

/** What `larkhold simulate` is asked. */
export interface SimulateOptions {
  program?: string;
  weeks: number;
  days: number;
  day?: string;
  json?: boolean;
}

/**
 * `larkhold simulate`: the coming weeks of a program as if every hold were held.
 * @param path a backup or a program file, `-` for standard input
 * @param options weeks, days a week, first day
 * @param around the surroundings
 */
export async function simulateWeeks(path: string, options: SimulateOptions, around: Surroundings): Promise<void> {
  const file = await openFile(path, ['backup', 'program'], around);
  const program = programOf(file, options.program);
  const { records, archer, competitionDay } = file.kind === 'program' ? { records: [] } : knownOf(file.backup);
  const units = file.kind === 'backup' ? file.backup.kit.units : 'metric';
  const { weeks, days: daysPerWeek, day: today = around.today() } = options;
  const rows = planWeeks({ program, records, today, weeks, daysPerWeek, archer, competitionDay });
  if (options.json) return around.print(`${JSON.stringify(rows, null, 2)}\n`);
  const lines = rows.map((row) => lineOf(row, units));
  around.print(`${[strong(program.title, around), ...lines].join('\n')}\n`);
}

function lineOf(row: PlanRow, units: Units): string {
  const { week, date, kind, heldMs } = row;
  const held = heldMs > 0 ? `(${say('prompt.held', { ms: heldMs })})` : '';
  return [week, date, kind.padEnd(11), plannedWords(row, units), held].join('  ').trim();
}

import { cautionsOf, doseLine, lengthLine, reasonWords, restLine, say } from '@larkhold/words';
import { strong } from './open-file.ts';
import type { Surroundings } from './surroundings.ts';
import { type DrillWish, type TodaysDrill, todaysDrill } from './todays-drill.ts';

/**
 * `larkhold today`: a day's numbers and the reason for each.
 * @param path a backup or a program file, `-` for standard input
 * @param options the wish, and `json`: print the prescription as JSON
 * @param around the surroundings
 */
export async function sayToday(
  path: string,
  options: DrillWish & { json?: boolean },
  around: Surroundings,
): Promise<void> {
  const drill = await todaysDrill(path, options, around);
  if (options.json) around.print(`${JSON.stringify(drill.prescription, null, 2)}\n`);
  else around.print(`${linesOf(drill, around).join('\n')}\n`);
}

function linesOf({ prescription, units }: TodaysDrill, around: Surroundings): string[] {
  const text = (pieces: ReturnType<typeof doseLine>): string =>
    pieces.map((piece) => (typeof piece === 'string' ? piece : piece.text)).join('');
  const blocks = prescription.blocks.flatMap((block) => [
    say('prompt.dose', { title: block.title, dose: strong(text(doseLine(block)), around) }),
    `  ${text(restLine(block, units))}`,
  ]);
  const reasons = prescription.reasons.map((reason) => reasonWords(reason));
  return [
    strong(say('prompt.drill', { program: prescription.programTitle, date: prescription.date }), around),
    ...(prescription.rest ? [say('prompt.rest', { why: reasonWords(prescription.rest) })] : []),
    ...blocks,
    ...(prescription.blocks.length > 0 ? [text(lengthLine(prescription))] : []),
    ...section(strong(say('prompt.why'), around), reasons),
    ...section(strong(say('prompt.care'), around), cautionsOf(prescription)),
  ];
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `- ${line}`)];
}

import { cautionsOf, doseLine, lengthLine, reasonWords, restLine, say } from '@larkhold/words';
import { openFile } from './open-file.ts';
import { createStyle } from './style.ts';
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
  options: Partial<DrillWish> & { json?: boolean },
  around: Surroundings,
): Promise<void> {
  const file = await openFile(path, ['backup', 'program'], around);
  const drill = todaysDrill(file, { ...options, day: options.day ?? around.today() });
  if (options.json) around.print(`${JSON.stringify(drill.prescription, null, 2)}\n`);
  else
    around.print(`${linesOf(drill, file.kind === 'backup' ? file.backup.kit.units : 'metric', around).join('\n')}\n`);
}

function linesOf({ prescription }: TodaysDrill, units: 'metric' | 'imperial', around: Surroundings): string[] {
  const style = createStyle(around.isTerminal);
  const text = (pieces: ReturnType<typeof doseLine>): string =>
    pieces.map((piece) => (typeof piece === 'string' ? piece : piece.text)).join('');
  const blocks = prescription.blocks.flatMap((block) => [
    say('prompt.dose', { title: block.title, dose: style.strong(text(doseLine(block))) }),
    `  ${text(restLine(block, units))}`,
  ]);
  return [
    style.strong(say('prompt.drill', { program: prescription.programTitle, date: prescription.date })),
    ...(prescription.rest ? [say('prompt.rest', { why: reasonWords(prescription.rest) })] : []),
    ...blocks,
    ...(prescription.blocks.length > 0 ? [text(lengthLine(prescription))] : []),
    ...section(
      style.strong(say('prompt.why')),
      prescription.reasons.map((reason) => reasonWords(reason)),
    ),
    ...section(style.strong(say('prompt.care')), cautionsOf(prescription)),
  ];
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `- ${line}`)];
}

import { formatProgram, formatSeason } from '@larkhold/engine';
import { say } from '@larkhold/words';
import { openFile, writeFile } from './open-file.ts';
import { CommandEnd, exitCodes, type Surroundings } from './surroundings.ts';

/**
 * `larkhold format`: writes a program or a season in its canonical form.
 * @param path a program or season file, `-` for standard input
 * @param options `output`: where to; `write`: into the file itself; `check`: only say whether it is in this form
 * @param around the surroundings
 * @throws CommandEnd where the file is not right, or `check` finds another form
 */
export async function formatFile(
  path: string,
  options: { output?: string; write?: boolean; check?: boolean },
  around: Surroundings,
): Promise<void> {
  const file = await openFile(path, ['program', 'season'], around);
  const after = file.kind === 'season' ? formatSeason(file.season) : formatProgram(file.program);
  if (options.check) {
    if (after === file.text) return around.print(`${say('prompt.canonical', { path })}\n`);
    throw new CommandEnd(exitCodes.wrong, say('prompt.notCanonical', { path }));
  }
  await writeFile(options.write ? path : (options.output ?? '-'), after, around);
}

import { seasonNotices } from '@larkhold/engine';
import { noticeWords, say } from '@larkhold/words';
import { type FileFault, faultLines, kindName, type OpenedFile, readAnyFile } from './file-kinds.ts';
import { readText } from './open-file.ts';
import { CommandEnd, exitCodes, type Surroundings } from './surroundings.ts';

interface CheckedFile {
  path: string;
  kind?: OpenedFile['kind'];
  faults: readonly FileFault[];
  /** What will not happen as a valid season says. */
  notices?: readonly string[];
}

/**
 * `larkhold check`: says of each file whether it is right, and if not, everything that is wrong and where.
 * @param paths files, `-` for standard input
 * @param options `json`: print the findings as JSON
 * @param around the surroundings
 * @throws CommandEnd where any file is not right or can't be read; the others are checked all the same
 */
export async function checkFiles(
  paths: readonly string[],
  options: { json?: boolean },
  around: Surroundings,
): Promise<void> {
  const checked: CheckedFile[] = [];
  let code: number = exitCodes.good;
  for (const path of paths) {
    try {
      const read = readAnyFile(await readText(path, around));
      if (read.ok) checked.push({ path, kind: read.file.kind, faults: [], ...noticesOf(read.file) });
      else checked.push({ path, kind: read.kind, faults: read.faults });
      if (!read.ok) code = Math.max(code, exitCodes.wrong);
    } catch (cause) {
      if (!(cause instanceof CommandEnd)) throw cause;
      checked.push({ path, faults: [{ message: cause.message.slice(path.length + 2) }] });
      code = Math.max(code, cause.code);
    }
  }
  if (options.json) around.print(`${JSON.stringify(checked, null, 2)}\n`);
  else for (const file of checked) around.print(`${wordsOf(file).join('\n')}\n`);
  if (code !== exitCodes.good) throw new CommandEnd(code, '');
}

function noticesOf(file: OpenedFile): Pick<CheckedFile, 'notices'> {
  const notices = file.kind === 'season' ? seasonNotices(file.season).map((notice) => noticeWords(notice)) : [];
  return notices.length === 0 ? {} : { notices };
}

function wordsOf({ path, kind, faults, notices = [] }: CheckedFile): string[] {
  if (faults.length > 0) return faultLines(path, faults);
  return [
    say('prompt.good', { path, kind: kindName(kind) }),
    ...notices.map((notice) => say('prompt.note', { path, notice })),
  ];
}

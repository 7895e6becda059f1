import { styleText } from 'node:util';
import { presentWords, say } from '@larkhold/words';
import { faultLines, kindName, type OpenedFile, readAnyFile } from './file-kinds.ts';
import { CommandEnd, exitCodes, type Surroundings } from './surroundings.ts';

/**
 * Reads a file's text.
 * @param path a file, or `-` for standard input
 * @param around the surroundings
 * @returns the text
 * @throws CommandEnd where it can't be read, or is not UTF-8: read all the same, letters would be lost when it is written again
 */
export async function readText(path: string, around: Surroundings): Promise<string> {
  const bytes = await around.read(path).catch((cause: unknown) => {
    throw new CommandEnd(exitCodes.unreachable, say('prompt.unread', { path, cause: reasonOf(cause) }));
  });
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new CommandEnd(exitCodes.wrong, say('prompt.notUtf8', { path }));
  }
}

/**
 * Writes a file, or to standard output.
 * @param path a file, or `-`
 * @param content text or bytes
 * @param around the surroundings
 * @throws CommandEnd where it can't be written
 */
export async function writeFile(path: string, content: string | Uint8Array, around: Surroundings): Promise<void> {
  try {
    await around.write(path, content);
  } catch (cause) {
    throw new CommandEnd(exitCodes.unreachable, say('prompt.unwritten', { path, cause: reasonOf(cause) }));
  }
}

/**
 * Opens a file of one of the kinds that a command can use.
 * @param path a file, or `-` for standard input
 * @param kinds what the command can use
 * @param around the surroundings
 * @returns the file, and its text
 * @throws CommandEnd where it can't be read, is not right, or is of another kind
 */
export async function openFile<Kind extends OpenedFile['kind']>(
  path: string,
  kinds: readonly Kind[],
  around: Surroundings,
): Promise<Extract<OpenedFile, { kind: Kind }> & { text: string }> {
  const text = await readText(path, around);
  const read = readAnyFile(text);
  if (!read.ok) throw new CommandEnd(exitCodes.wrong, faultLines(path, read.faults).join('\n'));
  const { file } = read;
  const kind = kindName(file.kind);
  if (!(kinds as readonly string[]).includes(file.kind)) {
    const names = presentWords().either(kinds.map((kind) => say('prompt.kind', { kind: kindName(kind) })));
    throw new CommandEnd(exitCodes.wrong, say('prompt.otherKind', { path, kind, kinds: names }));
  }
  return { ...(file as Extract<OpenedFile, { kind: Kind }>), text };
}

/**
 * A heading: bold where a person looks at a terminal, plain elsewhere.
 * @param text the heading
 * @param around the surroundings
 * @returns the heading, styled
 */
export function strong(text: string, { isTerminal }: Surroundings): string {
  return isTerminal ? styleText('bold', text, { validateStream: false }) : text;
}

function reasonOf(cause: unknown): string {
  return cause instanceof Error ? cause.message : String(cause);
}

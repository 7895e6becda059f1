import {
  type BoxAdapter,
  type BoxLink,
  boxAddress,
  createBoxLink,
  createHttpBox,
  deriveBoxKeys,
  isOfHost,
  meetBox,
  newsOf,
  newsWords,
  type Pairing,
  parsePairing,
  readBoxLink,
} from '@larkhold/box';
import { formatJournal, type Journal, mergeJournals } from '@larkhold/engine';
import { formatBackup } from '@larkhold/store';
import { say } from '@larkhold/words';
import { type JournalFile, journalOf } from './file-kinds.ts';
import { openFile, readText, writeFile } from './open-file.ts';
import { CommandEnd, exitCodes, type Surroundings } from './surroundings.ts';

/** Where the secret is, if no file is named: never among the arguments, which every process on the machine can read. */
export const SECRET_VARIABLE = 'LARKHOLD_BOX_SECRET';

/** How the box is reached, and what is printed. */
export interface SyncOptions {
  secretFile?: string;
  /** A box in a folder. */
  folder?: string;
  /** Where the app is, for a box on its own host. */
  origin?: string;
  /** What the other devices call this one. */
  title: string;
  json?: boolean;
}

type Kept = Exclude<JournalFile, { kind: 'hand-over' }>;

/**
 * `larkhold sync`: one round with the archer's box. What the other devices wrote is merged into the file, and what is in the file goes to them.
 * What is known of the box is kept beside the file, in `<file>.box.json`, without the secret.
 * @param path a journal or a backup file
 * @param options how the box is reached
 * @param around the surroundings
 * @throws CommandEnd where there is no secret, no box, or the host failed
 */
export async function syncFile(path: string, options: SyncOptions, around: Surroundings): Promise<void> {
  const file: Kept = await openFile(path, ['journal', 'backup'], around);
  const pairing = await pairingOf(options, around);
  const keys = await deriveBoxKeys(pairing);
  const box = boxOf(pairing, keys.path, options, around);
  const link = await linkBeside(path, pairing, keys.path, options.title, around);
  const keep = (next: BoxLink): Promise<void> => keepLink(path, keys.path, next, around);
  let journal = journalOf(file);
  if (around.isTerminal) around.complain(`${say('prompt.meeting')}\n`);
  const round = await meetBox({
    ...{ box, keys, link, keep, now: around.instant },
    readJournal: async () => journal,
    async mergeIn(theirs) {
      journal = mergeJournals(journal, theirs);
      await writeFile(path, textOf(file, journal, around.instant()), around);
    },
  });
  await keep(round.link);
  const { merged, isPushed, troubles } = round;
  const news = newsOf(round).map((one) => newsWords(one));
  if (options.json) around.print(`${JSON.stringify({ merged, isPushed, troubles }, null, 2)}\n`);
  else around.print(`${(news.length > 0 ? news : [say('prompt.nothingNew')]).join('\n')}\n`);
  if (troubles.some(isOfHost)) throw new CommandEnd(exitCodes.unreachable, '');
}

async function pairingOf({ secretFile }: SyncOptions, around: Surroundings): Promise<Pairing> {
  const text = secretFile === undefined ? around.variable(SECRET_VARIABLE) : await readText(secretFile, around);
  if (text === undefined) throw new CommandEnd(exitCodes.usage, say('prompt.noSecret', { variable: SECRET_VARIABLE }));
  const read = parsePairing(text.trim().replace(/^.*#\/box\//, ''));
  if (!read.ok) throw new CommandEnd(exitCodes.wrong, say('box.cutLink'));
  return read.pairing;
}

function boxOf(pairing: Pairing, path: string, { folder, origin }: SyncOptions, around: Surroundings): BoxAdapter {
  if (folder !== undefined) return around.openFolderBox(folder);
  const { address } = pairing;
  if (address === undefined) throw new CommandEnd(exitCodes.usage, say('prompt.noFolder'));
  if (!/^https?:/.test(address) && origin === undefined) throw new CommandEnd(exitCodes.usage, say('prompt.noOrigin'));
  return createHttpBox({ address: boxAddress(address, path, origin ?? address) });
}

const linkPath = (path: string): string => `${path}.box.json`;

async function linkBeside(
  path: string,
  pairing: Pairing,
  box: string,
  title: string,
  around: Surroundings,
): Promise<BoxLink> {
  const bytes = await around.read(linkPath(path)).catch((cause: unknown) => {
    if (cause instanceof Error && 'code' in cause && cause.code === 'ENOENT') return undefined;
    throw new CommandEnd(exitCodes.unreachable, say('prompt.unread', { path: linkPath(path), cause: String(cause) }));
  });
  if (bytes === undefined) return createBoxLink(pairing, title);
  const kept = parsed(new TextDecoder().decode(bytes));
  const link = readBoxLink({ ...Object(kept.link), ...pairing });
  if (link && kept.box === box) return link;
  throw new CommandEnd(exitCodes.wrong, say('prompt.otherBox', { path: linkPath(path) }));
}

function parsed(text: string): { box?: unknown; link?: unknown } {
  try {
    return Object(JSON.parse(text));
  } catch {
    return {};
  }
}

function keepLink(path: string, box: string, link: BoxLink, around: Surroundings): Promise<void> {
  const { secret: _secret, ...kept } = link;
  return writeFile(linkPath(path), `${JSON.stringify({ box, link: kept }, null, 2)}\n`, around);
}

function textOf(file: Kept, journal: Journal, madeAt: string): string {
  return file.kind === 'journal'
    ? formatJournal(journal, madeAt)
    : formatBackup({ ...file.backup, ...journal, madeAt });
}

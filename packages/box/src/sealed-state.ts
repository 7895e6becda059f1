import { formatJournal, type Journal, parseJournal } from '@larkhold/engine';
import { z } from 'zod';
import type { BoxAnswer } from './box-adapter.ts';
import { isWhole, readBoxFileName } from './box-file-name.ts';
import { troubled } from './box-trouble.ts';
import type { BoxKeys } from './pairing.ts';
import { type Cipher, createAgeCipher, openText, sealText } from './sealed-text.ts';

/** What a device puts into its file. */
export interface BoxState {
  /** The device's name among the archer's devices, as its edits carry it. */
  device: string;
  /** What the archer calls it. */
  title: string;
  /** Counts on with each file that the device writes. */
  turn: number;
  /** The instant, ISO 8601 UTC. */
  madeAt: string;
  journal: Journal;
  /** The device's own controls, sound and screen, for a new device to take over; absent where an older app wrote it. */
  kit?: Readonly<Record<string, unknown>>;
}

/** Whatever a device says of its controls spoils nothing else: what takes it over reads it value by value. */
export const deviceKitSchema = z.record(z.string().max(40), z.unknown()).optional().catch(undefined);

const stateSchema = z.looseObject({
  format: z.literal('larkhold/box-file'),
  version: z.literal(1),
  box: z.string().max(64),
  device: z.string().regex(/^[a-z0-9]{1,16}$/),
  title: z.string().max(60),
  turn: z.int().min(0),
  madeAt: z.string().max(40),
  journal: z.string(),
  kit: deviceKitSchema,
});

/**
 * Seals a device's state: deflated, then encrypted.
 * @param state what to seal.
 * @param keys of the box.
 * @param cipher the box's own unless a test says otherwise.
 * @returns the file's content.
 */
export function sealState(
  { journal, ...state }: BoxState,
  keys: BoxKeys,
  cipher: Cipher = createAgeCipher(keys),
): Promise<Uint8Array<ArrayBuffer>> {
  const head = { format: 'larkhold/box-file', version: 1, box: keys.path, ...state };
  return sealText(JSON.stringify({ ...head, journal: formatJournal(journal, state.madeAt) }), cipher);
}

/**
 * Opens a sealed file and reads it whole: nothing in it is believed before it has been checked.
 * @param content the file's content.
 * @param name under which it lay.
 * @param keys of the box.
 * @param cipher the box's own unless a test says otherwise.
 * @returns the state, or what is wrong with the file.
 */
export async function openState(
  content: Uint8Array,
  name: string,
  keys: BoxKeys,
  cipher: Cipher = createAgeCipher(keys),
): Promise<BoxAnswer<BoxState>> {
  if (!(await isWhole(name, content))) return troubled('damaged', name);
  const opened = await openText(content, cipher);
  return typeof opened === 'string' ? troubled(opened, name) : readState(opened.text, name, keys);
}

function readState(text: string, name: string, keys: BoxKeys): BoxAnswer<BoxState> {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    return troubled('damaged', name);
  }
  if (Number(Object(found).version) > 1) return troubled('newer', name);
  const read = stateSchema.safeParse(found);
  if (!read.success) return troubled('damaged', name);
  const { box, device, title, turn, madeAt, kit } = read.data;
  if (box !== keys.path) return troubled('foreign', name);
  const named = readBoxFileName(name);
  if (named?.owner !== device || named.turn !== turn) return troubled('swapped', name);
  const journal = parseJournal(read.data.journal);
  if (!journal.ok) return troubled(journal.problems[0]?.pointer === '/version' ? 'newer' : 'damaged', name);
  return { ok: true, value: { device, title, turn, madeAt, journal: journal.journal, ...(kit ? { kit } : {}) } };
}

import { z } from 'zod';
import { type BoxAdapter, type BoxAnswer, type BoxEntry, LARGEST_FILE_BYTES } from './box-adapter.ts';
import { type BoxFileName, boxFileName, isWhole, readBoxFileName } from './box-file-name.ts';
import { troubled } from './box-trouble.ts';
import { createAgeCipher, openText, sealText } from './sealed-text.ts';

const letterSchema = z.object({
  format: z.literal('larkhold/letter'),
  version: z.literal(1),
  kind: z.enum(['hand-over', 'answer']),
  owner: z.string().regex(/^[a-z0-9]{1,16}$/),
  turn: z.int().min(0),
  /** Whom an answer goes to: a name in the same folder, and a public key that only the coach gets. */
  reply: z.object({ owner: z.string().regex(/^[a-z0-9]{1,16}$/), recipient: z.string().max(200) }).optional(),
  /** A hand-over file, whole, as it would be sent. */
  file: z.string(),
});
/** A hand-over or a coach's answer on its way through a box. */
export type Letter = Omit<z.output<typeof letterSchema>, 'format' | 'version'>;

/**
 * Seals a letter to one reader and puts it into a box.
 * @param box the coach's folder.
 * @param letter what to say.
 * @param recipient the reader's public key.
 * @returns the name of the file, or what was wrong.
 */
export async function putLetter(box: BoxAdapter, letter: Letter, recipient: string): Promise<BoxAnswer<string>> {
  const text = JSON.stringify({ format: 'larkhold/letter', version: 1, ...letter });
  const content = await sealText(text, createAgeCipher({ recipient }));
  if (content.length > LARGEST_FILE_BYTES) return troubled('enormous');
  const name = await boxFileName(letter.owner, letter.turn, content);
  const put = await box.put(name, content);
  return put.ok ? { ok: true, value: name } : put;
}

/**
 * Fetches a letter and reads it whole: nothing in it is believed before it has been checked.
 * @param box the coach's folder.
 * @param entry as the box lists it.
 * @param identity the reader's own key.
 * @returns the letter, or what was wrong.
 */
export async function getLetter(
  box: BoxAdapter,
  { name, bytes }: BoxEntry,
  identity: string,
): Promise<BoxAnswer<Letter>> {
  if (bytes > LARGEST_FILE_BYTES) return troubled('enormous', name);
  const got = await box.get(name);
  if (!got.ok) return got;
  if (!(await isWhole(name, got.value.content))) return troubled('damaged', name);
  const opened = await openText(got.value.content, createAgeCipher({ identity }));
  if (typeof opened === 'string') return troubled(opened, name);
  let found: unknown;
  try {
    found = JSON.parse(opened.text);
  } catch {
    return troubled('damaged', name);
  }
  if (Number(Object(found).version) > 1) return troubled('newer', name);
  const read = letterSchema.safeParse(found);
  if (!read.success) return troubled('damaged', name);
  const { format: _format, version: _version, ...letter } = read.data;
  const named = readBoxFileName(name);
  if (named?.owner !== letter.owner || named.turn !== letter.turn) return troubled('swapped', name);
  return { ok: true, value: letter };
}

/**
 * The latest file of each owner.
 * @param entries as a box lists them.
 * @returns by owner; files that are no letters are left out.
 */
export function latestLetters(entries: readonly BoxEntry[]): Map<string, BoxEntry & BoxFileName> {
  const latest = new Map<string, BoxEntry & BoxFileName>();
  for (const entry of entries) {
    const named = readBoxFileName(entry.name);
    if (named && named.turn >= (latest.get(named.owner)?.turn ?? 0)) latest.set(named.owner, { ...entry, ...named });
  }
  return latest;
}

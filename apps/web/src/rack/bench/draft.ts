import { formatProgram, type Program } from '@larkhold/engine';
import { say } from '@larkhold/words';
import { type Json, type JsonObject, type Path, valueAt, withValueAt } from './json-path.ts';

/** A program while it is being written: a file that may still be wrong. Never changed in place. */
export interface Draft {
  /** What will be written to the file. */
  readonly file: JsonObject;
  /** One for each block, in order: the same block keeps its key through every move, so that the page can follow it. */
  readonly blockKeys: readonly number[];
}

/** What a fresh block says. Times are seconds; 5 s holds with 20 s rest are those of the built-in first program. */
const freshBlock = (): JsonObject => ({
  title: say('bench.newBlock'),
  drill: 'holding',
  sets: 1,
  reps: 5,
  draw: 3,
  hold: 5,
  letDown: 3,
  rest: { seconds: 20 },
});

/**
 * A draft of a program.
 * @param program what to start from
 * @param changes keys that differ, such as a new id for a copy
 * @returns the draft
 */
export function createDraft(program: Program, changes: Partial<Pick<Program, 'id' | 'title'>> = {}): Draft {
  const file = JSON.parse(formatProgram({ ...program, ...changes })) as JsonObject;
  return { file, blockKeys: program.blocks.map((_, index) => index) };
}

/**
 * A draft of a new program with one block.
 * @param id a UUID
 * @returns the draft
 */
export function createEmptyDraft(id: string): Draft {
  const head = { format: 'larkhold/program', version: 2, id, title: say('bench.newProgram'), tool: 'bow' };
  return { file: { ...head, blocks: [freshBlock()] }, blockKeys: [0] };
}

/**
 * The file's text, as the parser is given it.
 * @param draft any draft
 * @returns JSON
 */
export function draftText(draft: Draft): string {
  return JSON.stringify(draft.file);
}

/** @param draft any draft. @returns its blocks, right or wrong. */
export function blocksOf(draft: Draft): readonly Json[] {
  return listAt(draft.file, ['blocks']);
}

/**
 * The list at a path.
 * @param root a file or a part of it
 * @param path keys and indexes
 * @returns the list; empty where there is none
 */
export function listAt(root: Json | undefined, path: Path): readonly Json[] {
  const list = valueAt(root, path);
  return Array.isArray(list) ? list : [];
}

/**
 * Sets one value.
 * @param draft any draft
 * @param path where; not a list of blocks, see the functions below
 * @param value what; undefined leaves the key out
 * @returns the changed draft
 */
export function setValue(draft: Draft, path: Path, value: Json | undefined): Draft {
  return { ...draft, file: withValueAt(draft.file, path, value) as JsonObject };
}

/**
 * Adds a fresh block after the others.
 * @param draft any draft
 * @param block what it says, if not the usual first numbers
 * @returns the changed draft; the block before it gets a rest when it has none, for it needs one now
 */
export function addBlock(draft: Draft, block: Json = freshBlock()): Draft {
  const blocks = blocksOf(draft).map((one) => withSetRest(one));
  return { file: { ...draft.file, blocks: [...blocks, block] }, blockKeys: [...draft.blockKeys, freshKey(draft)] };
}

/**
 * Adds a block that was written in one line. In a new program that nobody has touched it replaces the block that was there.
 * @param draft any draft
 * @param block what the line says
 * @returns the changed draft
 */
export function addWrittenBlock(draft: Draft, block: Json): Draft {
  const blocks = blocksOf(draft);
  const isUntouched = blocks.length === 1 && JSON.stringify(blocks[0]) === JSON.stringify(freshBlock());
  if (!isUntouched) return addBlock(draft, block);
  return { file: { ...draft.file, blocks: [block] }, blockKeys: [freshKey(draft)] };
}

/**
 * Puts a copy of a block after it.
 * @param draft any draft
 * @param index 0-based
 * @returns the changed draft
 */
export function duplicateBlock(draft: Draft, index: number): Draft {
  const block = withSetRest(blocksOf(draft)[index] ?? freshBlock());
  return {
    file: { ...draft.file, blocks: blocksOf(draft).toSpliced(index, 1, block, block) },
    blockKeys: draft.blockKeys.toSpliced(index + 1, 0, freshKey(draft)),
  };
}

/**
 * Takes a block out.
 * @param draft any draft
 * @param index 0-based
 * @returns the changed draft; the last block stays, for a program has at least one
 */
export function removeBlock(draft: Draft, index: number): Draft {
  if (blocksOf(draft).length < 2) return draft;
  const blocks = blocksOf(draft).toSpliced(index, 1);
  return { file: { ...draft.file, blocks }, blockKeys: draft.blockKeys.toSpliced(index, 1) };
}

/**
 * Moves a block.
 * @param draft any draft
 * @param from 0-based
 * @param to 0-based, the place it has afterwards; out of range changes nothing
 * @returns the changed draft
 */
export function moveBlock(draft: Draft, from: number, to: number): Draft {
  const blocks = blocksOf(draft);
  if (from === to || !(from in blocks) || !(to in blocks)) return draft;
  const needsRest = (block: Json, index: number) => (index < blocks.length - 1 ? withSetRest(block) : block);
  return {
    file: { ...draft.file, blocks: moved(blocks, from, to).map(needsRest) },
    blockKeys: moved(draft.blockKeys, from, to),
  };
}

/**
 * Moves one entry of a list.
 * @param list any list
 * @param from 0-based @param to 0-based, the place it has afterwards
 * @returns a new list
 */
export function moved<T>(list: readonly T[], from: number, to: number): T[] {
  const entry = list[from];
  return entry === undefined ? [...list] : list.toSpliced(from, 1).toSpliced(to, 0, entry);
}

/** A block with another after it needs the rest that leads over; a minute is a start. Own: no source. */
function withSetRest(block: Json): Json {
  if (typeof block !== 'object' || block === null || Array.isArray(block)) return block;
  return 'setRest' in block ? block : { ...(block as JsonObject), setRest: 60 };
}

function freshKey({ blockKeys }: Draft): number {
  return Math.max(-1, ...blockKeys) + 1;
}

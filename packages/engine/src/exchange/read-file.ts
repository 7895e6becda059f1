import { parse as parseJson } from '@humanwhocodes/momoa';
import type * as z from 'zod';
import { checkInPieces } from './check-in-pieces.ts';

/** What is wrong with a file that came from outside. */
export interface FileProblem {
  /** Where, RFC 6901; empty for the whole file. */
  pointer: string;
  /** 1-based; known where the text is not JSON at all. */
  line?: number;
  column?: number;
  /** What was found and what was expected, in plain words. */
  message: string;
}

/** How one format is read. */
export interface FileFormat<T> {
  /** Its name, as files carry it. */
  name: string;
  /** What it is, in a sentence: 'a journal'. */
  thing: string;
  /** The version that this reader knows. */
  version: number;
  /** Longest text that is read at all, in characters. */
  limitChars: number;
  /** Step n-1 leads from version n to n+1. */
  migrations: readonly ((file: Record<string, unknown>) => Record<string, unknown>)[];
  schema: z.ZodType<T>;
}

const mostProblems = 100;
/** Levels of lists and objects inside each other; programs, the deepest, have eight. */
const DEEPEST = 64;

/**
 * Reads a file in four steps: is it ours, is it too new, bring it up to date, check it. Nothing in a file is ever trusted, run or shown as markup.
 * @param text the file's text.
 * @param format what it should be.
 * @returns its content, or what is wrong with it.
 */
export function readFile<T>(
  text: string,
  format: FileFormat<T>,
): { ok: true; value: T } | { ok: false; problems: FileProblem[] } {
  const refuse = (message: string, pointer = '', place: Partial<FileProblem> = {}) => ({
    ok: false as const,
    problems: [{ pointer, ...place, message }],
  });
  if (text.length > format.limitChars) {
    return refuse(
      `This file is too big to be ${format.thing}: ${text.length} characters, at most ${format.limitChars}.`,
    );
  }
  let found: unknown;
  try {
    found = JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
  } catch {
    return refuse('This file is not JSON, or it is cut off.', '', placeOfFault(text));
  }
  if (!isObject(found) || found.format !== format.name) {
    const other = isObject(found) && typeof found.format === 'string' ? `"${found.format.slice(0, 40)}"` : 'nothing';
    return refuse(`This file is not ${format.thing}: expected "${format.name}", found ${other}.`, '/format');
  }
  const foul = foulPlace(found);
  if (foul)
    return refuse('No file may have this: a key called "__proto__", or values nested without end.', pointerTo(foul));
  const { version } = found;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuse('Expected a whole number from 1.', '/version');
  }
  if (version > format.version) {
    return refuse(
      `This file is of version ${version}, newer than this app knows (${format.version}). Load the app again to update it.`,
      '/version',
    );
  }
  let upToDate: unknown;
  try {
    upToDate = format.migrations.slice(version - 1).reduce((file, migrate) => migrate(file), found);
  } catch {
    return refuse(`This file is of version ${version}, but it does not hold what that version holds.`);
  }
  const read = checkInPieces(format.schema, upToDate);
  if (read.ok) return read;
  return { ok: false, problems: read.issues.slice(0, mostProblems).map(describeIssue) };
}

/**
 * Writes a path into a JSON value as RFC 6901 does.
 * @param path keys and indexes from the outside in.
 * @returns the pointer.
 */
export function pointerTo(path: readonly PropertyKey[]): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

function describeIssue(issue: z.core.$ZodIssue): FileProblem {
  const first = issue.code === 'unrecognized_keys' ? issue.keys[0] : undefined;
  return { pointer: pointerTo(first === undefined ? issue.path : [...issue.path, first]), message: issue.message };
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Where a value has a key called `__proto__`, or is nested deeper than anything that is stored: what is kept unread must at least be written again. */
function foulPlace(value: unknown, depth = 0): string[] | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  if (depth > DEEPEST) return [];
  for (const key in value) {
    if (key === '__proto__') return [key];
    const path = foulPlace((value as Record<string, unknown>)[key], depth + 1);
    if (path) return [key, ...path];
  }
  return undefined;
}

/** Asked only when the platform's own parser has refused the text: it is quick but doesn't say where. */
function placeOfFault(text: string): { line?: number; column?: number } {
  try {
    parseJson(text);
  } catch (error) {
    if (isObject(error) && typeof error.line === 'number' && typeof error.column === 'number') {
      return { line: error.line, column: error.column };
    }
  }
  return {};
}

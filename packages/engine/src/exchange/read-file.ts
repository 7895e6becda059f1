import type * as z from 'zod';
import { type Complaint, complaintOf, type Fault, faultMessage, type WrittenThing } from '../program/fault.ts';
import { explainJsonFault } from '../program/json-fault.ts';
import { checkInPieces } from './check-in-pieces.ts';

/** What is wrong with a file that came from outside. */
export interface FileProblem extends Complaint {
  /** Where, RFC 6901; empty for the whole file. */
  pointer: string;
  /** 1-based; known where the text is not JSON at all. */
  line?: number;
  column?: number;
  /** What was found and what was expected, in English. */
  message: string;
}

/** How one format is read. */
export interface FileFormat<T> {
  /** Its name, as files carry it. */
  name: string;
  /** What it is. */
  thing: WrittenThing;
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
  const refuse = (fault: Fault, pointer = '', place: Partial<FileProblem> = {}) => ({
    ok: false as const,
    problems: [{ pointer, ...place, fault, message: faultMessage({ fault }) }],
  });
  const { thing } = format;
  if (text.length > format.limitChars) {
    return refuse({ rule: 'tooBig', thing, length: text.length, most: format.limitChars });
  }
  let found: unknown;
  try {
    found = JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
  } catch {
    // Asked only now: the platform's own parser is quick, but doesn't say where.
    const { fault = { rule: 'unfit' }, ...place } = explainJsonFault(text) ?? {};
    return refuse(fault, '', place);
  }
  if (!isObject(found) || found.format !== format.name) {
    const expected = format.name;
    return refuse(
      isObject(found) && typeof found.format === 'string'
        ? { rule: 'notThis', thing, expected, found: `"${found.format.slice(0, 40)}"` }
        : { rule: 'notThisNothing', thing, expected },
      '/format',
    );
  }
  const foul = foulPlace(found);
  if (foul) return refuse({ rule: 'foul' }, pointerTo(foul));
  const { version } = found;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuse({ rule: 'noVersion', least: 1 }, '/version');
  }
  if (version > format.version) {
    return refuse({ rule: 'newer', version, newest: format.version }, '/version');
  }
  let upToDate: unknown;
  try {
    upToDate = format.migrations.slice(version - 1).reduce((file, migrate) => migrate(file), found);
  } catch {
    return refuse({ rule: 'notItsVersion', version });
  }
  const read = checkInPieces(format.schema, upToDate);
  if (read.ok) return read;
  return { ok: false, problems: read.issues.slice(0, mostProblems).map((issue) => problemOf(issue, upToDate)) };
}

/**
 * Writes a path into a JSON value as RFC 6901 does.
 * @param path keys and indexes from the outside in.
 * @returns the pointer.
 */
export function pointerTo(path: readonly PropertyKey[]): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

function problemOf(issue: z.core.$ZodIssue, file: unknown): FileProblem {
  if (issue.code === 'unrecognized_keys') {
    const key = issue.keys[0] ?? '';
    const complaint: Complaint = { fault: { rule: 'unknownKey', key: key.slice(0, 60) } };
    return { pointer: pointerTo([...issue.path, key]), ...complaint, message: faultMessage(complaint) };
  }
  const found = issue.path.reduce<unknown>(
    (value, key) => (typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined),
    file,
  );
  const complaint = complaintOf(issue, found);
  if (found === undefined && issue.path.length > 0) complaint.missing = String(issue.path.at(-1));
  return { pointer: pointerTo(issue.path), ...complaint, message: faultMessage(complaint) };
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

import type * as z from 'zod';
import { complaintOf, type Fault, type PlacedThing } from './fault.ts';
import { type Problem, pointerOf, problemAt } from './problem.ts';
import type { RuleBreak } from './program-rules.ts';
import { type ReadJson, readJson } from './read-json.ts';

/** The largest file that is read, bytes of UTF-8. */
export const largestFileBytes = 1_048_576;

/** The most problems that are reported one by one. */
export const mostProblems = 200;

/** Turns a file of one version into one of the next; it gets what a valid older file holds. */
export type FileMigration = (file: Record<string, unknown>) => Record<string, unknown>;

/** How a file that people write by hand is read. */
export interface PlacedFormat<T> {
  /** As files carry it: 'larkhold/program'. */
  name: string;
  /** What it is. */
  thing: PlacedThing;
  /** The version that this reader knows. */
  version: number;
  /** The function at n makes version n + 1 of version n. */
  migrations: Readonly<Record<number, FileMigration>>;
  schema: z.ZodType<T>;
  /** More commas than such a file has. */
  mostCommas: number;
  /**
   * The rules between keys.
   * @param file brought up to date, and perhaps not valid
   * @param version that the file says
   * @returns what it breaks, as far as that is known
   */
  check(file: Record<string, unknown>, version: number): readonly RuleBreak[];
}

/** What a file holds, or everything that is wrong with it. */
export type ReadPlacedFile<T> = { ok: true; value: T } | { ok: false; problems: Problem[] };

/**
 * Reads a file that people write by hand: is it ours, is it too new, migrate, validate. Every problem has its place in the text.
 * @param text the file's text (JSON); a byte order mark at its start is passed over
 * @param format what it should be
 * @returns what it holds, or its problems with pointer, line and column: the first 200, and how many more there are
 */
export function readPlacedFile<T>(text: string, format: PlacedFormat<T>): ReadPlacedFile<T> {
  const { thing, version, migrations } = format;
  if (utf8Bytes(text) > largestFileBytes) {
    const fault: Fault = { rule: 'fileTooLarge', thing };
    return { ok: false, problems: [problemAt('', { line: 1, column: 1 }, { fault })] };
  }
  const read = readJson(text.startsWith('\uFEFF') ? text.slice(1) : text, format);
  if (!read.ok) return { ok: false, problems: inOrder(read.problems) };
  const stranger = notOurs(read.json, format);
  if (stranger) return { ok: false, problems: [stranger] };
  return validate(migrateFile(read.json.value as Record<string, unknown>, migrations, version), read.json, format);
}

/**
 * Walks a file up to a version.
 * @param file the file's object, with a whole `version`
 * @param migrations the steps
 * @param target the version to reach
 * @returns the file at that version
 * @throws RangeError when a step is missing
 */
export function migrateFile(
  file: Record<string, unknown>,
  migrations: Readonly<Record<number, FileMigration>>,
  target: number,
): Record<string, unknown> {
  let migrated = file;
  for (let version = Number(file.version); version < target; version++) {
    const step = migrations[version];
    if (!step) throw new RangeError(`migrations: no step from version ${version} to ${version + 1}`);
    migrated = { ...step(migrated), version: version + 1 };
  }
  return migrated;
}

function utf8Bytes(text: string): number {
  let bytes = text.length;
  for (let at = 0; at < text.length && bytes <= largestFileBytes; at++) {
    const unit = text.charCodeAt(at);
    // a surrogate pair is four bytes in two units, so each unit of it counts two
    if (unit >= 0x800 && (unit < 0xd800 || unit > 0xdfff)) bytes += 2;
    else if (unit >= 0x80) bytes += 1;
  }
  return bytes;
}

function notOurs<T>({ value, placeOf }: ReadJson, { name, thing, version: newest, migrations }: PlacedFormat<T>) {
  const at = (key: string, fault: Fault): Problem => {
    const path = key === '' ? [] : [key];
    return problemAt(pointerOf(path), placeOf(path), { fault });
  };
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return at('', { rule: 'notObject', thing });
  }
  const { format, version } = value as Record<string, unknown>;
  if (format === undefined) return at('', { rule: 'noFormat', expected: name, thing });
  if (format !== name) {
    return at('format', { rule: 'otherFormat', expected: name, found: JSON.stringify(format).slice(0, 60), thing });
  }
  const oldest = Math.min(newest, ...Object.keys(migrations).map(Number));
  if (typeof version !== 'number' || !Number.isInteger(version) || version < oldest) {
    return at(version === undefined ? '' : 'version', { rule: 'noVersion', least: oldest });
  }
  return version > newest ? at('version', { rule: 'newer', version, newest }) : undefined;
}

function validate<T>(file: Record<string, unknown>, json: ReadJson, format: PlacedFormat<T>): ReadPlacedFile<T> {
  const result = format.schema.safeParse(file);
  const { version } = json.value as { version: number };
  const problems = format
    .check(file, version)
    .map(({ path, fault }) => problemAt(pointerOf(path), json.placeOf(path), { fault }));
  if (!result.success) problems.push(...result.error.issues.flatMap((issue) => problemsOf(issue, file, json)));
  else if (problems.length === 0) return { ok: true, value: result.data };
  return { ok: false, problems: inOrder(problems) };
}

type Issue = z.core.$ZodIssue;

function problemsOf(issue: Issue, file: unknown, json: ReadJson): Problem[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => {
      const path = [...issue.path, key];
      return problemAt(pointerOf(path), json.keyPlaceOf(path), {
        fault: { rule: 'unknownKey', key: key.slice(0, 60) },
      });
    });
  }
  const pointer = pointerOf(issue.path);
  const found = valueAt(file, issue.path);
  if (found === undefined) {
    const complaint = { ...complaintOf(issue, undefined), missing: String(issue.path.at(-1)) };
    return [problemAt(pointer, json.placeOf(issue.path.slice(0, -1)), complaint)];
  }
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    const inner = nearestForm(issue.errors).map((part) => ({ ...part, path: [...issue.path, ...part.path] }) as Issue);
    return inner.flatMap((part) => problemsOf(part, file, json));
  }
  return [problemAt(pointer, json.placeOf(issue.path), complaintOf(issue, found))];
}

/** Of the forms a value may have, the one it comes nearest to: its own complaints are the useful ones. */
function nearestForm<I extends { code?: string; path: PropertyKey[] }>(forms: I[][]): I[] {
  const distance = (issues: I[]) =>
    issues.reduce((sum, { code, path }) => sum + (code === 'unrecognized_keys' ? 2 : path.length === 0 ? 4 : 1), 0);
  return forms.reduce((best, form) => (distance(form) < distance(best) ? form : best));
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

function inOrder(problems: Problem[]): Problem[] {
  const sorted = problems.sort((a, b) => a.line - b.line || a.column - b.column);
  const next = sorted[mostProblems];
  if (!next) return sorted;
  const fault: Fault = { rule: 'moreProblems', count: sorted.length - mostProblems };
  return [...sorted.slice(0, mostProblems), problemAt('', next, { fault })];
}

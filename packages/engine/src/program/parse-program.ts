import { describeIssue } from './describe-issue.ts';
import { migrateProgram, type ProgramMigration, programMigrations, programVersion } from './migrate-program.ts';
import { type Problem, pointerOf } from './problem.ts';
import { mostBlocks, type Program, programSchema } from './program.ts';
import { checkBlock, checkLength, checkTest, type RuleBreak } from './program-rules.ts';
import { type ReadJson, readJson } from './read-json.ts';

/** The largest program file that is read, bytes of UTF-8. */
export const largestProgramBytes = 1_048_576;

/** The most problems that are told one by one. */
export const mostProblems = 200;

/** A program, or everything that is wrong with its file. */
export type ParsedProgram = { ok: true; program: Program } | { ok: false; problems: Problem[] };

/**
 * Reads a program file: is it ours, is it too new, migrate, validate.
 * @param text the file's text (JSON); a byte order mark at its start is passed over
 * @param migrations the steps from older versions; the shipped ones by default
 * @returns the program with its defaults filled in, or its problems with pointer, line and column: the first 200, and how many more there are
 * @example parseProgram('{}').ok === false
 */
export function parseProgram(
  text: string,
  migrations: Readonly<Record<number, ProgramMigration>> = programMigrations,
): ParsedProgram {
  if (utf8Bytes(text) > largestProgramBytes) {
    return refused('The file is larger than 1 MiB and was not read. A program file is a page or two of text.');
  }
  const read = readJson(text.startsWith('\uFEFF') ? text.slice(1) : text);
  if (!read.ok) return { ok: false, problems: inOrder(read.problems) };
  const oldest = Math.min(programVersion, ...Object.keys(migrations).map(Number));
  const stranger = notOurs(read.json, oldest);
  if (stranger) return { ok: false, problems: [stranger] };
  const file = migrateProgram(read.json.value as Record<string, unknown>, migrations);
  return validate(file, read.json);
}

function refused(message: string): ParsedProgram {
  return { ok: false, problems: [{ pointer: '', line: 1, column: 1, message }] };
}

function utf8Bytes(text: string): number {
  let bytes = text.length;
  for (let at = 0; at < text.length && bytes <= largestProgramBytes; at++) {
    const unit = text.charCodeAt(at);
    // a surrogate pair is four bytes in two units, so each unit of it counts two
    if (unit >= 0x800 && (unit < 0xd800 || unit > 0xdfff)) bytes += 2;
    else if (unit >= 0x80) bytes += 1;
  }
  return bytes;
}

function notOurs({ value, placeOf }: ReadJson, oldest: number): Problem | undefined {
  const at = (key: string, message: string): Problem => {
    const path = key === '' ? [] : [key];
    return { pointer: pointerOf(path), ...placeOf(path), message };
  };
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return at('', 'A program file is an object in { }. This is something else.');
  }
  const { format, version } = value as Record<string, unknown>;
  if (format !== 'larkhold/program') {
    const found =
      format === undefined ? 'This file has no "format"' : `This file says ${JSON.stringify(format).slice(0, 60)}`;
    return at(
      format === undefined ? '' : 'format',
      `Expected "format": "larkhold/program". ${found}: it is not a program.`,
    );
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < oldest) {
    return at(version === undefined ? '' : 'version', `Expected "version", a whole number from ${oldest}.`);
  }
  if (version > programVersion) {
    const message = `This file is version ${version}; this Larkhold reads up to version ${programVersion}. Update Larkhold to open it.`;
    return at('version', message);
  }
  return undefined;
}

function validate(file: Record<string, unknown>, json: ReadJson): ParsedProgram {
  const result = programSchema.safeParse(file);
  const { version } = json.value as { version: number };
  const problems = checkRules(file, version).map(({ path, message }) => ({
    pointer: pointerOf(path),
    ...json.placeOf(path),
    message,
  }));
  if (!result.success) problems.push(...result.error.issues.flatMap((issue) => problemsOf(issue, file, json)));
  else if (problems.length === 0) return { ok: true, program: result.data };
  return { ok: false, problems: inOrder(problems) };
}

/** The rules between keys, as far as the schema's own complaints leave something to check: block by block. */
function checkRules({ blocks, kind, measure }: Record<string, unknown>, version: number): RuleBreak[] {
  if (!Array.isArray(blocks)) return checkTest({ version, kind, measure, blocks: [] });
  const read = blocks.slice(0, mostBlocks).map((block) => programSchema.shape.blocks.element.safeParse(block));
  const breaks = [
    ...checkTest({ version, kind, measure, blocks: read.map(({ data }) => data) }),
    ...read.flatMap(({ data }, index) => (data ? checkBlock(data, index, blocks.length) : [])),
  ];
  const sound = read.flatMap(({ data }) => data ?? []);
  return sound.length === blocks.length ? [...breaks, ...checkLength(sound)] : breaks;
}

type Issue = Parameters<typeof describeIssue>[0];

function problemsOf(issue: Issue, file: unknown, json: ReadJson): Problem[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => {
      const pointer = pointerOf([...issue.path, key]);
      const message = `The key ${JSON.stringify(key.slice(0, 60))} is not known here. Remove it or check its spelling.`;
      return { pointer, ...json.keyPlaceOf([...issue.path, key]), message };
    });
  }
  const pointer = pointerOf(issue.path);
  const found = valueAt(file, issue.path);
  if (found === undefined) {
    const key = String(issue.path.at(-1));
    const message = `The key ${JSON.stringify(key)} is missing. ${describeIssue(issue, undefined)}`;
    return [{ pointer, ...json.placeOf(issue.path.slice(0, -1)), message }];
  }
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    const inner = nearestForm(issue.errors).map((part) => ({ ...part, path: [...issue.path, ...part.path] }) as Issue);
    return inner.flatMap((part) => problemsOf(part, file, json));
  }
  return [{ pointer, ...json.placeOf(issue.path), message: describeIssue(issue, found) }];
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
  const others = sorted.length - mostProblems;
  const message = `There ${others === 1 ? 'is 1 more problem' : `are ${others} more problems`} from here on.`;
  return [...sorted.slice(0, mostProblems), { ...next, pointer: '', message }];
}

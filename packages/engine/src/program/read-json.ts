import { type AnyNode, type DocumentNode, parse, type ValueNode } from '@humanwhocodes/momoa';
import { type Problem, pointerOf } from './problem.ts';

/** A place in a text, 1-based. */
export interface Place {
  line: number;
  column: number;
}

/** JSON read with the place of everything in it. */
export interface ReadJson {
  value: unknown;
  /** Where the value at this pointer begins. */
  placeOf(pointer: string): Place;
  /** Where the key of the value at this pointer begins; the value's own place where it has no key. */
  keyPlaceOf(pointer: string): Place;
}

const deepest = 40;

/**
 * Reads strict JSON (RFC 8259): no comments, no trailing commas, no duplicate keys.
 * @param text the file's text, without a byte order mark
 * @returns the value with its places, or every problem of the text
 */
export function readJson(text: string): { ok: true; json: ReadJson } | { ok: false; problems: Problem[] } {
  const start: Place = { line: 1, column: 1 };
  if (text.trim() === '') return refuse('The file is empty. A program file is JSON text that begins with {.', start);
  const tooDeep = findTooDeep(text);
  if (tooDeep !== undefined) {
    return refuse(`The file nests more than ${deepest} levels deep; a program needs fewer.`, placeAt(text, tooDeep));
  }
  let document: DocumentNode;
  try {
    document = parse(text, { mode: 'json', ranges: true });
  } catch (error) {
    return refuse(syntaxMessage(error), syntaxPlace(error) ?? start);
  }
  return collect(document.body);
}

function refuse(message: string, place: Place): { ok: false; problems: Problem[] } {
  return { ok: false, problems: [{ pointer: '', ...place, message }] };
}

function syntaxMessage(error: unknown): string {
  const said =
    error instanceof Error ? error.message.replace(/\s*\(\d+:\d+\)\.?$/, '').replace(/\.$/, '') : 'unreadable';
  return `This is not JSON: ${said}. Check for a missing comma, quote or bracket just before this place.`;
}

function syntaxPlace(error: unknown): Place | undefined {
  if (typeof error !== 'object' || error === null) return undefined;
  const { line, column } = error as Partial<Place>;
  return typeof line === 'number' && typeof column === 'number' ? { line, column } : undefined;
}

/** Brackets are counted before parsing, so that a hostile file cannot exhaust the stack. */
function findTooDeep(text: string): number | undefined {
  let depth = 0;
  let inString = false;
  for (let at = 0; at < text.length; at++) {
    const c = text[at];
    if (inString) {
      if (c === '\\') at++;
      else if (c === '"') inString = false;
    } else if (c === '"') inString = true;
    else if (c === '{' || c === '[') {
      if (++depth > deepest) return at;
    } else if (c === '}' || c === ']') depth--;
  }
  return undefined;
}

function placeAt(text: string, offset: number): Place {
  const before = text.slice(0, offset);
  const lineStart = before.lastIndexOf('\n') + 1;
  return { line: before.split('\n').length, column: offset - lineStart + 1 };
}

function collect(root: ValueNode): { ok: true; json: ReadJson } | { ok: false; problems: Problem[] } {
  const places = new Map<string, Place>();
  const keyPlaces = new Map<string, Place>();
  const problems: Problem[] = [];

  function walk(node: ValueNode, path: readonly PropertyKey[]): unknown {
    const pointer = pointerOf(path);
    places.set(pointer, startOf(node));
    switch (node.type) {
      case 'Object': {
        const object: Record<string, unknown> = {};
        for (const member of node.members) {
          const name = member.name.type === 'String' ? member.name.value : member.name.name;
          const at = [...path, name];
          checkText(name, pointerOf(at), startOf(member.name), problems);
          if (Object.hasOwn(object, name)) {
            const message = `The key ${JSON.stringify(name)} stands twice in the same object. Keep one.`;
            problems.push({ pointer: pointerOf(at), ...startOf(member.name), message });
          }
          keyPlaces.set(pointerOf(at), startOf(member.name));
          // defineProperty, so that a key named __proto__ is an ordinary key
          const value = walk(member.value, at);
          Object.defineProperty(object, name, { value, enumerable: true, writable: true, configurable: true });
        }
        return object;
      }
      case 'Array':
        return node.elements.map((element, index) => walk(element.value, [...path, index]));
      case 'String':
        checkText(node.value, pointer, startOf(node), problems);
        return node.value;
      case 'Number':
        if (!Number.isFinite(node.value)) {
          problems.push({ pointer, ...startOf(node), message: 'This number is too large to be used.' });
          return 0;
        }
        return node.value === 0 ? 0 : node.value; // -0 is 0
      case 'Boolean':
        return node.value;
      default:
        return null;
    }
  }

  const value = walk(root, []);
  if (problems.length > 0) return { ok: false, problems };
  const placeOf = (pointer: string) => places.get(pointer) ?? { line: 1, column: 1 };
  return { ok: true, json: { value, placeOf, keyPlaceOf: (pointer) => keyPlaces.get(pointer) ?? placeOf(pointer) } };
}

function startOf(node: AnyNode): Place {
  return { line: node.loc.start.line, column: node.loc.start.column };
}

function checkText(text: string, pointer: string, place: Place, problems: Problem[]): void {
  if (/\p{Surrogate}/u.test(text)) {
    problems.push({
      pointer,
      ...place,
      message: 'This text holds half of a character (a lone surrogate). Type it again.',
    });
  } else if (text.includes('\u0000')) {
    problems.push({ pointer, ...place, message: 'This text holds a NUL character. Remove it.' });
  }
}

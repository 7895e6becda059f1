import { type AnyNode, type DocumentNode, parse, type ValueNode } from '@humanwhocodes/momoa';
import { type Problem, pointerOf } from './problem.ts';
import { codePointName, type ReadLimits, refuseUnread } from './refuse-unread.ts';

/** A place in a text, 1-based. */
export interface Place {
  line: number;
  column: number;
}

/** JSON read with the place of everything in it. */
export interface ReadJson {
  value: unknown;
  /** Where the value at this path begins; the file's beginning where there is none. */
  placeOf(path: readonly PropertyKey[]): Place;
  /** Where the key of the value at this path begins; the value's own place where it has no key. */
  keyPlaceOf(path: readonly PropertyKey[]): Place;
}

/** No key of a file is nearly as long; longer ones would make every pointer below them as long. */
const longestKey = 200;

/** The place of a value, of its key, and of what it holds. */
interface Spot {
  place: Place;
  keyPlace?: Place;
  inside: Map<PropertyKey, Spot>;
}

/**
 * Reads strict JSON (RFC 8259): no comments, no trailing commas, no duplicate keys, no bare control characters.
 * @param text the file's text, without a byte order mark
 * @param limits what the file is, and how much of it is read
 * @returns the value with its places, or the problems of the text
 */
export function readJson(
  text: string,
  limits: ReadLimits,
): { ok: true; json: ReadJson } | { ok: false; problems: Problem[] } {
  const start: Place = { line: 1, column: 1 };
  if (text.trim() === '')
    return refuse(`The file is empty. A ${limits.thing} file is JSON text that begins with {.`, start);
  const unread = refuseUnread(text, limits);
  if (unread) return { ok: false, problems: [unread] };
  let document: DocumentNode;
  try {
    document = parse(text.trimEnd(), { mode: 'json', ranges: true });
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

function collect(root: ValueNode): { ok: true; json: ReadJson } | { ok: false; problems: Problem[] } {
  const problems: Problem[] = [];

  function walk(node: ValueNode, path: readonly PropertyKey[], spot: Spot): unknown {
    const complain = (message: string) => problems.push({ pointer: pointerOf(path), ...spot.place, message });
    switch (node.type) {
      case 'Object': {
        const object: Record<string, unknown> = {};
        for (const member of node.members) {
          const name = member.name.type === 'String' ? member.name.value : member.name.name;
          const keyPlace = startOf(member.name);
          if (name.length > longestKey) {
            const message = `This key is ${name.length} characters long; no key of such a file is. Remove it.`;
            problems.push({ pointer: pointerOf(path), ...keyPlace, message });
            continue;
          }
          const at = [...path, name];
          const fault = faultOfText(name);
          if (fault) problems.push({ pointer: pointerOf(at), ...keyPlace, message: fault });
          if (Object.hasOwn(object, name)) {
            const message = `The key ${JSON.stringify(name)} stands twice in the same object. Keep one.`;
            problems.push({ pointer: pointerOf(at), ...keyPlace, message });
          }
          const inner: Spot = { place: startOf(member.value), keyPlace, inside: new Map() };
          spot.inside.set(name, inner);
          // defineProperty, so that a key named __proto__ is an ordinary key
          const value = walk(member.value, at, inner);
          Object.defineProperty(object, name, { value, enumerable: true, writable: true, configurable: true });
        }
        return object;
      }
      case 'Array':
        return node.elements.map((element, index) => {
          const inner: Spot = { place: startOf(element.value), inside: new Map() };
          spot.inside.set(index, inner);
          return walk(element.value, [...path, index], inner);
        });
      case 'String': {
        const fault = faultOfText(node.value);
        if (fault) complain(fault);
        return node.value;
      }
      case 'Number':
        if (Number.isFinite(node.value)) return node.value === 0 ? 0 : node.value; // -0 is 0
        complain('This number is too large to be used.');
        return 0;
      case 'Boolean':
        return node.value;
      default:
        return null;
    }
  }

  const top: Spot = { place: startOf(root), inside: new Map() };
  const value = walk(root, [], top);
  if (problems.length > 0) return { ok: false, problems };
  const spotOf = (path: readonly PropertyKey[]) =>
    path.reduce<Spot | undefined>((spot, key) => spot?.inside.get(key), top);
  const placeOf = (path: readonly PropertyKey[]) => spotOf(path)?.place ?? { line: 1, column: 1 };
  return { ok: true, json: { value, placeOf, keyPlaceOf: (path) => spotOf(path)?.keyPlace ?? placeOf(path) } };
}

function startOf(node: AnyNode): Place {
  return { line: node.loc.start.line, column: node.loc.start.column };
}

/** What is wrong with a text once its escapes are read, if anything is. */
function faultOfText(text: string): string | undefined {
  if (/\p{Surrogate}/u.test(text)) return 'This text holds half of a character (a lone surrogate). Type it again.';
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < 0x20 && code !== 0x09 && code !== 0x0a) {
      return `This text holds the control character ${codePointName(code)}. Remove it; only tabs (\\t) and line breaks (\\n) may stay.`;
    }
  }
  return undefined;
}

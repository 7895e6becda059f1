import { type AnyNode, type DocumentNode, parse, type ValueNode } from '@humanwhocodes/momoa';
import type { Fault } from './fault.ts';
import { explainJsonFault } from './json-fault.ts';
import { type Problem, pointerOf, problemAt } from './problem.ts';
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
  if (text.trim() === '') return refuse({ rule: 'empty', thing: limits.thing }, start);
  const unread = refuseUnread(text, limits);
  if (unread) return { ok: false, problems: [unread] };
  let document: DocumentNode;
  try {
    document = parse(text.trimEnd(), { mode: 'json', ranges: true });
  } catch {
    // The parser says where, but not what was expected there. A byte order mark in front is passed over, and this text has lost its own.
    const { fault, ...place } = explainJsonFault(`\uFEFF${text}`) ?? { fault: { rule: 'unfit' } as const, ...start };
    return refuse(fault, place);
  }
  return collect(document.body);
}

function refuse(fault: Fault, place: Place): { ok: false; problems: Problem[] } {
  return { ok: false, problems: [problemAt('', place, { fault })] };
}

function collect(root: ValueNode): { ok: true; json: ReadJson } | { ok: false; problems: Problem[] } {
  const problems: Problem[] = [];

  function walk(node: ValueNode, path: readonly PropertyKey[], spot: Spot): unknown {
    const complain = (fault: Fault) => problems.push(problemAt(pointerOf(path), spot.place, { fault }));
    switch (node.type) {
      case 'Object': {
        const object: Record<string, unknown> = {};
        for (const member of node.members) {
          const name = member.name.type === 'String' ? member.name.value : member.name.name;
          const keyPlace = startOf(member.name);
          if (name.length > longestKey) {
            problems.push(problemAt(pointerOf(path), keyPlace, { fault: { rule: 'keyTooLong', length: name.length } }));
            continue;
          }
          const at = [...path, name];
          const fault = faultOfText(name);
          if (fault) problems.push(problemAt(pointerOf(at), keyPlace, { fault }));
          if (Object.hasOwn(object, name)) {
            problems.push(problemAt(pointerOf(at), keyPlace, { fault: { rule: 'keyTwice', key: name } }));
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
        complain({ rule: 'numberTooLarge' });
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
function faultOfText(text: string): Fault | undefined {
  if (/\p{Surrogate}/u.test(text)) return { rule: 'halfCharacter' };
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < 0x20 && code !== 0x09 && code !== 0x0a) return { rule: 'control', character: codePointName(code) };
  }
  return undefined;
}

import type { Fault, JsonWanted } from './fault.ts';
import { codePointName } from './refuse-unread.ts';

/** A place in a text, both 1-based. */
export interface TextPlace {
  line: number;
  column: number;
}

const SPACE = /[ \t\n\r]*/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORDS = ['true', 'false', 'null'] as const;
/** Deeper than any file goes; what nests on is a fault at this place, and asks for no more memory. */
const DEEPEST = 100_000;

/** What may come next: the last two also mean the end of the list or object that is open. */
type Expected = 'value' | 'key' | 'colon' | 'separator' | 'valueOrEnd' | 'keyOrEnd';

/**
 * Where a text stops being JSON. It walks the text once and makes nothing of it, so that a cut-off file of any size costs a moment and no memory.
 * @param text any text; a byte order mark at its start is passed over
 * @returns the place of the first sign that can't be there, or of the end where more had to come; undefined for JSON
 * @source RFC 8259, sections 2 to 7
 * @example findJsonFault('{"a": 1,}') // { line: 1, column: 9 }
 */
export function findJsonFault(text: string): TextPlace | undefined {
  const found = faultAt(text);
  return found && placeOf(text, found.at);
}

/**
 * Where a text stops being JSON, and what was expected there.
 * @param text any text; a byte order mark at its start is passed over
 * @returns the place and what is wrong; undefined for JSON
 */
export function explainJsonFault(text: string): (TextPlace & { fault: Fault }) | undefined {
  const written = text.trimEnd();
  const found = faultAt(written);
  if (found === undefined) return undefined;
  const { at, wanted } = found;
  return { ...placeOf(written, at), fault: faultOf(written.slice(at, at + 21), wanted) };
}

function faultOf(rest: string, wanted: JsonWanted): Fault {
  if (rest === '') return { rule: 'jsonEnds', wanted };
  const code = rest.charCodeAt(0);
  if (wanted === 'quote' && code < 0x20) {
    if (code === 0x0a || code === 0x0d) return { rule: 'textBreaks' };
    return { rule: code === 0x09 ? 'bareTab' : 'bareControl', character: codePointName(code) };
  }
  const seen = /^(?:\w{1,20}|[^\s\p{Cc}\p{Surrogate}])/u.exec(rest)?.[0] ?? codePointName(rest.codePointAt(0) ?? 0);
  if (/[“”„‘’']/.test(seen)) return { rule: 'notJson', seen, wanted: 'straight' };
  if (/value/.test(wanted) && /^[+.\d]/.test(seen)) return { rule: 'notJson', seen, wanted: 'number' };
  return { rule: 'notJson', seen, wanted };
}

function placeOf(text: string, at: number): TextPlace {
  let line = 1;
  let lineStart = text.startsWith('\uFEFF') ? 1 : 0;
  for (let end = text.indexOf('\n'); end >= 0 && end < at; end = text.indexOf('\n', end + 1)) {
    line += 1;
    lineStart = end + 1;
  }
  return { line, column: at - lineStart + 1 };
}

function faultAt(text: string): { at: number; wanted: JsonWanted } | undefined {
  const open: ('{' | '[')[] = [];
  let expected: Expected = 'value';
  let at = text.startsWith('\uFEFF') ? 1 : 0;
  for (;;) {
    at = endOf(SPACE, text, at);
    const sign = text[at];
    const fault = { at, wanted: wantedIn(expected, open.at(-1)) };
    if (sign === undefined) return expected === 'separator' && open.length === 0 ? undefined : fault;
    if (expected === 'colon') {
      if (sign !== ':') return fault;
      at += 1;
      expected = 'value';
    } else if (expected === 'separator') {
      const inside = open.at(-1);
      if (sign === ',' && inside !== undefined) expected = inside === '{' ? 'key' : 'value';
      else if (sign === closing(inside)) open.pop();
      else return fault;
      at += 1;
    } else if (sign === closing(open.at(-1)) && expected.endsWith('OrEnd')) {
      open.pop();
      at += 1;
      expected = 'separator';
    } else if (expected === 'key' || expected === 'keyOrEnd') {
      if (sign !== '"') return fault;
      const end = stringEnd(text, at);
      if (end.wanted) return { at: end.at, wanted: end.wanted };
      at = end.at;
      expected = 'colon';
    } else if (sign === '{' || sign === '[') {
      if (open.length === DEEPEST) return fault;
      open.push(sign);
      at += 1;
      expected = sign === '{' ? 'keyOrEnd' : 'valueOrEnd';
    } else {
      const end = scalarEnd(text, at, fault.wanted);
      if (end.wanted) return { at: end.at, wanted: end.wanted };
      at = end.at;
      expected = 'separator';
    }
  }
}

/** What a person would have to write at a place. */
function wantedIn(expected: Expected, inside: '{' | '[' | undefined): JsonWanted {
  if (expected === 'separator') return inside === undefined ? 'other' : inside === '{' ? 'memberEnd' : 'entryEnd';
  return expected === 'value' && inside === undefined ? 'start' : expected;
}

function closing(inside: '{' | '[' | undefined): string | undefined {
  return inside === undefined ? undefined : inside === '{' ? '}' : ']';
}

function endOf(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

interface End {
  at: number;
  /** What is lacking there; undefined where all is well. */
  wanted?: JsonWanted;
}

function scalarEnd(text: string, at: number, wanted: JsonWanted): End {
  if (text[at] === '"') return stringEnd(text, at);
  const word = WORDS.find((one) => text.startsWith(one, at));
  const end = word ? at + word.length : endOf(NUMBER, text, at);
  return end === at ? { at, wanted } : { at: end };
}

/** Looked through sign by sign: a pattern that repeats a choice would run out of stack in a long text. */
function stringEnd(text: string, from: number): End {
  let at = from + 1;
  for (; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code === 0x22) return { at: at + 1 };
    if (code < 0x20) return { at, wanted: 'quote' };
    if (code !== 0x5c) continue;
    at += 1;
    const escaped = text[at];
    if (escaped === 'u') {
      for (let count = 0; count < 4; count += 1) {
        at += 1;
        if (!/^[0-9a-fA-F]$/.test(text[at] ?? '')) return { at, wanted: 'hex' };
      }
    } else if (escaped === undefined || !'"\\/bfnrt'.includes(escaped)) {
      return { at, wanted: 'escape' };
    }
  }
  return { at, wanted: 'quote' };
}

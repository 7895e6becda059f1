import type * as z from 'zod';
import { fillSentence } from '../units/fill-sentence.ts';
import { faultSentences } from './fault-sentences.ts';
import type { Lever } from './program.ts';

/** The kinds of files that people write by hand. */
export type PlacedThing = 'program' | 'season';
/** The kinds of files that apps write. */
export type WrittenThing = 'journal' | 'backup' | 'handOver' | 'other';

/**
 * What is wrong, as facts. `packages/words` says it in the reader's language, `faultMessage` in English. Numbers and texts of a file are as
 * the file writes them.
 */
export type Fault =
  | { rule: 'empty' | 'fileTooLarge' | 'notObject'; thing: PlacedThing }
  | { rule: 'notJson'; seen: string; wanted: JsonWanted }
  | { rule: 'keyTooLong'; length: number }
  | { rule: 'keyTwice' | 'unknownKey'; key: string }
  | { rule: 'control' | 'bareTab' | 'bareControl'; character: string }
  | { rule: 'textTooLong' | 'tooDeep' | 'tooManyValues'; most: number; thing: PlacedThing }
  | { rule: 'noFormat'; expected: string; thing: PlacedThing }
  | { rule: 'otherFormat'; expected: string; found: string; thing: PlacedThing }
  | { rule: 'noVersion'; least: number }
  | { rule: 'newer'; version: number; newest: number }
  | { rule: 'moreProblems'; count: number }
  | { rule: 'tooBig'; thing: WrittenThing; length: number; most: number }
  | { rule: 'notThis'; thing: WrittenThing; expected: string; found: string }
  | { rule: 'notThisNothing'; thing: WrittenThing; expected: string }
  | { rule: 'notItsVersion'; version: number }
  | { rule: 'jsonEnds'; wanted: JsonWanted }
  | { rule: 'encoding'; encoding: string }
  | { rule: 'type'; type: 'int' | 'number' | 'string' | 'array' | 'object' | 'boolean' | 'other' }
  | { rule: 'atLeast' | 'moreThan' | 'atMost' | 'lessThan'; limit: number }
  | { rule: 'atLeastCharacters' | 'atMostCharacters' | 'atLeastEntries' | 'atMostEntries'; limit: number }
  | { rule: 'oneOf'; choices: string }
  | { rule: 'measureMissing'; choices: string }
  | { rule: 'tooLong'; hours: string }
  | { rule: 'testVersion'; version: number }
  | { rule: 'testSets' | 'testReps' | 'tenths'; found: number }
  | { rule: 'setRestMissing'; why: 'sets' | 'follows' | 'other' }
  | { rule: 'endlessLadder'; lever: Lever }
  | { rule: 'layoffOrder'; before: number; found: number }
  | { rule: 'resetTooHigh'; lever: Lever; own: number; found: number }
  | { rule: 'untilOwn' | 'untilEarlier'; lever: Lever; from: number; found: number }
  | { rule: 'endsBefore'; first: string; found: string }
  | { rule: 'weekBeyond'; weeks: number; found: number }
  | { rule: 'weekTwice'; week: number }
  | { rule: 'tooManyDays'; most: number; found: number }
  | { rule: 'dayOutside'; from: string; to: string; found: string }
  | { rule: 'dayTwice'; day: string }
  | { rule: 'lineTooLong'; most: number; length: number }
  | { rule: 'lineLacks'; example: string }
  | { rule: 'notUnderstood' | 'saidTwice'; text: string }
  | { rule: PlainRule };

/** What was expected where a text stops being JSON; `other` where nothing more was. */
export type JsonWanted =
  | ('start' | 'value' | 'valueOrEnd' | 'key' | 'keyOrEnd' | 'colon' | 'memberEnd' | 'entryEnd')
  | ('quote' | 'escape' | 'hex' | 'straight' | 'number' | 'other');

/** Faults that need no facts. */
type PlainRule =
  | ('halfCharacter' | 'textBreaks' | 'numberTooLarge' | 'foul' | 'unreadable' | 'notUtf8')
  | ('uuid' | 'date' | 'datetime' | 'form' | 'unfit' | 'instantYears' | 'stamp' | 'dayYears' | 'weekYears')
  | ('seenBackwards' | 'measureAlone' | 'testBlocks' | 'testHands' | 'testLadder' | 'resetsItself')
  | 'lineSetRest';

/** A value as it is shown: its JSON text, shortened, or what kind of thing it is. */
export type FoundValue = { kind: 'text'; found: string } | { kind: 'list'; count: number } | { kind: 'object' };

/** A fault with what surrounds it: the key that lacks a value, or the value that was found. */
export interface Complaint {
  fault: Fault;
  /** The key that is not there. */
  missing?: string;
  found?: FoundValue;
}

/**
 * A complaint in English: what was found, what was expected, what to do.
 * @param complaint what is wrong
 * @returns one to three plain sentences
 * @example faultMessage({ fault: { rule: 'atLeast', limit: 1 }, found: { kind: 'text', found: '0' } }) // 'Expected at least 1. Found 0.'
 */
export function faultMessage({ fault, missing, found }: Complaint): string {
  const { rule, ...facts } = fault;
  return [
    missing === undefined ? '' : fillSentence(faultSentences['fault.missing'], { key: missing }),
    fillSentence(faultSentences[`fault.${rule}`], facts),
    found === undefined ? '' : fillSentence(faultSentences[foundKey(found)], found),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** The sentence that shows a value. */
function foundKey({ kind }: FoundValue): 'fault.found' | 'fault.foundList' | 'fault.foundObject' {
  return ({ text: 'fault.found', list: 'fault.foundList', object: 'fault.foundObject' } as const)[kind];
}

/** Longer values are shortened when they are shown. */
const longestShown = 60;

/**
 * A value as it is shown.
 * @param value any JSON value
 * @returns the value; nothing where there is none
 */
export function foundValue(value: unknown): FoundValue | undefined {
  if (value === undefined) return undefined;
  if (Array.isArray(value)) return { kind: 'list', count: value.length };
  if (typeof value === 'object' && value !== null) return { kind: 'object' };
  const text = JSON.stringify(value);
  return { kind: 'text', found: text.length > longestShown ? `${text.slice(0, longestShown - 3)}…` : text };
}

/**
 * A schema's complaint as facts.
 * @param issue zod's issue
 * @param value what is at the issue's path
 * @returns the complaint
 */
export function complaintOf(issue: z.core.$ZodIssue, value: unknown): Complaint {
  const found = foundValue(value);
  return { fault: faultOf(issue), ...(found && { found }) };
}

const types = ['int', 'number', 'string', 'array', 'object', 'boolean'] as const;

function faultOf(issue: z.core.$ZodIssue): Fault {
  switch (issue.code) {
    case 'invalid_type':
      return { rule: 'type', type: types.find((type) => type === issue.expected) ?? 'other' };
    case 'too_small':
      return bound(issue.origin, issue.inclusive ? 'atLeast' : 'moreThan', Number(issue.minimum));
    case 'too_big':
      return bound(issue.origin, issue.inclusive === false ? 'lessThan' : 'atMost', Number(issue.maximum));
    case 'invalid_value':
      return { rule: 'oneOf', choices: issue.values.map((value) => JSON.stringify(value)).join(' / ') };
    case 'invalid_format':
      return { rule: formats.find((format) => format === issue.format) ?? 'unfit' };
    case 'invalid_union':
      return { rule: 'form' };
    case 'custom':
      // A schema's own check says its fault in `params`.
      return (issue.params?.fault as Fault | undefined) ?? { rule: 'unfit' };
    default:
      return { rule: 'unfit' };
  }
}

const formats = ['uuid', 'date', 'datetime'] as const;

function bound(origin: string, rule: 'atLeast' | 'moreThan' | 'atMost' | 'lessThan', limit: number): Fault {
  const isLeast = rule === 'atLeast';
  if (origin === 'string') return { rule: isLeast ? 'atLeastCharacters' : 'atMostCharacters', limit };
  if (origin === 'array') return { rule: isLeast ? 'atLeastEntries' : 'atMostEntries', limit };
  return { rule, limit };
}

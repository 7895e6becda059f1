import type * as z from 'zod';

/**
 * Says a schema's complaint as a person would.
 * @param issue zod's issue, with its input
 * @param found the value at the issue's path
 * @returns one or two plain sentences: what was found, what was expected
 */
export function describeIssue(issue: z.core.$ZodIssue, found: unknown): string {
  return `${expected(issue)}${found === undefined ? '' : ` Found ${show(found)}.`}`;
}

function expected(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `Expected ${typeWord(issue.expected)}.`;
    case 'too_small':
      return bound(issue.origin, issue.inclusive ? 'at least' : 'more than', Number(issue.minimum));
    case 'too_big':
      return bound(issue.origin, issue.inclusive === false ? 'less than' : 'at most', Number(issue.maximum));
    case 'invalid_value':
      return `Expected ${issue.values.map((value) => JSON.stringify(value)).join(' or ')}.`;
    case 'invalid_format':
      return `Expected ${formatWords[issue.format] ?? issue.format}.`;
    case 'invalid_union':
      return 'Expected one of the forms in the program file page.';
    default:
      return issue.message.endsWith('.') ? issue.message : `${issue.message}.`;
  }
}

const formatWords: Readonly<Record<string, string>> = {
  uuid: 'a UUID, as 8-4-4-4-12 hexadecimal digits',
  date: 'a day that exists, such as 2026-11-25',
  datetime: 'a day and time with its offset, such as 2026-11-25T06:30:00Z',
};

function typeWord(type: string): string {
  const words: Record<string, string> = {
    int: 'a whole number',
    number: 'a number',
    string: 'a text in quotes',
    array: 'a list in [ ]',
    object: 'an object in { }',
    boolean: 'true or false',
  };
  return words[type] ?? type;
}

function bound(origin: string, least: string, limit: number): string {
  if (origin === 'string') return `Expected ${least} ${limit} ${limit === 1 ? 'character' : 'characters'}.`;
  if (origin === 'array') return `Expected ${least} ${limit} ${limit === 1 ? 'entry' : 'entries'}.`;
  return `Expected ${least} ${limit}.`;
}

function show(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/** What a sentence is made of beside its words: an escaped brace, or a fact by its name, written in one of the forms below. */
const PARTS = /'([{}][^']*)'|\{(\w+)(?:, (\w+)(?:, (\w+|(?:\w+ \{[^{}]*\} ?)+))?)?\}/g;

const months = 'January February March April May June July August September October November December'.split(' ');

/**
 * Fills in an English sentence. A library does this in `packages/words`; the engine has English only, and a few forms of the Unicode (ICU) message
 * format: `{name}`, `{name, number}` and its styles seconds, duration and share, `{day, date, plain}`, and plural and select with nothing nested.
 * @param sentence the text
 * @param facts what it names; times in milliseconds, shares 0 to 1, days ISO 8601
 * @returns the sentence
 * @example fillSentence('{reps, plural, one {# rep} other {# reps}}', { reps: 2 }) // '2 reps'
 */
export function fillSentence(sentence: string, facts: object): string {
  let parts = read.get(sentence);
  if (!parts) {
    parts = partsOf(sentence);
    read.set(sentence, parts);
  }
  let said = '';
  for (const part of parts) said += typeof part === 'string' ? part : part(facts);
  return said;
}

/** What stands in a sentence as it is, and what a fact is put into. */
type Part = string | ((facts: object) => string);

/** Each sentence is read once: a year of mornings says the same few a thousand times. */
const read = new Map<string, Part[]>();

function partsOf(sentence: string): Part[] {
  const parts: Part[] = [];
  let from = 0;
  for (const { 0: whole, 1: escaped, 2: name = '', 3: kind = '', 4: how = '', index } of sentence.matchAll(PARTS)) {
    parts.push(sentence.slice(from, index), escaped ?? factIn(name, kind, how));
    from = index + whole.length;
  }
  return [...parts, sentence.slice(from)];
}

function factIn(name: string, kind: string, how: string): Part {
  const valueIn = (facts: object): unknown => Reflect.get(facts, name);
  if (kind === 'plural') {
    const [one, other] = [optionOf(how, 'one'), optionOf(how, 'other')];
    return (facts) => (valueIn(facts) === 1 ? one : other).replace('#', String(valueIn(facts)));
  }
  if (kind === 'select') return (facts) => optionOf(how, String(valueIn(facts)));
  return how === '' ? (facts) => String(valueIn(facts)) : (facts) => styles[how as Style](valueIn(facts) as never);
}

function optionOf(options: string, wanted: string): string {
  const wordsOf = (key: string) => new RegExp(`(?:^| )${key} \\{([^{}]*)\\}`).exec(options)?.[1];
  return wordsOf(wanted) ?? wordsOf('other') ?? '';
}

type Style = keyof typeof styles;
const styles = {
  seconds: (ms: number) => `${Math.round(ms / 100) / 10} s`,
  duration: formatSpan,
  share: (ratio: number) => `${Math.round(ratio * 100)} %`,
  ratio: String,
  plain: (day: string) => {
    const at = day.lastIndexOf('-');
    return `${Number(day.slice(at + 1))} ${months[Number(day.slice(at - 2, at)) - 1]}`;
  },
};

/**
 * A span as people say it.
 * @param spanMs milliseconds, at least 0
 * @returns '35 s', '15 min', '15 min 10 s'
 */
export function formatSpan(spanMs: number): string {
  const seconds = Math.round(spanMs / 100) / 10;
  if (seconds < 60) return `${seconds} s`;
  const rest = Math.round((seconds % 60) * 10) / 10;
  return `${Math.floor(seconds / 60)} min${rest === 0 ? '' : ` ${rest} s`}`;
}

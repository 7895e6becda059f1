import { type Complaint, complaintOf, faultMessage } from './fault.ts';
import { type Block, programSchema } from './program.ts';
import { checkBlock } from './program-rules.ts';

/** A block as one line says it: without a title, and without calls and ladder, which a line cannot say. */
export type QuickBlock = Omit<Block, 'title' | 'calls' | 'ladder'>;

/** One thing wrong in a quick line: the stretch of text, UTF-16 units from 0, the end left out. */
export interface QuickLineProblem extends Complaint {
  start: number;
  end: number;
  /** What was found and what was expected, in English. */
  message: string;
}

/** A block, or everything that is wrong with its line. */
export type ParsedQuickLine = { ok: true; block: QuickBlock } | { ok: false; problems: QuickLineProblem[] };

/** Longer than any line that says a block. */
const longestLine = 300;

const number = String.raw`\d+(?:\.\d+)?`;
const time = String.raw`\d+:[0-5]\d(?:\.\d)?|${number}\s*m(?:in)?|${number}\s*s?`;
const end = String.raw`(?![^\s,])`;

/** A word that begins a part, with the value after it; else one word. */
const stray = /(?:(?:set\s+)?rest|hold|draw|let[\s-]down|add)\s+[^\s,a-z][^\s,]*|[^\s,]+/iy;

type Raw = Record<string, unknown>;

/** What one part of a line may look like, the key that it fills, and how it reads. A longer form comes before one that it begins with. */
const parts: { keys: string[]; form: RegExp; read: (found: string, other: string) => Raw }[] = [
  part(['sets', 'reps'], String.raw`(\d+)\s*[x×]\s*(\d+)`, (sets, reps) => ({
    sets: Number(sets),
    reps: Number(reps),
  })),
  part(['setRest'], String.raw`set\s+rest\s+(${time})`, (found) => ({ setRest: secondsOf(found) })),
  part(['rest'], String.raw`rest\s+(${number})\s*[x×]`, (found) => ({ rest: { timesHold: Number(found) } })),
  part(['rest'], String.raw`rest\s+(${time})`, (found) => ({ rest: { seconds: secondsOf(found) } })),
  part(['hold'], String.raw`hold\s+(${time})`, (found) => ({ hold: secondsOf(found) })),
  part(['draw'], String.raw`draw\s+(${time})`, (found) => ({ draw: secondsOf(found) })),
  part(['letDown'], String.raw`let[\s-]down\s+(${time})`, (found) => ({ letDown: secondsOf(found) })),
  part(['letDownTo'], String.raw`to\s+(set-up|rest)`, (letDownTo) => ({ letDownTo: letDownTo.toLowerCase() })),
  part(['countFrom'], String.raw`from\s+anchor`, () => ({ countFrom: 'anchor' })),
  part(['addedWeight'], String.raw`add\s+(${number})(?:\s*lbf?)?`, (found) => ({ addedWeight: Number(found) })),
  part(['hand'], String.raw`(usual|opposite|both)\s+hands?`, (hand) => ({ hand: hand.toLowerCase() })),
  part(['drill'], '(holding|power|flexibility|structure|free)', (drill) => ({ drill: drill.toLowerCase() })),
];

function part(keys: string[], form: string, read: (found: string, other: string) => Raw) {
  return { keys, form: new RegExp(form + end, 'iy'), read };
}

/** What a line may leave out. Three seconds for draw and let-down: common practice, no source. */
const usual = { drill: 'holding', draw: 3, letDown: 3 } as const;

/**
 * Reads a block from one line, such as `3x10 hold 30 rest 2x, set rest 2m`. The grammar is on the quick line page.
 * @param text the line
 * @returns the block with its defaults filled in, or every problem with its stretch of the line
 * @example parseQuickLine('1x5 hold 5 rest 20').ok === true
 */
export function parseQuickLine(text: string): ParsedQuickLine {
  if (text.length > longestLine) {
    const fault = { rule: 'lineTooLong', most: longestLine, length: text.length } as const;
    return { ok: false, problems: [problemOn({ start: longestLine, end: text.length }, { fault })] };
  }
  const { raw, spans, problems } = readParts(text);
  if (problems.length > 0) return refuse(problems); // what was not understood may be what seems to be missing
  const whole = { start: 0, end: text.length };
  for (const [key, example] of [
    ['sets', '3x10'],
    ['hold', 'hold 30'],
    ['rest', 'rest 2x'],
  ] as const) {
    if (!(key in raw)) problems.push(problemOn(whole, { fault: { rule: 'lineLacks', example } }));
  }
  if (problems.length > 0) return refuse(problems);
  const read = programSchema.shape.blocks.element.safeParse({ ...usual, ...raw, title: '-' });
  const spanOf = (path: readonly PropertyKey[]) => spans[String(path[0])] ?? whole;
  if (!read.success) {
    return refuse(
      read.error.issues.map((issue) => problemOn(spanOf(issue.path), complaintOf(issue, foundAt(raw, issue.path)))),
    );
  }
  const broken = checkBlock(read.data, 0, 1);
  if (broken.length > 0)
    return refuse(
      // The one rule of a whole block that a line can break is that of the rest between sets.
      broken.map(({ path, fault }) =>
        problemOn(spanOf(path.slice(2)), { fault: path.length > 2 ? fault : { rule: 'lineSetRest' } }),
      ),
    );
  const { title: _, ...block } = read.data;
  return { ok: true, block };
}

type Span = Pick<QuickLineProblem, 'start' | 'end'>;

function problemOn(span: Span, complaint: Complaint): QuickLineProblem {
  return { ...span, ...complaint, message: faultMessage(complaint) };
}

function foundAt(raw: Raw, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key], raw);
}

function refuse(problems: QuickLineProblem[]): ParsedQuickLine {
  return { ok: false, problems: problems.sort((a, b) => a.start - b.start || a.end - b.end) };
}

function readParts(text: string) {
  const raw: Raw = {};
  const spans: Record<string, { start: number; end: number }> = {};
  const problems: QuickLineProblem[] = [];
  let at = 0;
  const match = (form: RegExp) => {
    form.lastIndex = at;
    return form.exec(text);
  };
  while (true) {
    at += match(/[\s,]*/y)?.[0].length ?? 0;
    if (at >= text.length) return { raw, spans, problems };
    const start = at;
    const known = parts.map((one) => ({ ...one, found: match(one.form) })).find(({ found }) => found);
    const [whole = '', first = '', second = ''] = known?.found ?? match(stray) ?? [];
    at += whole.length;
    const span = { start, end: at };
    if (!known) problems.push(problemOn(span, { fault: { rule: 'notUnderstood', text: whole } }));
    else if (known.keys.some((key) => key in raw))
      problems.push(problemOn(span, { fault: { rule: 'saidTwice', text: whole } }));
    else {
      Object.assign(raw, known.read(first, second));
      for (const key of known.keys) spans[key] = span;
    }
  }
}

function secondsOf(found: string): number {
  const [minutes, seconds] = found.split(':');
  // tenths are the finest, and multiplying a decimal by 60 must not drift from them
  if (seconds !== undefined) return Math.round(Number(minutes) * 600 + Number(seconds) * 10) / 10;
  return /m/i.test(found) ? Math.round(Number.parseFloat(found) * 600) / 10 : Number.parseFloat(found);
}

/**
 * The quick line of a block. Title, calls and ladder are not in it: a line cannot say them.
 * @param block a valid block
 * @returns a line that `parseQuickLine` reads back as the same block
 * @example formatQuickLine(block) // '3x10 hold 30 rest 2x, set rest 2m'
 */
export function formatQuickLine(block: QuickBlock): string {
  const { sets, reps, drill, draw, hold, letDown, rest, setRest, countFrom, letDownTo, hand, addedWeight } = block;
  const said = [
    `${sets}x${reps}`,
    drill !== usual.drill && drill,
    `hold ${timeText(hold)}`,
    'seconds' in rest ? `rest ${timeText(rest.seconds)}` : `rest ${numberText(rest.timesHold)}x`,
  ];
  const more = [
    setRest !== undefined && `set rest ${timeText(setRest)}`,
    draw !== usual.draw && `draw ${timeText(draw)}`,
    letDown !== usual.letDown && `let down ${timeText(letDown)}`,
    countFrom !== undefined && `from ${countFrom}`,
    letDownTo !== 'rest' && `to ${letDownTo}`,
    addedWeight !== 0 && `add ${numberText(addedWeight)} lb`,
    hand !== 'usual' && `${hand} ${hand === 'both' ? 'hands' : 'hand'}`,
  ];
  return [said.filter(Boolean).join(' '), ...more.filter(Boolean)].join(', ');
}

function timeText(seconds: number): string {
  return seconds >= 60 && seconds % 60 === 0 ? `${seconds / 60}m` : numberText(seconds);
}

/** Plain digits: a line knows no exponents. */
function numberText(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20) : text;
}

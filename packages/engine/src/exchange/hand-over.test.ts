import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyWrittenJournal } from '../../../../tests/fixtures/journal/any-journal.ts';
import type { DrillRecord } from '../journal/drill-record.ts';
import type { Journal } from '../journal/journal.ts';
import { programSchema } from '../program/program.ts';
import {
  answerHandOver,
  commentedWeek,
  createHandOver,
  formatHandOver,
  type HandOverInput,
  handOverSchema,
  parseHandOver,
} from './hand-over.ts';

const fixture = readFileSync(new URL('../../../../tests/fixtures/journal/v1.hand-over.json', import.meta.url), 'utf8');
const drill = (id: string, date: string): DrillRecord => ({
  id,
  program: 'Slow mornings',
  date,
  startedAt: `${date}T06:00:00Z`,
  endedAt: `${date}T06:10:00Z`,
  reps: [],
  note: 'private words',
  pain: true,
});
const journal: Journal = {
  drills: [
    drill('before', '2026-03-01'),
    drill('first', '2026-03-02'),
    drill('last', '2026-03-15'),
    drill('after', '2026-03-16'),
    { ...drill('gone', '2026-03-03'), removed: true },
  ],
  days: [
    {
      ...{ date: '2026-03-04', feel: 2, feelWords: 'private words', note: 'private words', pain: true },
      place: 'private words, the hall at the mill',
    },
  ],
  weeks: [
    { week: '2026-W09', focus: 'earlier' },
    { week: '2026-W10', focus: 'Reach', wentRight: 'private words', carriedForward: 'private words' },
    { week: '2026-W12', focus: 'later' },
  ],
  majorGoal: { text: 'Hold steady in wind', editedAt: '2026-01-01T00:00:00Z' },
};
const input: HandOverInput = {
  journal,
  archerId: 'archer-7',
  archer: 'Ida from the hall',
  from: '2026-03-02', // a Monday, ISO week 10
  to: '2026-03-15', // a Sunday, ISO week 11
  madeAt: '2026-03-15T20:00:00Z',
};
const program = programSchema.parse({
  format: 'larkhold/program',
  version: 1,
  title: 'Two weeks lighter',
  tool: 'bow',
  blocks: [
    { title: 'Holds', drill: 'holding', sets: 1, reps: 3, draw: 3, hold: 15, letDown: 3, rest: { seconds: 60 } },
  ],
});
const answer = { by: 'Coach Orla', madeAt: '2026-03-16T08:00:00Z', comment: 'Rest the shoulder.', program };

describe('a hand-over', () => {
  it('holds the span and nothing that was removed', () => {
    const handOver = createHandOver(input);
    expect(handOver.drills.map((record) => record.id)).toEqual(['first', 'last']);
    expect(handOver.weeks.map((page) => page.week)).toEqual(['2026-W10']);
    expect(handOver.days).toHaveLength(1);
    expect(handOver.majorGoal?.text).toBe('Hold steady in wind');
    expect(() => createHandOver({ ...input, to: '2026-03-01' })).toThrow(RangeError);
  });

  it('tells nothing of pain where the archer chose so, and says that it was left out', () => {
    expect(createHandOver(input)).not.toHaveProperty('includesPain');
    expect(createHandOver(input).days[0]?.pain).toBe(true);
    const silent = createHandOver({ ...input, includesPain: false });
    expect(silent.includesPain).toBe(false);
    expect(JSON.stringify([silent.drills, silent.days])).not.toContain('pain');
    const read = parseHandOver(formatHandOver(silent));
    expect(read.ok && read.handOver.includesPain).toBe(false);
  });

  it('keeps notes private unless they are included; pain goes too unless it is left out', () => {
    const handOver = createHandOver(input);
    expect(formatHandOver(handOver)).not.toContain('private words');
    expect(handOver.drills.every((record) => record.pain)).toBe(true);
    expect(handOver.days[0]).toEqual({ date: '2026-03-04', feel: 2, pain: true });
    expect(handOver.weeks[0]).toEqual({ week: '2026-W10', focus: 'Reach' });
    const open = createHandOver({ ...input, includesNotes: true });
    expect(open.drills[0]?.note).toBe('private words');
    expect(open.days[0]?.place).toContain('the hall at the mill');
    expect(open.weeks[0]?.wentRight).toBe('private words');
  });

  it('tells nobody which devices wrote it, nor what only a newer app knows', () => {
    const day = { ...journal.days[0]!, editedAt: '2026-03-04T20:00:00.000Z~phone1', mood: 'private words' };
    const newer = { ...journal, days: [day], strings: [{ id: 's', of: 'private words' }] };
    for (const includesNotes of [false, true]) {
      const text = formatHandOver(createHandOver({ ...input, journal: newer, includesNotes }));
      expect(text).not.toContain('phone1');
      expect(text).not.toContain('mood');
      expect(text).not.toContain('strings');
    }
  });

  it('reads back what was written', () => {
    fc.assert(
      fc.property(anyWrittenJournal, fc.boolean(), (any, includesNotes) => {
        const span = { from: '2025-12-30', to: '2026-10-25' };
        const handOver = createHandOver({ ...input, ...span, journal: any, includesNotes });
        expect(parseHandOver(formatHandOver(handOver))).toEqual({ ok: true, handOver });
        expect(handOverSchema.safeParse(handOver).success).toBe(true);
      }),
    );
  });

  it('of version 1 is read for ever, and written byte for byte as it was', () => {
    const read = parseHandOver(fixture);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.handOver.answers[0]?.program?.blocks[0]?.hold).toBe(15);
    // Its programs are written in the version of the program file that is written now; nothing else differs.
    const today = fixture.replaceAll('"larkhold/program","version":1', '"larkhold/program","version":2');
    expect(formatHandOver(read.handOver)).toBe(today);
  });

  it('comes back with a comment and a program, and the archer’s own records are as they were', () => {
    const handOver = createHandOver(input);
    const read = parseHandOver(formatHandOver(answerHandOver(handOver, answer)));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.handOver.answers).toEqual([answer]);
    expect(read.handOver).toEqual({ ...handOver, answers: [answer] });
    expect(handOver.answers).toEqual([]);
    expect(() => answerHandOver(handOver, { ...answer, by: '' })).toThrow(TypeError);
  });

  it('changes a journal by nothing but the comment on the week page, and only once', () => {
    const returned = answerHandOver(createHandOver(input), answer);
    const page = commentedWeek(journal, returned, '2026-03-16T09:00:00Z');
    expect(page).toEqual({
      week: '2026-W11',
      comment: 'Coach Orla: Rest the shoulder.',
      editedAt: '2026-03-16T09:00:00Z',
    });
    if (page === undefined) return;
    expect(commentedWeek({ ...journal, weeks: [page] }, returned, '2026-03-17T09:00:00Z')).toBeUndefined();
    expect(commentedWeek(journal, createHandOver(input), '2026-03-17T09:00:00Z')).toBeUndefined();
  });

  it('with a bad program in it is refused, and says where', () => {
    const bad = formatHandOver(answerHandOver(createHandOver(input), answer)).replace('"hold":15', '"hold":1500');
    const read = parseHandOver(bad);
    expect(read).toMatchObject({ ok: false, problems: [{ pointer: '/answers/0/program/blocks/0/hold' }] });
  });

  it('may be of one day, and does not say on which device its goal was written', () => {
    const majorGoal = { text: 'Hold steady', editedAt: '2026-01-01T00:00:00.000Z~phone1' };
    const handOver = createHandOver({ ...input, journal: { ...journal, majorGoal }, to: '2026-03-02' });
    expect(handOver.drills.map(({ id }) => id)).toEqual(['first']);
    expect(handOver.majorGoal?.editedAt).toBe('2026-01-01T00:00:00.000Z');
  });

  it('puts a comment after those that the page has, cut to 4,000 characters; an answer without one says nothing', () => {
    const [at, sent] = ['2026-03-16T09:00:00Z', createHandOver(input)];
    const weeks = [{ week: '2026-W11', comment: 'Coach Orla: Breathe.', focus: 'Reach' }];
    const returned = answerHandOver(answerHandOver(sent, { ...answer, comment: '' }), answer);
    expect(commentedWeek({ ...journal, weeks }, returned, at)).toEqual({
      ...{ week: '2026-W11', focus: 'Reach', editedAt: at },
      comment: 'Coach Orla: Breathe.\n\nCoach Orla: Rest the shoulder.',
    });
    // "Coach Orla: " is 12 characters: 3,988 more are whole, one more is cut.
    const long = (count: number) =>
      commentedWeek(journal, answerHandOver(sent, { ...answer, comment: 'x'.repeat(count) }), at)?.comment;
    expect(long(3988)).toBe(`Coach Orla: ${'x'.repeat(3988)}`);
    expect(long(3989)).toBe(`Coach Orla: ${'x'.repeat(3987)}…`);
  });
});

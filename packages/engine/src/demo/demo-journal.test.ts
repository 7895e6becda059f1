import { describe, expect, it } from 'vitest';
import { drillRecordSchema } from '../journal/drill-record.ts';
import { journalSchema } from '../journal/journal.ts';
import { createJournal, mergeJournals } from '../journal/merge-journals.ts';
import { prescribe } from '../prescription/prescribe.ts';
import { builtInPrograms } from '../program/built-in-programs.ts';
import { dayNumber, mondayNumber } from '../units/calendar-day.ts';
import { createDemoJournal, removeDemoJournal } from './demo-journal.ts';

const endDay = '2026-11-25';
const demo = createDemoJournal({ endDay, programs: builtInPrograms });

describe('the invented diary', () => {
  it('is a valid journal, whatever the last day, the program and the seed', () => {
    for (const program of [undefined, ...builtInPrograms.map((one) => one.title)]) {
      for (const [seed, last] of [endDay, '2024-02-29', '2027-01-01'].entries()) {
        const journal = createDemoJournal({ endDay: last, programs: builtInPrograms, program, seed });
        expect(journalSchema.safeParse(journal).error).toBeUndefined();
        for (const drill of journal.drills) drillRecordSchema.parse(drill);
        for (const drill of journal.drills)
          for (const rep of drill.reps) expect(rep.heldMs).toBeLessThanOrEqual(rep.prescribedMs);
      }
    }
  });

  it('is the same for the same input, and another for another seed', () => {
    expect(createDemoJournal({ endDay, programs: builtInPrograms })).toEqual(demo);
    expect(createDemoJournal({ endDay, programs: builtInPrograms, seed: 8 })).not.toEqual(demo);
  });

  it('spans six months up to the last day, with nothing after it and no drill on it', () => {
    const days = [...demo.drills, ...demo.days].map((one) => dayNumber(one.date));
    const last = dayNumber(endDay);
    expect(Math.min(...days)).toBeGreaterThanOrEqual(last - 181);
    expect(Math.min(...days)).toBeLessThan(last - 175);
    expect(Math.max(...days)).toBeLessThanOrEqual(last);
    expect(demo.drills.some((drill) => drill.date === endDay)).toBe(false);
    expect(demo.drills.at(-1)!.date >= '2026-11-20').toBe(true);
  });

  it('drills three or four mornings in most weeks, with one layoff of more than two weeks', () => {
    const byWeek = new Map<number, number>();
    for (const { date } of demo.drills) {
      const monday = mondayNumber(dayNumber(date));
      byWeek.set(monday, (byWeek.get(monday) ?? 0) + 1);
    }
    const counts = [...byWeek.values()];
    expect(Math.max(...counts)).toBeLessThanOrEqual(5);
    // Coming back after the layoff and after the painful drill, the archer is given days without one.
    expect(counts.filter((count) => count === 3 || count === 4).length).toBeGreaterThan(counts.length / 2);
    const numbers = demo.drills.map((drill) => dayNumber(drill.date));
    expect(numbers.filter((number, place) => number - (numbers[place - 1] ?? number) > 14)).toHaveLength(1);
    expect(demo.drills.filter((drill) => drill.pain)).toHaveLength(1);
  });

  it('has early let-downs, but not many, and holds that grow slowly', () => {
    const reps = demo.drills.flatMap((drill) => drill.reps);
    const share = reps.filter((rep) => rep.outcome === 'short').length / reps.length;
    expect(share).toBeGreaterThan(0.005);
    expect(share).toBeLessThan(0.15);
    const longest = (drills: typeof demo.drills) =>
      Math.max(...drills.flatMap((drill) => drill.reps.map((rep) => rep.heldMs)));
    expect(longest(demo.drills.slice(-12))).toBeGreaterThan(longest(demo.drills.slice(0, 12)));
    for (const { effort = 0 } of demo.drills) expect(effort >= 1 && effort <= 10).toBe(true);
  });

  it('uses the titles and ids of the programs it is given', () => {
    for (const drill of demo.drills) {
      const program = builtInPrograms.find((one) => one.title === drill.program);
      expect(program).toBeDefined();
      expect(drill.programId).toBe(program?.id);
      expect(drill.tool).toBe(program?.tool);
    }
    expect(demo.drills.some((drill) => drill.program === 'Baseline test')).toBe(true);
  });

  it('is made by the rules that everybody has, on every morning', () => {
    const astray = demo.drills.filter((drill) => {
      const program = builtInPrograms.find((one) => one.title === drill.program)!;
      const before = demo.drills.filter(({ date }) => date < drill.date);
      const days = demo.days.filter(({ date }) => date < drill.date);
      const today = prescribe({ program, records: before, days, today: drill.date });
      return today.blocks[0]!.holdMs !== drill.reps[0]!.prescribedMs;
    });
    expect(astray.map(({ date }) => date)).toEqual([]);
  });

  it('has a day without a bow in every seven, as bow-international.com, “Ask the experts”, asks for', () => {
    const drawn = new Set(demo.drills.map(({ date }) => dayNumber(date)));
    for (const { date, arrows } of demo.days) if (arrows) drawn.add(dayNumber(date));
    const sevens = [...drawn].filter((day) => [1, 2, 3, 4, 5, 6].every((more) => drawn.has(day + more)));
    expect(sevens).toEqual([]);
  });

  it('has arrows, feel, notes and week pages', () => {
    expect(demo.days.filter((day) => day.arrows).length).toBeGreaterThan(30);
    expect(demo.days.every((day) => (day.feel ?? 0) >= 1)).toBe(true);
    expect(demo.drills.filter((drill) => drill.note).length).toBeGreaterThan(20);
    expect(demo.weeks).toHaveLength(13);
    expect(new Set(demo.weeks.map((week) => week.week)).size).toBe(13);
    expect(new Set(demo.days.map((day) => day.date)).size).toBe(demo.days.length);
    expect(new Set(demo.drills.map((drill) => drill.id)).size).toBe(demo.drills.length);
  });

  it('refuses an unknown program, an invalid day, and an empty rack', () => {
    expect(() => createDemoJournal({ endDay, programs: builtInPrograms, program: 'No such' })).toThrow(/No such/);
    expect(() => createDemoJournal({ endDay: '2026-02-30', programs: builtInPrograms })).toThrow(RangeError);
    expect(() => createDemoJournal({ endDay, programs: [] })).toThrow(/programs is empty/);
  });
});

describe('taking the invented diary out again', () => {
  it('leaves nothing of it', () => {
    const { drills, days, weeks, majorGoal } = removeDemoJournal(mergeJournals(createJournal(), demo), demo);
    expect({ drills, days, weeks, majorGoal }).toEqual({ drills: [], days: [], weeks: [], majorGoal: undefined });
  });

  it('keeps what the archer wrote, on the same days too, for it wins over what was invented', () => {
    const own = {
      drills: [{ ...demo.drills[0]!, id: 'mine', editedAt: '2026-11-25T08:00:00Z' }],
      days: [{ date: demo.days[0]!.date, feel: 1, editedAt: '2026-11-25T08:00:00Z' }],
      weeks: [{ week: demo.weeks[0]!.week, focus: 'Mine', editedAt: '2026-11-25T08:00:00Z' }],
      majorGoal: { text: 'Mine', editedAt: '2026-11-25T08:00:00Z' },
    };
    expect(removeDemoJournal(mergeJournals(own, demo), demo)).toEqual(own);
  });
});

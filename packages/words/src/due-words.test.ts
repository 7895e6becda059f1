import { builtInPrograms, prescribe, type RestReason, type SeasonNotice } from '@larkhold/engine';
import { expect, it } from 'vitest';
import { createWords } from './create-words.ts';
import { dueWords, lighterWords, noticeWords, restWords } from './due-words.ts';
import { leadsWords, reasonWithoutNext } from './leads-words.ts';

const [english, german] = [createWords('en-GB'), createWords('de-DE')];
const weekday = { rule: 'weekday', block: 'Base', week: 4, ofWeeks: 6 } as const;
const coach = { rule: 'coach', by: 'Kim', madeAt: '2026-11-01T10:00:00Z' } as const;
const rests: RestReason[] = [
  { rule: 'pain', day: '2026-11-25' },
  { rule: 'competition', title: 'Club shoot', day: '2026-11-25' },
  { rule: 'dayBeforeCompetition', title: 'Club shoot', day: '2026-11-26' },
  { rule: 'restDay', from: '2026-12-24', to: '2026-12-27' },
  { rule: 'restDay', from: '2026-12-24', to: '2026-12-27', why: 'family' },
  { rule: 'daysInRow', days: 6 },
  { rule: 'youngDayBetween', ageYears: 13, lastDrawDay: '2026-11-24' },
  { rule: 'noSession', planner: weekday, nextDay: '2026-11-27' },
  { rule: 'noSession', planner: weekday },
  { rule: 'noSession', planner: coach, nextDay: '2026-11-27' },
  { rule: 'noSession', planner: coach },
  { rule: 'programMissing', titles: ['Power', 'Evening'] },
  { rule: 'outsideSeason', nextDay: '2026-12-01' },
  { rule: 'outsideSeason' },
];
const notices = [
  { rule: 'blocksOverlap', from: '2026-11-02', to: '2026-11-08', title: 'Base', wins: 'Peak' },
  { rule: 'answersOverlap', from: '2026-11-02', to: '2026-11-08', by: 'Kim', wins: '2026-11-01T10:00:00Z' },
  { rule: 'testNearCompetition', day: '2026-11-02', title: 'Baseline test' },
  { rule: 'testOnRestDay', day: '2026-11-02', title: 'Baseline test' },
  { rule: 'notATest', day: '2026-11-02', title: 'Holding' },
  { rule: 'everyDay', title: 'Base' },
  { rule: 'sessionOnRestDay', day: '2026-11-02', by: 'Kim' },
  { rule: 'programMissing', title: 'Power' },
].map((notice) => ({ pointer: '', message: '', ...notice }) as SeasonNotice);

it('says every rest and every notice in both languages, each in its own words', () => {
  for (const words of [english, german]) {
    const said = [
      ...rests.map((reason) => restWords(reason, { isOwn: true }, words)),
      ...notices.map((notice) => noticeWords(notice, words)),
    ];
    expect(new Set(said).size).toBe(said.length);
    for (const sentence of said) expect(sentence).toMatch(/^\S.*[.]$/);
    expect(said.join(' ')).not.toMatch(/undefined|\{|\}/);
  }
  const all = (words: typeof english) => rests.map((reason) => restWords(reason, { isOwn: true }, words));
  for (const [at, sentence] of all(english).entries()) expect(sentence).not.toBe(all(german)[at]);
});

it('says who planned a day and why it is lighter', () => {
  const program = { title: 'Holding' };
  const lighter = { rule: 'lighterWeek', block: 'Base', week: 4, ofWeeks: 6, keepRatio: 0.6 } as const;
  const due = { kind: 'program', program, because: weekday, lighter } as const;
  expect(dueWords(due, { isOwn: true }, english)).toEqual([
    'Week 4 of 6 in “Base”.',
    'A lighter week: 60\u00a0% of the reps.',
  ]);
  expect(dueWords(due, { isOwn: false }, english)[0]).toMatch(/^Two or three mornings a week/);
  expect(dueWords({ kind: 'program', program, because: coach }, { isOwn: false }, german)).toEqual([
    'Kim hat diesen Tag für dich geschrieben.',
  ]);
  const taper = { rule: 'taper', competition: 'County', day: '2026-12-05', daysLeft: 3, keepRatio: 0.5 } as const;
  expect(lighterWords(taper, english)).toBe('“County” is on 5 December: 50\u00a0% of the reps until then.');
  const test = { kind: 'test', program: { title: 'Baseline test' } } as const;
  const late = (lateDays: number) =>
    dueWords({ ...test, because: { rule: 'test', day: '2026-11-20', lateDays } }, { isOwn: true }, english)[0];
  expect(late(0)).toMatch(/due today/);
  expect(late(5)).toMatch(/20 November/);
});

it('says what today counts for and what leads on in one place, and leaves it out of the reasons there', () => {
  const program = builtInPrograms.find(({ title }) => title === 'Holding')!;
  const input = { program, records: [], today: '2026-11-25', archer: { longestHoldSeconds: 60 } };
  const whole = prescribe(input);
  expect(leadsWords(whole, english)).toHaveLength(1);
  expect(leadsWords(whole, english)[0]).toMatch(/counts in full\. .*lead.* on: /);
  expect(leadsWords(prescribe({ ...input, minutes: 3 }), english)[0]).toMatch(/holds the place/);
  const lighter = { rule: 'lighterWeek', keepRatio: 0.2, block: 'Base', week: 3, ofWeeks: 4 } as const;
  expect(leadsWords(prescribe({ ...input, lighter }), english)[0]).toMatch(/holds the place and does not climb/);
  expect(leadsWords(prescribe({ ...input, lighter }), german)[0]).toMatch(/hält es die Stufe und steigt nicht/);
  const without = whole.reasons.map((reason) => reasonWithoutNext(reason, english)).join(' ');
  expect(without).not.toMatch(/leads? on/);
  const hurt = prescribe({ ...input, days: [{ date: '2026-11-25', pain: true }] });
  expect(leadsWords(hurt, english)).toEqual([]);
});

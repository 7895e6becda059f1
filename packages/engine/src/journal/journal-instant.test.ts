import { expect, it } from 'vitest';
import { drillRecordSchema } from './drill-record.ts';
import { dayEntrySchema, journalSchema, milestoneSchema, noteScrapSchema, weekPageSchema } from './journal.ts';
import { journalInstantSchema } from './journal-instant.ts';

// ISO 8601:2004, 4.2 and 4.3: hours to 23 (24 only as midnight, which we don't write), minutes and seconds to 59. Offsets reach +14:00
// (Line Islands, IANA time zone database, Pacific/Kiritimati).
it.each([
  '2026-11-25T06:30:00Z',
  '2026-11-25T06:30Z',
  '2026-11-25T06:30:00.123456Z',
  '2028-02-29T23:59:59.999+14:00',
  '1900-01-01T00:00:00-12:00',
])('%s is an instant', (text) => expect(journalInstantSchema.safeParse(text).success).toBe(true));

it.each([
  '2026-11-25T25:00:00Z',
  '2026-11-25T24:00:00Z',
  '2026-11-25T06:60:00Z',
  '2026-11-25T06:30:61Z',
  '2026-02-29T06:30:00Z',
  '2026-11-25T06:30:00+15:00',
  '2026-11-25T06:30:00+01:75',
  '2026-11-25T06:30:00',
  '2026-11-25',
  '3000-01-01T00:00:00Z',
  '0026-11-25T06:30:00Z',
  'yesterday evening',
  '',
  `2026-11-25T06:30:00.${'0'.repeat(50)}Z`,
])('%s is no instant', (text) => expect(journalInstantSchema.safeParse(text).success).toBe(false));

const drill = {
  id: 'a',
  program: 'P',
  date: '2026-11-25',
  reps: [],
  startedAt: '2026-11-25T06:30:00Z',
  endedAt: '2026-11-25T06:40:00Z',
};
const odd = '2026-11-25T25:00:00Z';

it.each([
  ['a drill’s start', drillRecordSchema, { ...drill, startedAt: odd }, 'startedAt'],
  ['a drill’s end', drillRecordSchema, { ...drill, endedAt: odd }, 'endedAt'],
  ['a drill’s edit', drillRecordSchema, { ...drill, editedAt: odd }, 'editedAt'],
  ['a day', dayEntrySchema, { date: '2026-11-25', editedAt: odd }, 'editedAt'],
  ['a week', weekPageSchema, { week: '2026-W48', editedAt: odd }, 'editedAt'],
  ['a scrap’s making', noteScrapSchema, { id: 'n', madeAt: 'on a rainy evening' }, 'madeAt'],
  ['a scrap’s edit', noteScrapSchema, { id: 'n', madeAt: drill.startedAt, editedAt: odd }, 'editedAt'],
  ['a milestone', milestoneSchema, { id: 'm', text: 'A minute', setDay: '2026-11-25', editedAt: odd }, 'editedAt'],
  [
    'the goal',
    journalSchema,
    { drills: [], days: [], weeks: [], majorGoal: { text: 'Calm', editedAt: odd } },
    'majorGoal/editedAt',
  ],
])('%s at hour 25 or in words is refused, with its place', (_, schema, value, path) => {
  const { error } = schema.safeParse(value);
  expect(error?.issues.map((issue) => issue.path.join('/'))).toEqual([path]);
  expect(error?.issues[0]?.message).toContain('such as 2026-11-25T06:30:00Z');
});

it.each([
  ['a drill', drillRecordSchema, { ...drill, id: 'half \ud83c' }, 'id'],
  ['a scrap', noteScrapSchema, { id: '\udfff', madeAt: drill.startedAt }, 'id'],
  ['a milestone', milestoneSchema, { id: 'm\ud800', text: 'A minute', setDay: '2026-11-25' }, 'id'],
])('%s whose id holds half a character is refused; a whole one is accepted', (_, schema, value, path) => {
  expect(schema.safeParse(value).error?.issues.map((issue) => issue.path.join('/'))).toEqual([path]);
  expect(schema.safeParse({ ...value, id: '🏹' }).success).toBe(true);
});

// ISO 8601: 2026 has 53 weeks, 2025 has 52.
it.each([
  ['2026-W53', true],
  ['2025-W53', false],
  ['2026-W00', false],
  ['2026-W99', false],
  ['0026-W10', false],
])('the week %s: %s', (week, isGood) => expect(weekPageSchema.safeParse({ week }).success).toBe(isGood));

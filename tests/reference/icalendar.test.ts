// RFC 5545, read back by ical.js, an independent reader.
import { type DrillRecord, formatCalendar, type Journal } from '@larkhold/engine';
import { calendarWords, createWords } from '@larkhold/words';
import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { anyJournal } from '../fixtures/journal/any-journal.ts';

const madeAt = '2026-11-01T12:00:00+01:00';
const record: DrillRecord = {
  id: 'd-1',
  program: 'Slow; steady, and \\ back',
  date: '2026-10-25',
  // The clock goes back an hour in mid-drill (European Union: last Sunday of October, 01:00 UTC); the drill takes 40 minutes.
  startedAt: '2026-10-25T02:30:00+02:00',
  endedAt: '2026-10-25T02:10:00.500+01:00',
  reps: [
    { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 30_000, heldMs: 30_000, outcome: 'held' },
    { block: 0, set: 0, rep: 1, hand: 'usual', prescribedMs: 30_000, heldMs: 28_400, outcome: 'short' },
  ],
  effort: 6,
  note: `Line one\nline two 🏹 ${'é'.repeat(200)}${'x'.repeat(200)}`,
  editedAt: '2026-10-25T01:12:00Z',
};
const journal: Journal = {
  drills: [record, { ...record, id: 'gone', removed: true }],
  days: [{ date: '2026-12-31', arrows: [{ kind: 'blank bale', count: 60 }], note: 'private' }],
  weeks: [],
};
const eventsOf = (text: string): ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));

const words = calendarWords(createWords('en-GB'));
const plain = (text = ''): string => text.replaceAll('\u00a0', ' ');

describe('iCalendar', () => {
  it('gives each drill at its time, in UTC', () => {
    const [drill] = eventsOf(formatCalendar(journal, { madeAt, words, includesNotes: true }));
    expect(drill?.startDate.toJSDate().toISOString()).toBe('2026-10-25T00:30:00.000Z');
    expect(drill?.endDate.toJSDate().toISOString()).toBe('2026-10-25T01:10:00.000Z');
    expect(drill?.summary).toBe('Slow; steady, and \\ back: 1 of 2 held');
    expect(plain(drill?.description)).toBe(`58 s at full draw. Effort 6 of 10.\n${record.note}`);
    expect(drill?.component.getFirstPropertyValue('dtstamp')?.toString()).toBe('2026-11-01T11:00:00Z');
    expect(drill?.component.getFirstPropertyValue('last-modified')?.toString()).toBe('2026-10-25T01:12:00Z');
  });

  it('gives each day’s shooting as an all-day event', () => {
    const day = eventsOf(formatCalendar(journal, { madeAt, words }))[1];
    expect(day?.startDate.isDate).toBe(true);
    expect(day?.startDate.toString()).toBe('2026-12-31');
    expect(day?.endDate.toString()).toBe('2027-01-01'); // RFC 5545, 3.6.1: a DATE without an end lasts one day
    expect(plain(day?.summary)).toBe('60 arrows, blank bale');
    const german = eventsOf(formatCalendar(journal, { madeAt, words: calendarWords(createWords('de')) }));
    expect(german.map(({ summary }) => plain(summary))).toEqual([
      'Slow; steady, and \\ back: 1 von 2 gehalten',
      '60 Pfeile, leere Scheibe',
    ]);
  });

  it('leaves notes out unless they are asked for', () => {
    const text = formatCalendar(journal, { madeAt, words });
    expect(text).not.toContain('private');
    expect(text).not.toContain('Line one');
    expect(formatCalendar(journal, { madeAt, words, includesNotes: true })).toContain('private');
  });

  it('folds a long text over many lines, none over 75 octets, none inside a character (3.1)', () => {
    const lines = formatCalendar(journal, { madeAt, words, includesNotes: true }).split('\r\n');
    expect(lines.filter((line) => line.startsWith(' ')).length).toBeGreaterThan(5);
    const octets = lines.map((line) => new TextEncoder().encode(line).length);
    expect(Math.max(...octets)).toBeLessThanOrEqual(75);
    expect(Math.max(...octets)).toBe(75);
    for (const line of lines) expect(line).not.toMatch(/\p{Surrogate}/u);
  });

  it('of any journal reads back: one event a drill, each UID once, lines of at most 75 octets ended by CRLF (3.1)', () => {
    fc.assert(
      fc.property(anyJournal, fc.boolean(), (any, includesNotes) => {
        const drills = [...new Map(any.drills.map((one) => [one.id, one])).values()];
        const days = [...new Map(any.days.map((one) => [one.date, one])).values()];
        const text = formatCalendar({ ...any, drills, days }, { madeAt, words, includesNotes });
        const lines = text.split('\r\n');
        expect(lines.pop()).toBe('');
        for (const line of lines) {
          expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
          expect(line).not.toMatch(/[\r\n]/);
        }
        const events = eventsOf(text);
        const drillEvents = events.filter((event) => event.uid.includes('@drill'));
        const standing = drills.filter((one) => !one.removed);
        expect(drillEvents.map((event) => event.uid)).toEqual(
          standing.map((one) => `${one.id}@drill.larkhold.invalid`),
        );
        expect(new Set(events.map((event) => event.uid)).size).toBe(events.length);
        for (const event of drillEvents) expect(event.endDate.compare(event.startDate)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('refuses a stamp that is not an instant', () => {
    expect(() => formatCalendar(journal, { madeAt: 'now', words })).toThrow(RangeError);
  });
});

describe('two archers with one history in one calendar (RFC 5545, 3.8.4.7: a UID is globally unique)', () => {
  const uidsOf = (theirs: Journal, archerId?: string): string[] =>
    eventsOf(formatCalendar(theirs, { madeAt, words, ...(archerId !== undefined && { archerId }) })).map(
      ({ uid }) => uid,
    );

  it('share no UID', () => {
    const [ada, bo] = [uidsOf(journal, 'ada'), uidsOf(journal, 'bo')];
    expect(ada).toHaveLength(2);
    expect(ada.filter((uid) => bo.includes(uid))).toEqual([]);
  });

  it('share no UID of a day where no file names its archer; a longer journal of one archer keeps its own', () => {
    const later = { ...record, id: 'a-later', date: '2026-12-30', startedAt: '2026-12-30T06:30:00+01:00' };
    const [ada, bo] = [journal, { ...journal, drills: [{ ...record, id: 'd-2' }] }];
    const ofAda = uidsOf(ada);
    expect(ofAda.filter((uid) => uidsOf(bo).includes(uid))).toEqual([]);
    expect(uidsOf({ ...ada, drills: [later, ...ada.drills] })).toEqual(expect.arrayContaining(ofAda));
  });
});

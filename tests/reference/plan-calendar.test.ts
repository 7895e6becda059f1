import { builtInPrograms, formatPlanCalendar, planWeeks } from '@larkhold/engine';
import { createWords, planCalendarWords } from '@larkhold/words';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';

// RFC 5545, read back by ical.js, an independent reader.

const words = planCalendarWords('metric', createWords('en-GB'));
const madeAt = '2026-11-25T07:00:00+01:00';
const program = builtInPrograms.find(({ title }) => title === 'Holding')!;
const plan = (today = '2026-11-25') =>
  planWeeks({ program, records: [], today, weeks: 8, daysPerWeek: 3, competitionDay: '2027-01-10' });
const text = formatPlanCalendar(plan(), { program: program.title, programId: program.id, madeAt, words });
const eventsOf = (file: string): ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(file)).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));

const plain = (text = ''): string => text.replaceAll('\u00a0', ' ');

describe('the plan as iCalendar', () => {
  it('has an all-day event for every row, on its day', () => {
    const rows = plan();
    const events = eventsOf(text);
    expect(events.map((event) => event.startDate.toString())).toEqual(rows.map(({ date }) => date));
    expect(events.every((event) => event.startDate.isDate)).toBe(true);
    expect(plain(events[0]?.summary)).toBe('Holding: Full-draw holds 2 × 10, hold 30 s');
    // 2 × 10 × 30 s are 10 min.
    expect(plain(events[0]?.description)).toMatch(
      /^Full-draw holds 2 × 10, hold 30 s\. 10 min at full draw, \d+ min in all\. A forecast: what is really held changes it\.$/,
    );
    expect(events.find((event) => event.startDate.toString() === '2027-01-10')?.summary).toBe('Competition');
  });

  it('has each UID once, the same in a later file, and a stamp (3.8.4.7, 3.8.7.2)', () => {
    const events = eventsOf(text);
    const uids = events.map((event) => event.uid);
    expect(new Set(uids).size).toBe(uids.length);
    const later = formatPlanCalendar(plan('2026-12-01'), {
      program: program.title,
      programId: program.id,
      madeAt,
      words,
    });
    const shared = eventsOf(later).filter((event) => event.startDate.toString() <= '2027-01-10');
    for (const event of shared) expect(uids).toContain(event.uid);
    for (const { component } of events) {
      expect(component.getFirstPropertyValue('dtstamp')?.toString()).toBe('2026-11-25T06:00:00Z');
    }
  });

  it('ends lines in CRLF and folds them at 75 octets (3.1)', () => {
    const lines = text.split('\r\n');
    expect(lines.pop()).toBe('');
    for (const line of lines) {
      expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
      expect(line).not.toMatch(/[\r\n]/);
    }
  });

  it('takes any title', () => {
    const title = 'Slow; steady, \\ and "back"\nagain 🏹';
    const [event] = eventsOf(formatPlanCalendar(plan().slice(0, 1), { program: title, madeAt, words }));
    expect(plain(event?.summary)).toBe(`${title}: Full-draw holds 2 × 10, hold 30 s`);
  });

  it('is in the language that is asked for', () => {
    const german = planCalendarWords('metric', createWords('de'));
    const [event] = eventsOf(formatPlanCalendar(plan(), { program: 'Halten', madeAt, words: german }));
    expect(plain(event?.summary)).toBe('Halten: Full-draw holds 2 × 10, 30 s halten'); // the file's own title stays
    expect(plain(event?.description)).toMatch(/10 min im Vollauszug, insgesamt \d+ min\. Eine Vorhersage/);
    const all = eventsOf(formatPlanCalendar(plan(), { program: 'Halten', madeAt, words: german }));
    expect(all.find(({ startDate }) => startDate.toString() === '2027-01-10')?.summary).toBe('Wettkampf');
  });

  it('refuses a stamp that is no instant', () => {
    expect(() => formatPlanCalendar([], { program: 'x', madeAt: 'now', words })).toThrow(RangeError);
  });
});

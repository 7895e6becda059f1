import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareStamps, laterStamp, stampAfter, withoutDevice } from './stamp.ts';

const instant = fc
  .date({ min: new Date('1970-01-01'), max: new Date('9998-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString());
const device = fc.option(fc.constantFrom('phone1', 'tablet'), { nil: undefined });

describe('a stamp', () => {
  it('is the instant where that is later, and later than what it edits in any case', () => {
    fc.assert(
      fc.property(instant, instant, device, (now, before, name) => {
        const stamp = stampAfter(now, before, name);
        expect(compareStamps(stamp, before)).toBeGreaterThan(0);
        expect(Date.parse(withoutDevice(stamp))).toBe(Math.max(Date.parse(now), Date.parse(before) + 1));
      }),
    );
  });

  it('of a far year counts on by a whole millisecond too', () => {
    expect(stampAfter('1970-01-01T00:00:00.000Z', '4164-08-23T08:29:46.536Z')).toBe('4164-08-23T08:29:46.537Z');
  });

  it('of a clock that has stopped, or goes back by a year, counts on in milliseconds', () => {
    let last = stampAfter('2026-11-25T06:00:00.999Z', undefined, 'phone1');
    for (const now of ['2026-11-25T06:00:00.999Z', '2025-11-25T06:00:00.000Z', '1970-01-01T00:00:00.000Z']) {
      const next = stampAfter(now, last, 'phone1');
      expect(Date.parse(withoutDevice(next))).toBe(Date.parse(withoutDevice(last)) + 1);
      last = next;
    }
    expect(last).toBe('2026-11-25T06:00:01.002Z~phone1');
  });

  it('of an instant that nobody can read is made again, and the end of time does not break it', () => {
    expect(stampAfter('2026-11-25T06:00:00.000Z', 'yesterday')).toBe('2026-11-25T06:00:00.000Z');
    expect(stampAfter('2026-11-25T06:00:00.000Z', '9999-12-31T23:59:59.999Z')).toBe('9999-12-31T23:59:59.999Z');
  });

  it('of one instant is told from another by the device', () => {
    const [phone, tablet] = ['2026-11-25T06:00:00.000Z~phone1', '2026-11-25T06:00:00.000Z~tablet'];
    expect(compareStamps(phone, tablet)).toBeLessThan(0);
    expect(laterStamp(phone, tablet)).toBe(tablet);
    expect(laterStamp(tablet, phone)).toBe(tablet);
    expect(compareStamps('2026-11-25T06:00:00.001Z~phone1', tablet)).toBeGreaterThan(0);
  });
});

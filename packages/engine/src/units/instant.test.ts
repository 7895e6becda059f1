import fc from 'fast-check';
import { DateTime, FixedOffsetZone } from 'luxon';
import { describe, expect, it } from 'vitest';
import { addToInstant, dayOfInstant } from './instant.ts';

describe('addToInstant', () => {
  it('agrees with luxon over two centuries and any offset', () => {
    const minutes = fc.integer({ min: -14 * 60, max: 14 * 60 });
    const start = fc.integer({ min: Date.UTC(1950, 0, 1), max: Date.UTC(2150, 0, 1) });
    fc.assert(
      fc.property(start, minutes, fc.integer({ min: 0, max: 40 * 86_400_000 }), (atMs, offsetMinutes, spanMs) => {
        const instant = DateTime.fromMillis(atMs, { zone: 'utc' }).setZone(FixedOffsetZone.instance(offsetMinutes));
        const zone = { setZone: true };
        const later = addToInstant(instant.toFormat("yyyy-MM-dd'T'HH:mm:ss.SSSZZ"), spanMs);
        const wanted = DateTime.fromMillis(atMs + spanMs).setZone(FixedOffsetZone.instance(offsetMinutes));
        expect(later.slice(0, 23)).toBe(wanted.toFormat("yyyy-MM-dd'T'HH:mm:ss.SSS"));
        expect(DateTime.fromISO(later, zone).toMillis()).toBe(atMs + spanMs);
      }),
      { seed: 19, numRuns: 500 },
    );
  });

  it('keeps the offset as it was written', () => {
    expect(addToInstant('2026-12-31T23:59:59Z', 1500)).toBe('2027-01-01T00:00:00.500Z');
    expect(addToInstant('2026-12-31T23:59+01:00', 60_000)).toBe('2027-01-01T00:00:00.000+01:00');
  });

  it('refuses what is no instant', () => {
    for (const wrong of ['', '2026-11-25', '2026-02-29T10:00:00Z', '2026-11-25T25:00:00Z', 'yesterday']) {
      expect(() => addToInstant(wrong, 0)).toThrow(RangeError);
    }
    expect(() => addToInstant('2026-11-25T10:00:00Z', Number.NaN)).toThrow(RangeError);
  });
});

describe('dayOfInstant', () => {
  it('is the day where the archer is, not the day in Greenwich', () => {
    expect(dayOfInstant('2026-11-26T00:30:00+13:00')).toBe('2026-11-26');
    expect(dayOfInstant('2026-11-25T23:30:00-08:00')).toBe('2026-11-25');
  });
});

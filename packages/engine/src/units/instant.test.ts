import fc from 'fast-check';
import { DateTime, FixedOffsetZone } from 'luxon';
import { describe, expect, it } from 'vitest';
import { addToInstant, dayOfInstant, instantMs, readInstant } from './instant.ts';

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

describe('instantMs', () => {
  const two = (most: number) => fc.integer({ min: 0, max: most }).map((number) => String(number).padStart(2, '0'));
  const anyInstant = fc
    .tuple(
      fc.integer({ min: 0, max: 3000 }).map((year) => String(year).padStart(4, '0')),
      fc.tuple(two(13), two(32)),
      fc.tuple(two(24), two(60), fc.option(two(60))),
      fc.constantFrom('', '.1', '.123', ',123', '.1234567', '.x12'),
      fc.constantFrom('Z', '+01:00', '-14:00', '+14:30', '+0530', '-05:70', '', '+1:00'),
    )
    .map(([year, [month, day], [hour, minute, second], fraction, offset]) => {
      return `${year}-${month}-${day}T${hour}:${minute}${second === null ? '' : `:${second}${fraction}`}${offset}`;
    });

  it('says the same as the whole pattern, of real instants and of what is nearly one', () => {
    fc.assert(
      fc.property(
        anyInstant,
        fc.option(fc.tuple(fc.nat(25), fc.constantFrom('9', '-', ':', ' ', 'x'))),
        (text, slip) => {
          const found = slip === null ? text : `${text.slice(0, slip[0])}${slip[1]}${text.slice(slip[0] + 1)}`;
          const read = readInstant(found);
          const wanted = read && read.offset !== '' ? read.localMs - read.offsetMinutes * 60_000 : -Infinity;
          expect(instantMs(found)).toBe(wanted);
        },
      ),
      { seed: 320, numRuns: 3000 },
    );
  });

  it('agrees with luxon', () => {
    for (const text of ['2026-11-25T06:30:00Z', '2024-02-29T23:59:59.999-09:30', '1999-12-31T00:00:00.001+14:00']) {
      expect(instantMs(text)).toBe(DateTime.fromISO(text).toMillis());
    }
  });
});

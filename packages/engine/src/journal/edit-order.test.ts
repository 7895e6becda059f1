import { describe, expect, it } from 'vitest';
import { compareInstants, DEVICE_MARK, isSame, stampMs } from './edit-order.ts';
import { compareStamps, compareText, laterStamp, withoutDevice } from './stamp.ts';

describe('the order of instants', () => {
  it('is that of time, not of text, and the device does not count', () => {
    expect(compareInstants('2026-11-25T07:00:00+02:00', '2026-11-25T06:00:00Z')).toBe(-1); // 05:00 in UTC
    expect(compareInstants('2026-11-25T06:00:00Z', '2026-11-25T07:00:00+02:00')).toBe(1);
    expect(compareInstants('2026-11-25T07:00:00+02:00', '2026-11-25T05:00:00.000Z')).toBe(0);
    expect(compareInstants('2026-11-25T06:00:00Z~b2', '2026-11-25T06:00:00Z~a1')).toBe(0);
    expect(compareInstants('2026-11-25T06:00:00Z', '2026-11-25T06:00:00Z')).toBe(0);
  });

  it('puts what is absent or unreadable before all, and alike', () => {
    expect(compareInstants(undefined, '1900-01-01T00:00:00Z')).toBe(-1);
    expect(compareInstants('1900-01-01T00:00:00Z', undefined)).toBe(1);
    expect(compareInstants('', undefined)).toBe(0);
    expect(compareInstants('yesterday', undefined)).toBe(0);
  });
});

describe('where a stamp is in time', () => {
  it('is in milliseconds from 1970, without the device', () => {
    expect(stampMs('1970-01-01T00:00:01.500Z')).toBe(1500);
    expect(stampMs('1970-01-01T00:00:01.500Z~phone1')).toBe(1500);
    expect(stampMs('1970-01-01T01:00:00+01:00~phone1')).toBe(0);
  });

  it('is before all where it is missing, or where only a device is named', () => {
    for (const stamp of [undefined, '', 'yesterday', '~phone1', '~1970-01-01T00:00:00Z'])
      expect(stampMs(stamp)).toBe(Number.NEGATIVE_INFINITY);
  });
});

describe('two values', () => {
  it.each([
    [1, 1, true],
    ['a', 'a', true],
    [1, '1', false],
    [null, null, true],
    [null, undefined, false],
    [null, {}, false],
    [{}, null, false],
    [{}, 1, false],
    [1, {}, false],
    [[], {}, false],
    [{}, [], false],
    [{}, {}, true],
    [[], [], true],
    [{ a: undefined }, {}, true],
    [{}, { a: undefined }, true],
    [{ a: undefined }, { b: undefined }, true],
    [{ a: 1 }, { b: 1 }, false],
    [{ a: 1, b: 2 }, { a: 1 }, false],
    [{ a: { b: [1] } }, { a: { b: [1] } }, true],
    [{ a: { b: [1] } }, { a: { b: [2] } }, false],
    [[undefined, 1], [undefined, 1], true],
    [[1, [2, 3]], [1, [2, 4]], false],
    [{ a: null }, {}, false],
    [{}, { a: null }, false],
  ])('%j and %j are the same: %s', (a, b, same) => {
    expect(isSame(a, b)).toBe(same);
  });
});

describe('the order of stamps', () => {
  const [a1, b2] = ['2026-11-25T06:00:00Z~a1', '2026-11-25T06:00:00Z~b2'];

  it('is that of their instants, then of their texts', () => {
    expect(compareStamps('2026-11-25T07:00:00+02:00~z9', a1)).toBe(-1);
    expect(compareStamps(a1, '2026-11-25T07:00:00+02:00~z9')).toBe(1);
    expect(compareStamps(a1, b2)).toBe(-1);
    expect(compareStamps(b2, a1)).toBe(1);
    expect(compareStamps(a1, a1)).toBe(0);
  });

  it('knows no difference between none and an empty one, and puts both first', () => {
    expect(compareStamps(undefined, '')).toBe(0);
    expect(compareStamps('', undefined)).toBe(0);
    expect(compareStamps(undefined, 'x')).toBe(-1);
    expect(compareStamps('x', undefined)).toBe(1);
    expect(laterStamp(undefined, '')).toBe('');
    expect(laterStamp('', undefined)).toBe('');
    expect(laterStamp(undefined, undefined)).toBeUndefined();
    expect(laterStamp(a1, undefined)).toBe(a1);
    expect(laterStamp(undefined, a1)).toBe(a1);
  });

  it('a stamp without its device is the part before the mark', () => {
    expect(DEVICE_MARK).toBe('~');
    expect(withoutDevice(a1)).toBe('2026-11-25T06:00:00Z');
    expect(withoutDevice('2026-11-25T06:00:00Z')).toBe('2026-11-25T06:00:00Z');
    expect(withoutDevice('~a1')).toBe('');
  });

  it('texts are ordered by their code units', () => {
    expect([compareText('a', 'a'), compareText('B', 'a'), compareText('b', 'a')]).toEqual([0, -1, 1]);
  });
});

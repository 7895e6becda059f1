import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createClockMap, readClocks } from './clock-map.ts';

describe('createClockMap', () => {
  it('sees past the steps of a stepped clock', () => {
    // A clock 0.25 s behind the page that moves in steps of 10 ms and so reads up to 10 ms late.
    const map = createClockMap();
    for (let pageMs = 1003; pageMs < 4000; pageMs += 53) {
      map.add({ pageMs, audioSeconds: Math.floor((pageMs - 250) / 10) / 100, isExact: false });
    }
    expect(Math.abs(map.toAudio(5000)! - 4.75)).toBeLessThan(0.002);
  });

  it('takes the middle of exact readings, so that one wrong stamp moves nothing', () => {
    const map = createClockMap();
    for (const [pageMs, offsetMs] of [
      [1000, -100],
      [1200, -100],
      [1400, -60],
      [1600, -100],
    ] as const) {
      map.add({ pageMs, audioSeconds: (pageMs + offsetMs) / 1000, isExact: true });
    }
    expect(map.toAudio(2000)).toBeCloseTo(1.9, 9);
  });

  it('follows a clock that runs too fast, and one that lost a step', () => {
    const map = createClockMap();
    const add = (pageMs: number, audioMs: number) => map.add({ pageMs, audioSeconds: audioMs / 1000, isExact: true });
    for (let pageMs = 0; pageMs <= 60_000; pageMs += 50) add(pageMs, pageMs * 1.0001);
    // 0.1 ms a second: the middle of two seconds is one second back.
    expect(Math.abs(map.toAudio(60_000)! * 1000 - 60_006)).toBeLessThan(0.11);
    for (const pageMs of [60_050, 60_100, 60_150]) add(pageMs, pageMs * 1.0001 - 11.6);
    expect(Math.abs(map.toAudio(60_150)! * 1000 - (60_156.015 - 11.6))).toBeLessThan(0.02);
  });

  it('on a machine that loses steps and stamps late, is right but for the three wake-ups after a step', () => {
    const late = fc.record({
      isLate: fc.nat(9).map((n) => n === 0),
      byMs: fc.double({ min: 0, max: 60, noNaN: true }),
    });
    const step = fc.nat(39).map((n) => n === 0);
    fc.assert(
      fc.property(fc.array(fc.tuple(late, step), { minLength: 20, maxLength: 400 }), (wakes) => {
        const map = createClockMap();
        let lostMs = 0;
        let sinceStep = 0;
        let lateOfFive: boolean[] = [];
        let lateOfMany: boolean[] = [];
        for (const [index, [stamp, isStep]] of wakes.entries()) {
          sinceStep = isStep ? 0 : sinceStep + 1;
          if (isStep) lostMs += 11.6;
          const pageMs = 1000 + index * 50;
          // A late stamp gives the page's time after the sound's.
          const stampedMs = stamp.isLate ? pageMs + stamp.byMs : pageMs;
          map.add({ pageMs: stampedMs, audioSeconds: (pageMs - lostMs) / 1000, isExact: true });
          lateOfFive = [...lateOfFive, stamp.isLate].slice(-5);
          lateOfMany = [...lateOfMany, stamp.isLate].slice(-40);
          const isBusy = lateOfMany.filter(Boolean).length > 0.4 * lateOfMany.length;
          const isSettled = index >= 5 && sinceStep >= 5 && lateOfFive.filter(Boolean).length <= 2;
          const offMs = Math.abs(map.toAudio(9000)! * 1000 - (9000 - lostMs));
          // Where nearly half of all stamps come late, a little of it may stay.
          if (isSettled) expect(offMs).toBeLessThan(isBusy ? 1.001 : 0.001);
        }
      }),
    );
  });

  it('is closer than single readings, which scatter by 0.2 ms', () => {
    const scatter = fc.array(fc.double({ min: -0.2, max: 0.2, noNaN: true }), { minLength: 60, maxLength: 60 });
    fc.assert(
      fc.property(scatter, (byMs) => {
        const map = createClockMap();
        for (const [index, by] of byMs.entries()) {
          const pageMs = 1000 + index * 50;
          map.add({ pageMs: pageMs + by, audioSeconds: pageMs / 1000, isExact: true });
          expect(Math.abs(map.toAudio(9000)! * 1000 - 9000)).toBeLessThan(0.2001);
        }
      }),
    );
    // Evenly scattered, as they are: a tenth of it is left.
    const map = createClockMap();
    for (let index = 0; index < 60; index += 1) {
      const by = 0.2 * Math.sin(index * 2.4); // the golden angle: no two near each other
      map.add({ pageMs: 1000 + index * 50 + by, audioSeconds: (1000 + index * 50) / 1000, isExact: true });
    }
    expect(Math.abs(map.toAudio(9000)! * 1000 - 9000)).toBeLessThan(0.02);
  });

  it('takes one stamp for one reading, however many wake-ups come at once after a block', () => {
    const map = createClockMap();
    for (const pageMs of [1000, 1050, 1100]) map.add({ pageMs, audioSeconds: pageMs / 1000, isExact: true });
    for (let wake = 0; wake < 9; wake += 1) map.add({ pageMs: 1930, audioSeconds: 1.9, isExact: true });
    expect(map.toAudio(5000)).toBeCloseTo(5, 9);
  });

  it('begins again when the audio clock stood still', () => {
    const map = createClockMap();
    map.add({ pageMs: 1000, audioSeconds: 1, isExact: true });
    map.add({ pageMs: 4000, audioSeconds: 1.5, isExact: true });
    expect(map.toAudio(5000)).toBeCloseTo(2.5, 9);
  });

  it('knows nothing before the first reading', () => {
    expect(createClockMap().toAudio(1000)).toBeUndefined();
  });
});

describe('readClocks', () => {
  const audio = { currentTime: 5, baseLatency: 0.01, outputLatency: 0.04 };

  it('takes the stamp of the browser where it is fresh', () => {
    const fresh = { ...audio, getOutputTimestamp: () => ({ contextTime: 4.95, performanceTime: 9999 }) };
    expect(readClocks(fresh, 10_000)).toEqual({ pageMs: 9999, audioSeconds: 4.95, isExact: true });
  });

  it('counts the delays itself where there is no stamp, or a leftover', () => {
    const leftover = { ...audio, getOutputTimestamp: () => ({ contextTime: 4, performanceTime: 8000 }) };
    for (const other of [audio, leftover]) {
      const reading = readClocks(other, 10_000);
      expect(reading.isExact).toBe(false);
      expect(reading.audioSeconds).toBeCloseTo(4.95, 9);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { createClockMap } from './clock-map.ts';

describe('createClockMap', () => {
  it('sees past the steps of the audio clock', () => {
    // A clock 0.25 s behind the page that moves in steps of 10 ms and so reads up to 10 ms late.
    const map = createClockMap();
    for (let pageMs = 1003; pageMs < 4000; pageMs += 197) {
      map.add({ pageMs, audioSeconds: Math.floor((pageMs - 250) / 10) / 100 });
    }
    expect(Math.abs(map.toAudio(5000)! - 4.75)).toBeLessThan(0.002);
  });

  it('follows a clock that runs too fast', () => {
    const map = createClockMap();
    for (let pageMs = 0; pageMs <= 60_000; pageMs += 200) map.add({ pageMs, audioSeconds: (pageMs * 1.0001) / 1000 });
    expect(map.toAudio(60_000)).toBeCloseTo(60.006, 4);
  });

  it('begins anew when the audio clock stood still', () => {
    const map = createClockMap();
    map.add({ pageMs: 1000, audioSeconds: 1 });
    map.add({ pageMs: 4000, audioSeconds: 1.5 });
    expect(map.toAudio(5000)).toBeCloseTo(2.5, 9);
  });

  it('knows nothing before the first reading', () => {
    expect(createClockMap().toAudio(1000)).toBeUndefined();
  });
});

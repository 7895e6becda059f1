import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BodyFilmOptions, bodyFilm } from '../../../tests/fixtures/sight/body-film.ts';
import type { ScriptedRep } from '../../../tests/fixtures/sight/rep-script.ts';
import { type BodyPoints, nameBodyPoints } from './body-points.ts';
import { createHoldDetector } from './hold-detector.ts';
import type { SightEvent } from './sight-event.ts';

// Series of points from a figure of our own, whose joints and instants are exact.

const MIXED: ScriptedRep[] = [
  { holdS: 5 },
  { holdS: 7, drawS: 2 },
  { holdS: 4, twitchM: 0.02 },
  { holdS: 2.3 },
  { holdS: 3, onlyRaised: true },
  { holdS: 6, creepM: 0.03 },
  { holdS: 5, elbowDropM: 0.04 },
];

function watch(reps: ScriptedRep[], options: BodyFilmOptions = {}, light = 120) {
  const { frames, holds } = bodyFilm(reps, options);
  const detector = createHoldDetector();
  const events = frames.flatMap(({ atMs, rows }) => detector.push(atMs, nameBodyPoints(rows), light));
  return { events, holds };
}

const ofType = <T extends SightEvent['type']>(events: SightEvent[], type: T) =>
  events.filter((event): event is Extract<SightEvent, { type: T }> => event.type === type);

describe('the model alone', () => {
  it.each<[string, BodyFilmOptions]>([
    ['from the front', {}],
    ['a left-handed archer', { leftHanded: true }],
    ['10 frames a second', { fps: 10 }],
    ['30 frames a second', { fps: 30 }],
    ['three frames in ten dropped', { dropped: 0.3 }],
    ['twice the model’s noise', { noiseTorsos: 0.024 }],
    ['30 degrees to the side', { yawDeg: 30 }],
    ['30 degrees to the other side', { yawDeg: -30 }],
    ['near', { distanceM: 1.5 }],
    ['far', { distanceM: 3.5 }],
    ['seated', { seated: true }],
    ['a fifteen-year-old', { size: 0.88 }],
  ])('sees every hold and no other: %s', (_name, options) => {
    const { events, holds } = watch(MIXED, options);
    const drawn = ofType(events, 'drawn');
    const letDown = ofType(events, 'letDown');
    expect(drawn).toHaveLength(holds.length);
    expect(letDown).toHaveLength(holds.length);
    holds.forEach((hold, index) => {
      // Alone it is good to a quarter of a second and more; the pixels make it a tenth.
      expect(Math.abs((drawn[index]?.atMs ?? 0) - hold.fromMs)).toBeLessThan(400);
      expect(Math.abs((letDown[index]?.atMs ?? 0) - hold.toMs)).toBeLessThan(250);
    });
    expect(ofType(events, 'refused')).toEqual([]);
  });

  describe('of points by hand: torso 100 pixels, the draw hand at the chin, five looks a second', () => {
    const at = (x: number, y: number) => ({ x, y, score: 0.8 });
    const pointsAt = (apart: number, low = 0, aside = 0): BodyPoints => {
      const face = { nose: at(305, 150), leftEye: at(300, 145), rightEye: at(310, 145), leftEar: at(295, 148) };
      const shoulders = { rightEar: at(315, 148), leftShoulder: at(320, 200), rightShoulder: at(280, 200) };
      const hips = { leftHip: at(315, 300), rightHip: at(285, 300) };
      const elbows = { rightElbow: at(240, 180), leftElbow: at(380, 195) };
      const wrists = { rightWrist: at(300 - aside, 170 + low), leftWrist: at(300 + apart * 100 - aside, 190 + low) };
      const legs = {
        leftKnee: at(315, 370),
        rightKnee: at(285, 370),
        leftAnkle: at(315, 440),
        rightAnkle: at(285, 440),
      };
      return { ...face, ...shoulders, ...hips, ...elbows, ...wrists, ...legs };
    };
    const HUNG = pointsAt(0.3, 120);
    /** Hands hang for three seconds, then lie apart as far as is said, torso lengths; where that is nothing, nobody looks. */
    function see(apartAt: (atMs: number) => number | undefined, toMs: number, aside = 0): SightEvent[] {
      const detector = createHoldDetector();
      const events: SightEvent[] = [];
      for (let atMs = 0; atMs < toMs; atMs += 200) {
        const apart = apartAt(atMs);
        if (apart !== undefined)
          events.push(...detector.push(atMs, atMs < 3_000 ? HUNG : pointsAt(apart, 0, aside), 120));
      }
      return events;
    }
    const letDownAt = (fromMs: number, from: number) => (atMs: number) =>
      Math.max(0.6, from - Math.max(0, (atMs - fromMs) / 850) * 1.2);

    it('a raised bow that looked drawn is taken back: the hold is where the hands come to', () => {
      const events = see((atMs) => (atMs < 6_000 ? 1.26 : letDownAt(10_000, 1.8)(atMs)), 14_000);
      expect(events.map(({ type }) => type)).toEqual(['drawn', 'lost', 'drawn', 'letDown', 'calibrated']);
      expect(Math.abs((ofType(events, 'drawn')[1]?.atMs ?? 0) - 6_000)).toBeLessThan(300);
      const [letDown] = ofType(events, 'letDown');
      expect(Math.abs((letDown?.atMs ?? 0) - 10_000)).toBeLessThan(150);
      expect(letDown?.knownAtMs).toBeLessThanOrEqual(10_600);
    });

    it('arms spread wide are no draw: neither hand is at the face', () => {
      expect(see(() => 2.4, 8_000, 120)).toEqual([]);
    });

    it('a let-down after a creep is where the hand leaves, not where it crept', () => {
      const creep = (atMs: number) => 1.8 - Math.max(0, Math.min(1, (atMs - 6_000) / 1_500)) * 0.11;
      const events = see((atMs) => (atMs < 11_000 ? creep(atMs) : letDownAt(11_000, 1.69)(atMs)), 14_000);
      expect(Math.abs((ofType(events, 'letDown')[0]?.atMs ?? 0) - 11_000)).toBeLessThan(200);
    });

    it('a slow creep of ten centimetres in a minute is no let-down', () => {
      const events = see((atMs) => 1.8 - Math.max(0, (atMs - 5_000) / 60_000) * 0.2, 65_000);
      expect(events.map(({ type }) => type)).toEqual(['drawn']);
    });

    it('a look in which both hands seem in one place does not count: the model has lost one of them', () => {
      // Two looks of five.
      const events = see((atMs) => (atMs < 9_000 && atMs % 1_000 < 400 ? 0.05 : letDownAt(9_000, 1.8)(atMs)), 12_000);
      expect(events.map(({ type }) => type)).toEqual(['drawn', 'letDown', 'calibrated']);
      expect(Math.abs((ofType(events, 'letDown')[0]?.atMs ?? 0) - 9_000)).toBeLessThan(150);
    });

    it('a band that is let down until the hands meet is let down', () => {
      const events = see((atMs) => (atMs < 9_000 ? 1.8 : 0.05), 12_000);
      expect(events.map(({ type }) => type)).toEqual(['drawn', 'letDown', 'calibrated']);
      expect(ofType(events, 'letDown')[0]?.knownAtMs).toBeLessThan(10_000);
    });

    it('a model that had lost the hand may come back to where the hold was at its farthest', () => {
      // In 25 s it comes nearer by a fifth of a torso’s length, and is then where it was.
      const lostAt = (atMs: number) => 1.8 - Math.max(0, Math.min(25_000, atMs - 5_000)) * 0.000008;
      const apart = (atMs: number) => (atMs < 32_000 ? lostAt(atMs) : letDownAt(36_000, 1.8)(atMs));
      const events = see(apart, 40_000);
      expect(events.map(({ type }) => type)).toEqual(['drawn', 'letDown', 'calibrated']);
      // The let-down is where the hand leaves that place, a tenth of a second before it would pass the nearer one.
      expect(Math.abs((ofType(events, 'letDown')[0]?.atMs ?? 0) - 36_000)).toBeLessThan(100);
    });

    it('a let-down that the pixels deny is taken back: the hold goes on from where the model sees it now', () => {
      const detector = createHoldDetector();
      const types: string[] = [];
      for (let atMs = 0; atMs < 12_000; atMs += 200) {
        const apart = atMs < 7_000 ? 1.8 : 1.45;
        for (const { type } of detector.push(atMs, atMs < 3_000 ? HUNG : pointsAt(apart), 120)) {
          types.push(type);
          if (type === 'letDown') detector.resumeHold();
        }
      }
      expect(types).toEqual(['drawn', 'letDown', 'calibrated']);
      expect(detector.holdFromMs()).toBeGreaterThan(2_500);
    });

    it('a hold that nobody looked at for three seconds is lost, even if it seems to go on', () => {
      const events = see((atMs) => (atMs > 6_000 && atMs < 9_200 ? undefined : 1.8), 14_000);
      expect(events.map(({ type }) => type)).toEqual(['drawn', 'lost', 'refused', 'sees']);
    });
  });

  it('learns full draw from the first hold', () => {
    expect(ofType(watch(MIXED).events, 'calibrated').map(({ fullDrawTorsos }) => fullDrawTorsos > 1.4)).toEqual([true]);
  });

  it('refuses wrists that the model is not sure of, and says what to do', () => {
    const hidden = watch(MIXED, { wristScore: 0.15 });
    expect(ofType(hidden.events, 'drawn')).toEqual([]);
    expect(ofType(hidden.events, 'refused')[0]?.reason).toBe('turnSideOn');
    expect(ofType(watch(MIXED, { wristScore: 0.33 }, 20).events, 'refused')[0]?.reason).toBe('moreLight');
  });

  it('believes hands that it is less sure of where there is light enough: a hand before a shirt of its own colour', () => {
    const { events, holds } = watch([{ holdS: 2.6 }, { holdS: 3 }], { wristScore: 0.33 }, 120);
    expect(ofType(events, 'refused')).toEqual([]);
    expect(ofType(events, 'drawn')).toHaveLength(holds.length);
  });

  it('asks for light in a black picture, and takes it back when it sees again', () => {
    const { frames } = bodyFilm([{ holdS: 3 }]);
    const detector = createHoldDetector();
    const isBlack = (atMs: number) => atMs < 2_000;
    const events = frames.flatMap(({ atMs, rows }) =>
      detector.push(atMs, isBlack(atMs) ? undefined : nameBodyPoints(rows), isBlack(atMs) ? 2 : 120),
    );
    expect(events.slice(0, 2)).toMatchObject([{ type: 'refused', reason: 'moreLight' }, { type: 'sees' }]);
  });

  it('needs to have seen both hands hang', () => {
    const { frames } = bodyFilm([{ holdS: 20 }]);
    const detector = createHoldDetector();
    const events = frames
      .filter(({ atMs }) => atMs > 5_000 && atMs < 25_000)
      .flatMap(({ atMs, rows }) => detector.push(atMs, nameBodyPoints(rows), 120));
    expect(events.map((event) => event.type === 'refused' && event.reason)).toEqual(['handsDown']);
  });

  it('loses a hold that nobody sees any more, at the last moment it was seen', () => {
    const { frames, holds } = bodyFilm([{ holdS: 8 }]);
    const [hold] = holds;
    if (hold === undefined) throw new Error('no hold');
    const darkMs = hold.fromMs + 4_000;
    const detector = createHoldDetector();
    const events = frames.flatMap(({ atMs, rows }) =>
      detector.push(atMs, atMs > darkMs ? undefined : nameBodyPoints(rows), 120),
    );
    const [lost] = ofType(events, 'lost');
    expect(lost?.atMs).toBeGreaterThan(darkMs - 100);
    expect(lost?.atMs).toBeLessThanOrEqual(darkMs);
    expect(ofType(events, 'letDown')).toEqual([]);
  });

  const heldFor = (holdS: number) => {
    const { frames, holds } = bodyFilm([{ holdS }, { holdS: 4 }]);
    const [first, second] = holds;
    if (first === undefined || second === undefined) throw new Error('no hold');
    const seenBut = (gap: { fromMs: number; toMs: number }, isToldOfIt: boolean) => {
      const detector = createHoldDetector();
      return frames.flatMap(({ atMs, rows }) => {
        const isGap = atMs > gap.fromMs && atMs < gap.toMs;
        return isGap && !isToldOfIt ? [] : detector.push(atMs, isGap ? undefined : nameBodyPoints(rows), 120);
      });
    };
    return { first, second, seenBut };
  };

  it('goes on with a hold that a slow machine did not look at for two seconds', () => {
    const { first, seenBut } = heldFor(8);
    const events = seenBut({ fromMs: first.fromMs + 3_000, toMs: first.fromMs + 5_000 }, false);
    expect(ofType(events, 'lost')).toEqual([]);
    expect(Math.abs((ofType(events, 'letDown')[0]?.atMs ?? 0) - first.toMs)).toBeLessThan(250);
  });

  it('takes no rest of a lost hold for a hold of its own, and sees the next one', () => {
    const { first, second, seenBut } = heldFor(9);
    const events = seenBut({ fromMs: first.fromMs + 3_000, toMs: first.fromMs + 4_500 }, true);
    expect(ofType(events, 'lost')).toHaveLength(1);
    const drawn = ofType(events, 'drawn').map(({ atMs }) => atMs);
    expect(drawn).toHaveLength(2);
    expect(Math.abs((drawn[1] ?? 0) - second.fromMs)).toBeLessThan(400);
  });

  it('keeps to the archer when the model jumps to somebody else', () => {
    const { frames, holds } = bodyFilm([{ holdS: 6 }]);
    const detector = createHoldDetector();
    const events = frames.flatMap(({ atMs, rows }, index) => {
      // Every fourth frame shows a person at the picture's edge, with hands that hang.
      const stranger = rows.map(([x = 0, y = 0, score = 0], row) => [
        x * 0.5 - 60,
        y + (row === 9 || row === 10 ? 120 : 0),
        score,
      ]);
      return detector.push(atMs, nameBodyPoints(index % 4 === 3 && atMs > 3_000 ? stranger : rows), 120);
    });
    expect(ofType(events, 'drawn')).toHaveLength(1);
    expect(Math.abs((ofType(events, 'letDown')[0]?.atMs ?? 0) - (holds[0]?.toMs ?? 0))).toBeLessThan(300);
  });

  it.each([
    ['quickly: the hold goes on', 700, 0, 2],
    ['slowly: the hold is lost, and the next one is seen', 1_600, 1, 1],
  ])('takes somebody who walks between for no let-down, %s', (_how, betweenMs, lost, letDowns) => {
    const { frames, holds } = bodyFilm([{ holdS: 6 }, { holdS: 3 }]);
    const detector = createHoldDetector();
    const events = frames.flatMap(({ atMs, rows }) => {
      const isBetween = atMs > 8_500 && atMs < 8_500 + betweenMs;
      // Nearer to the camera, hence larger.
      const nearer = rows.map(([x = 0, y = 0, score = 0]) => [320 + (x - 320) * 1.7, 240 + (y - 240) * 1.7, score]);
      return detector.push(atMs, nameBodyPoints(isBetween ? nearer : rows), 120);
    });
    expect(ofType(events, 'lost')).toHaveLength(lost);
    const ended = ofType(events, 'letDown').map(({ atMs }) => atMs);
    expect(ended).toHaveLength(letDowns);
    holds.slice(-letDowns).forEach(({ toMs }, index) => {
      expect(Math.abs((ended[index] ?? 0) - toMs)).toBeLessThan(250);
    });
  });

  it('tells holds in order, never overlapping, never shorter than the shortest', () => {
    const rep = fc.record({
      holdS: fc.double({ min: 0.3, max: 6, noNaN: true }),
      drawS: fc.double({ min: 0.6, max: 2.5, noNaN: true }),
      onlyRaised: fc.boolean(),
    });
    const options = fc.record({
      fps: fc.constantFrom(8, 10, 15, 30),
      dropped: fc.constantFrom(0, 0.2),
      seed: fc.nat(1_000),
    });
    fc.assert(
      fc.property(fc.array(rep, { minLength: 1, maxLength: 3 }), options, (reps, chosen) => {
        const { events } = watch(reps, chosen);
        let last = 0;
        let isDrawn = false;
        for (const event of events) {
          if (event.type !== 'drawn' && event.type !== 'letDown') continue;
          expect(event.type).toBe(isDrawn ? 'letDown' : 'drawn');
          isDrawn = !isDrawn;
          expect(event.atMs).toBeGreaterThanOrEqual(last);
          expect(event.knownAtMs).toBeGreaterThanOrEqual(event.atMs);
          last = event.atMs;
        }
      }),
      { seed: 14, numRuns: 40 },
    );
  });
});

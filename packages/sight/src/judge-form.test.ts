import { describe, expect, it } from 'vitest';
import { type Camera, project } from '../../../tests/fixtures/sight/camera.ts';
import { bell, chanceFrom } from '../../../tests/fixtures/sight/chance.ts';
import { drawWayM, jointsAt } from '../../../tests/fixtures/sight/jointed-figure.ts';
import { type ScriptedRep, timeReps, trueHolds } from '../../../tests/fixtures/sight/rep-script.ts';
import type { Slides, TrackedFrame } from './hold-tracks.ts';
import { judgeForm } from './judge-form.ts';

/** The figure's own joints as a tracker with an error of a third of a pixel would tell them. */
function judge(rep: ScriptedRep, camera: Camera = {}, seed = 1) {
  const timed = timeReps([rep]);
  const [hold] = trueHolds(timed, drawWayM());
  if (hold === undefined) throw new Error('no hold');
  const chance = chanceFrom(seed);
  const frames: TrackedFrame[] = [];
  for (let atMs = hold.fromMs; atMs <= hold.toMs; atMs += 1_000 / 15) {
    const joints = jointsAt(timed, atMs);
    const at = (name: 'drawHand' | 'drawElbow' | 'head' | 'bowShoulder') => {
      const { x, y } = project(joints[name], camera);
      return { x: x + bell(chance) * 0.3, y: y + bell(chance) * 0.3, match: 0.9 };
    };
    frames.push({
      atMs,
      found: { drawHand: at('drawHand'), drawElbow: at('drawElbow'), face: at('head'), bowShoulder: at('bowShoulder') },
    });
  }
  const pixelsPerCm = project([0, 1, 0], camera).pixelsPerM / 100;
  return judgeForm(frames, { fromMs: hold.fromMs, toMs: hold.toMs, pixelsPerCm, bowRight: camera.leftHanded !== true });
}

/** How far a joint truly goes between the anchor and the let-down, in the picture's plane, centimetres. */
function movedCm(rep: ScriptedRep, joint: 'drawElbow' | 'bowShoulder'): number {
  const timed = timeReps([rep]);
  const [hold] = trueHolds(timed, drawWayM());
  const [x0, y0] = jointsAt(timed, (hold?.fromMs ?? 0) + 600)[joint];
  const [x1, y1] = jointsAt(timed, (hold?.toMs ?? 0) - 600)[joint];
  return Math.hypot(x1 - x0, y1 - y0) * 100;
}

describe('what moved in a hold', () => {
  it('is nothing in fifty still ones, of any length and distance', () => {
    for (let seed = 0; seed < 50; seed++) {
      const { form } = judge(
        { holdS: 3 + seed * 0.4, twitchM: seed % 2 ? 0.02 : 0 },
        { distanceM: 1.5 + (seed % 5) * 0.5 },
        seed,
      );
      expect(form, `hold ${seed}`).toEqual([]);
    }
  });

  it.each<[string, ScriptedRep, string, 'drawElbow' | 'bowShoulder']>([
    ['the draw creeps', { holdS: 8, creepM: 0.03 }, 'creep', 'drawElbow'],
    ['the elbow drops', { holdS: 8, elbowDropM: 0.03 }, 'elbow', 'drawElbow'],
    ['the bow shoulder comes up', { holdS: 8, shoulderRiseM: 0.03 }, 'bowShoulder', 'bowShoulder'],
  ])('is named: %s', (_name, rep, part, joint) => {
    const trueCm = movedCm(rep, joint);
    expect(trueCm).toBeGreaterThan(2.5);
    for (const camera of [{}, { leftHanded: true }, { distanceM: 3.5 }]) {
      const { form, wholeMs } = judge(rep, camera);
      expect(form.map((one) => one.part)).toEqual([part]);
      expect(Math.abs((form[0]?.cm ?? 0) - trueCm)).toBeLessThan(1);
      // Faults begin one second after the anchor and are whole before the let-down.
      expect(wholeMs).toBeGreaterThan(1_000);
      expect(wholeMs).toBeLessThan(8_000);
    }
  });

  it('is not the head that nods nor the body that sways', () => {
    const frames = Array.from({ length: 60 }, (_, index): TrackedFrame => {
      const nod = index > 20 ? 8 : 0;
      const sway = index > 40 ? 9 : 0;
      const at = (x: number, y: number) => ({ x: x + sway, y, match: 0.9 });
      return {
        atMs: index * 100,
        found: { drawElbow: at(200, 180), bowShoulder: at(310, 190), face: at(300, 150 + nod) },
      };
    });
    expect(judgeForm(frames, { fromMs: 0, toMs: 6_000, pixelsPerCm: 2, bowRight: true })).toEqual({
      form: [],
      wholeMs: 6_000,
      isJudged: true,
    });
  });

  /** Elbow, bow shoulder and face, each off by some pixels from the third second on; two pixels are a centimetre. */
  const after = (
    elbow: [number, number],
    shoulder: [number, number] = [0, 0],
    face: [number, number] = [0, 0],
    from = 31,
  ) => {
    const frames = Array.from({ length: 60 }, (_, index): TrackedFrame => {
      const at = (x: number, y: number, [dx, dy]: [number, number]) =>
        index >= from ? { x: x + dx, y: y + dy, match: 0.9 } : { x, y, match: 0.9 };
      return {
        atMs: index * 100,
        found: { drawElbow: at(200, 180, elbow), bowShoulder: at(310, 190, shoulder), face: at(300, 150, face) },
      };
    });
    return judgeForm(frames, { fromMs: 0, toMs: 6_000, pixelsPerCm: 2, bowRight: true }).form.map(({ part }) => part);
  };

  it('is what goes the wrong way by a centimetre and a half, and nothing that goes the other way', () => {
    expect(after([6, 0])).toEqual(['creep']);
    expect(after([0, 6])).toEqual(['elbow']);
    expect(after([0, 0], [0, -6])).toEqual(['bowShoulder']);
    // Two centimetres, the least that is reported.
    expect(after([4, 0])).toEqual(['creep']);
    expect(after([0, 4])).toEqual(['elbow']);
    expect(after([0, 0], [0, -4])).toEqual(['bowShoulder']);
    // A twitch just before the let-down has not lasted.
    expect(after([8, 0], [0, 0], [0, 0], 56)).toEqual([]);
    // An archer who expands, lifts the elbow or brings the shoulder down.
    expect(after([-6, 0])).toEqual([]);
    expect(after([0, -6])).toEqual([]);
    expect(after([0, 0], [0, 6])).toEqual([]);
    expect(after([2, 0])).toEqual([]);
    expect(after([0, 2], [0, -2])).toEqual([]);
    // The head turns, and takes the elbow half the way with it.
    expect(after([6, 0], [0, 0], [12, 0])).toEqual([]);
  });

  it('is unknown of an elbow whose patch may slide along an edge, and of a shoulder only where it slides up and down', () => {
    const frames = Array.from({ length: 60 }, (_, index): TrackedFrame => {
      const down = index * 0.2;
      const at = (x: number, y: number) => ({ x, y, match: 0.9 });
      return {
        atMs: index * 100,
        found: { drawElbow: at(200, 180 + down), bowShoulder: at(310, 190 - down), face: at(300, 150) },
      };
    });
    const judged = (slides: Slides) => {
      const { form, isJudged } = judgeForm(frames, { fromMs: 0, toMs: 6_000, pixelsPerCm: 2, bowRight: true, slides });
      return [form.map(({ part }) => part), isJudged];
    };
    expect(judged({})).toEqual([['elbow', 'bowShoulder'], true]);
    expect(judged({ drawElbow: { x: 0, y: 1 } })).toEqual([['bowShoulder'], true]);
    expect(judged({ bowShoulder: { x: 1, y: 0.1 } })).toEqual([['elbow', 'bowShoulder'], true]);
    // The slope of a shoulder, as painted archers have it.
    expect(judged({ bowShoulder: { x: 0.59, y: 0.81 } })).toEqual([['elbow', 'bowShoulder'], true]);
    expect(judged({ drawElbow: { x: 0, y: 1 }, bowShoulder: { x: 0.1, y: 1 } })).toEqual([[], false]);
  });

  it('belongs neither to the end of the draw nor to the beginning of the let-down', () => {
    // Half a second at the anchor in which the elbow is still on its way, 3 cm above: 300 ms of it are left out, the rest is the lesser part.
    const settling = Array.from({ length: 60 }, (_, index): TrackedFrame => {
      const at = (x: number, y: number) => ({ x, y, match: 0.9 });
      const up = index < 5 ? -6 : 0;
      return {
        atMs: index * 100,
        found: { drawElbow: at(200, 180 + up), bowShoulder: at(310, 190), face: at(300, 150) },
      };
    });
    expect(judgeForm(settling, { fromMs: 0, toMs: 6_000, pixelsPerCm: 2, bowRight: true }).form).toEqual([]);
    // The elbow goes down with the last three pictures.
    expect(after([0, 8], [0, 0], [0, 0], 57)).toEqual([]);
  });

  it('is only what the elbow and the head do not share', () => {
    // The head alone goes back by 6 cm: the elbow has not moved in the picture.
    expect(after([0, 0], [0, 0], [-12, 0])).toEqual([]);
    // The elbow goes 2 cm with a head that goes 6: against the face it went the other way.
    expect(after([4, 0], [0, 0], [12, 0])).toEqual([]);
  });

  it('is clear where one direction outweighs the other by half', () => {
    const isClear = ([x, y]: [number, number]) => {
      const frames = Array.from({ length: 60 }, (_, index): TrackedFrame => {
        const [dx, dy] = index > 30 ? [x, y] : [0, 0];
        const at = (atX: number, atY: number) => ({ x: atX, y: atY, match: 0.9 });
        return {
          atMs: index * 100,
          found: { drawElbow: at(200 + dx, 180 + dy), bowShoulder: at(310, 190), face: at(300, 150) },
        };
      });
      return judgeForm(frames, { fromMs: 0, toMs: 6_000, pixelsPerCm: 2, bowRight: true }).form[0]?.isClear;
    };
    expect(isClear([6, 3.5])).toBe(true);
    expect(isClear([6, 4.5])).toBe(false);
  });

  it('is unknown where a place was found in one frame of three', () => {
    const frames = Array.from({ length: 60 }, (_, index): TrackedFrame => {
      const found = { drawElbow: { x: 200, y: 180, match: 0.9 }, face: { x: 300, y: 150, match: 0.9 } };
      const shoulder = { x: 310, y: 190, match: index % 3 ? 0.2 : 0.9 };
      return { atMs: index * 100, found: { ...found, bowShoulder: shoulder } };
    });
    expect(judgeForm(frames, { fromMs: 0, toMs: 6_000, pixelsPerCm: 2, bowRight: true }).isJudged).toBe(false);
  });

  it('is unknown, hence nothing, where the patches were not found', () => {
    const frames = Array.from(
      { length: 60 },
      (_, index): TrackedFrame => ({
        atMs: index * 100,
        found: { drawElbow: { x: 200, y: 180 + index, match: 0.2 }, face: { x: 300, y: 150, match: 0.9 } },
      }),
    );
    const { form, isJudged } = judgeForm(frames, { fromMs: 0, toMs: 6_000, pixelsPerCm: 2, bowRight: true });
    expect({ form, isJudged }).toEqual({ form: [], isJudged: false });
  });
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { GrayFrame } from './gray-frame.ts';
import { findPatch, slideOf, takePatch } from './track-patch.ts';

/** A smooth pattern moved by a part of a pixel, brighter or darker, so that the true place is known exactly. */
function picture(dx: number, dy: number, brighter = 0): GrayFrame {
  const data = new Uint8Array(120 * 90);
  for (let y = 0; y < 90; y++) {
    for (let x = 0; x < 120; x++) {
      const u = x - dx;
      const v = y - dy;
      data[y * 120 + x] = 120 + brighter + 40 * Math.sin(u * 0.31 + v * 0.07) + 35 * Math.cos(v * 0.27 - u * 0.11);
    }
  }
  return { width: 120, height: 90, data };
}

it('finds a patch to a fifth of a pixel, in any light', () => {
  // Hundredths, for numbers with a point are drawn near to 0 or to the ends: nearly whole pixels.
  const shift = fc.integer({ min: -700, max: 700 }).map((hundredths) => hundredths / 100);
  fc.assert(
    fc.property(shift, shift, fc.integer({ min: -40, max: 40 }), (dx, dy, brighter) => {
      const patch = takePatch(picture(0, 0), 60, 45, 8);
      if (patch === undefined) throw new Error('no patch');
      const found = findPatch(picture(dx, dy, brighter), patch, { x: 60, y: 45 }, 8);
      expect(found.x).toBeCloseTo(60 + dx, 0);
      expect(Math.hypot(found.x - 60 - dx, found.y - 45 - dy)).toBeLessThan(0.2);
      expect(found.match).toBeGreaterThan(0.9);
    }),
    { seed: 14, numRuns: 60 },
  );
});

it('takes nothing over the edge, and nothing without a pattern', () => {
  expect(takePatch(picture(0, 0), 3, 45, 8)).toBeUndefined();
  const plain = { width: 120, height: 90, data: new Uint8Array(120 * 90).fill(90) };
  expect(takePatch(plain, 60, 45, 8)).toBeUndefined();
});

it('says that a patch is gone', () => {
  const patch = takePatch(picture(0, 0), 60, 45, 8);
  if (patch === undefined) throw new Error('no patch');
  const black = { width: 120, height: 90, data: new Uint8Array(120 * 90) };
  expect(findPatch(black, patch, { x: 60, y: 45 }, 8).match).toBeLessThan(0.1);
  expect(findPatch(picture(0, 0), patch, { x: 500, y: 45 }, 8).match).toBe(0);
});

/** A soft edge through the middle, seen from a side; nothing but grain along it. */
function edge(degrees: number): GrayFrame {
  const angle = (degrees * Math.PI) / 180;
  const data = new Uint8Array(120 * 90);
  for (let y = 0; y < 90; y++) {
    for (let x = 0; x < 120; x++) {
      const across = (x - 60) * Math.cos(angle) + (y - 45) * Math.sin(angle);
      data[y * 120 + x] = 110 + 60 * Math.tanh(across / 2) + ((x * 7 + y * 13) % 5);
    }
  }
  return { width: 120, height: 90, data };
}

it.each([0, 30, 90, 135])(
  'knows which way a patch on an edge may slide: along it, the edge at %i degrees',
  (degrees) => {
    const patch = takePatch(edge(degrees), 60, 45, 10);
    const slide = patch && slideOf(patch);
    const angle = (degrees * Math.PI) / 180;
    expect(Math.abs((slide?.x ?? 1) * Math.cos(angle) + (slide?.y ?? 1) * Math.sin(angle))).toBeLessThan(0.1);
    expect(Math.hypot(slide?.x ?? 0, slide?.y ?? 0)).toBeCloseTo(1);
  },
);

it('knows a patch that shows something both ways: it slides nowhere', () => {
  const patch = takePatch(picture(0, 0), 60, 45, 10);
  expect(patch && slideOf(patch)).toBeUndefined();
});

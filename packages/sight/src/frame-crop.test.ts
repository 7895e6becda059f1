import { expect, it } from 'vitest';
import { bodyFilm } from '../../../tests/fixtures/sight/body-film.ts';
import { nameBodyPoints } from './body-points.ts';
import { formLines } from './form-lines.ts';
import { nextCrop, wholeCrop } from './frame-crop.ts';

const WHOLE = wholeCrop(640, 480);

it('takes the archer with both arms, and moves no more than once in a drill', () => {
  const { frames } = bodyFilm([{ holdS: 4 }, { holdS: 4 }]);
  let crop = WHOLE;
  let moves = 0;
  for (const { rows } of frames) {
    const next = nextCrop(crop, nameBodyPoints(rows), WHOLE);
    if (next !== crop) moves++;
    crop = next;
    for (const [x = 0, y = 0] of rows.slice(0, 13)) {
      expect(x).toBeGreaterThan(crop.x);
      expect(x).toBeLessThan(crop.x + crop.size);
      expect(y).toBeGreaterThan(crop.y);
      expect(y).toBeLessThan(crop.y + crop.size);
    }
  }
  expect(moves).toBe(1);
});

it('goes back to the whole picture when nobody is there', () => {
  expect(WHOLE).toEqual({ x: 0, y: -80, size: 640 });
  expect(nextCrop({ x: 9, y: 9, size: 400 }, undefined, WHOLE)).toEqual(WHOLE);
});

it('draws lines only to points that are surely seen', () => {
  const { frames, holds } = bodyFilm([{ holdS: 4 }]);
  const frame = frames.find(({ atMs }) => atMs > (holds[0]?.fromMs ?? 0) + 500);
  const rows = frame?.rows ?? [];
  expect(formLines(nameBodyPoints(rows)).map(({ part }) => part)).toEqual(['shoulders', 'drawForearm', 'bowArm']);
  const unsure = rows.map(([x = 0, y = 0, score = 0], row) => [x, y, row === 10 ? 0.4 : score]);
  expect(formLines(nameBodyPoints(unsure)).map(({ part }) => part)).toEqual(['shoulders', 'bowArm']);
});

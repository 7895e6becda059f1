import { expect, it } from 'vitest';
import { type BodyFilmOptions, bodyFilm } from '../../../tests/fixtures/sight/body-film.ts';
import { nameBodyPoints } from './body-points.ts';
import { judgePlace } from './judge-place.ts';

const PICTURE = { width: 640, height: 480, light: 140 };

function standing(options: BodyFilmOptions = {}, shift = 0) {
  const [frame] = bodyFilm([{ holdS: 2 }], options).frames;
  return nameBodyPoints((frame?.rows ?? []).map(([x = 0, y = 0, score = 0]) => [x + shift, y, score]));
}

it('finds 1.5 to 3.5 metres good, seated too', () => {
  for (const distanceM of [1.5, 2, 2.5, 3, 3.5]) expect(judgePlace(standing({ distanceM }), PICTURE)).toBe('good');
  expect(judgePlace(standing({ seated: true }), PICTURE)).toBe('good');
  expect(judgePlace(standing({ leftHanded: true }), PICTURE)).toBe('good');
});

it('says what to change', () => {
  expect(judgePlace(undefined, PICTURE)).toBe('stepIn');
  expect(judgePlace(standing({ distanceM: 1 }), PICTURE)).toBe('goBack');
  expect(judgePlace(standing({ distanceM: 5 }), PICTURE)).toBe('comeCloser');
  expect(judgePlace(standing({}, 260), PICTURE)).toBe('toTheMiddle');
  expect(judgePlace(standing(), { ...PICTURE, light: 20 })).toBe('moreLight');
  expect(judgePlace(standing({ wristScore: 0.15 }), PICTURE)).toBe('moreLight');
  const back = standing();
  for (const name of ['nose', 'leftEye', 'rightEye'] as const) back[name].score = 0.25;
  expect(judgePlace(back, PICTURE)).toBe('turnSideOn');
});

import { expect, it } from 'vitest';
import { type BodyFilmOptions, bodyFilm } from '../../../tests/fixtures/sight/body-film.ts';
import { nameBodyPoints } from './body-points.ts';
import { createPlaceJudge } from './judge-place.ts';

const PICTURE = { width: 640, height: 480, light: 140 };

function standing(options: BodyFilmOptions = {}, shift = 0) {
  const [frame] = bodyFilm([{ holdS: 2 }], options).frames;
  return nameBodyPoints((frame?.rows ?? []).map(([x = 0, y = 0, score = 0]) => [x + shift, y, score]));
}

const judgePlace: ReturnType<typeof createPlaceJudge> = (points, picture) => createPlaceJudge()(points, picture);

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
  expect(judgePlace(faced(0.25), PICTURE)).toBe('turnSideOn');
});

function faced(score: number) {
  const points = standing();
  for (const name of ['nose', 'leftEye', 'rightEye'] as const) points[name].score = score;
  return points;
}

it('knows a back from a face by the middle of some looks: a single one may seem the other', () => {
  const from = (scores: number[]) => {
    const judge = createPlaceJudge();
    return scores.map((score) => judge(faced(score), PICTURE));
  };
  // From behind the model says 0.25 to 0.35 and now and then more, from in front 0.44 and now and then less.
  expect(from([0.3, 0.35, 0.46, 0.33, 0.35, 0.42, 0.3])).toEqual(Array(7).fill('turnSideOn'));
  expect(from([0.6, 0.5, 0.3, 0.55, 0.44, 0.36, 0.5])).toEqual(Array(7).fill('good'));
  // Who steps out of the picture and turns round is somebody new.
  const judge = createPlaceJudge();
  for (let look = 0; look < 7; look++) judge(faced(0.3), PICTURE);
  judge(undefined, PICTURE);
  expect(judge(faced(0.6), PICTURE)).toBe('good');
});

import { chanceFrom } from '../../fixtures/sight/chance.ts';
import type { Colour } from '../../fixtures/sight/limb.ts';
import type { FilmScript } from '../../fixtures/sight/write-film.ts';

const plain = [{ holdS: 5 }, { holdS: 3, twitchM: 0.02 }, { holdS: 2.2 }];
const short = [
  { holdS: 3, twitchM: 0.02, restS: 1 },
  { holdS: 2.2, restS: 1 },
];

/** What is filmed: by name, so that one can be asked for. */
export const films: Record<string, FilmScript> = {
  plain: { reps: plain },
  early: { reps: [{ holdS: 4 }, { holdS: 1.8 }, { holdS: 5 }] },
  faults: {
    reps: [
      { holdS: 3 },
      { holdS: 6, creepM: 0.03 },
      { holdS: 6, elbowDropM: 0.04 },
      { holdS: 6, shoulderRiseM: 0.035 },
    ],
  },
  creep: {
    reps: [
      { holdS: 2.2, restS: 1 },
      { holdS: 6, creepM: 0.03 },
    ],
  },
  elbow: {
    reps: [
      { holdS: 2.2, restS: 1 },
      { holdS: 6, elbowDropM: 0.03 },
    ],
  },
  shoulder: {
    reps: [
      { holdS: 2.2, restS: 1 },
      { holdS: 6, shoulderRiseM: 0.03 },
    ],
  },
  still: { reps: Array.from({ length: 14 }, (_, index) => ({ holdS: 2.2 + (index % 4) * 0.6, restS: 0.5 })) },
  left: { reps: short, leftHanded: true, look: { skin: [96, 62, 44], shirt: [150, 50, 46] } },
  skin: { reps: short, look: { skin: [74, 47, 34], shirt: [58, 66, 60], hair: [22, 18, 16] } },
  slant: { reps: short, yawDeg: 15 },
  side: { reps: short, yawDeg: 30 },
  otherSide: { reps: short, yawDeg: -20 },
  near: { reps: short, distanceM: 1.8 },
  far: { reps: short, distanceM: 3.5 },
  young: { reps: short, size: 0.88 },
  band: { reps: short, look: { band: true } },
  seated: { reps: short, seated: true },
  wheelchair: { reps: short, wheelchair: true },
  wheelchairSide: { reps: short, wheelchair: true, yawDeg: 25 },
  walker: { reps: short, walker: true },
  mirror: { reps: short, mirror: true },
  onlooker: { reps: short, onlooker: true },
  pet: { reps: short, pet: true },
  slow: { reps: short, fps: 10 },
  behind: { reps: short, yawDeg: 180 },
  dim: { reps: short, look: { light: 0.12, grain: 5 } },
  dark: { reps: short, look: { light: 0.03, grain: 5 } },
  lamp: { reps: [{ holdS: 3 }, { holdS: 6 }], darkFromMs: 21_000 },
};

const SKINS: readonly Colour[] = [
  [226, 176, 148],
  [240, 200, 176],
  [196, 140, 104],
  [150, 100, 72],
  [110, 72, 52],
  [84, 54, 40],
  [66, 42, 32],
];
const HAIRS: readonly Colour[] = [
  [58, 38, 26],
  [20, 16, 14],
  [150, 110, 60],
  [120, 120, 120],
];

/** An archer drawn at random within what a camera has to cope with: skin, clothes, light, build, side, distance and angle. */
function anyArcher(chance: () => number): FilmScript {
  const oneOf = <T>(all: readonly T[]): T => all[Math.floor(chance() * all.length)] as T;
  const shade = (from: number, to: number) => Math.round(from + chance() * (to - from));
  const colour = (from: number, to: number): Colour => [shade(from, to), shade(from, to), shade(from, to)];
  const skin = oneOf(SKINS);
  const shirt = chance() < 0.3 ? colour(190, 240) : chance() < 0.5 ? colour(20, 70) : colour(40, 200);
  return {
    reps: [
      { holdS: 2.6, restS: 1 },
      { holdS: 4, twitchM: chance() < 0.5 ? 0.02 : 0, restS: 1 },
    ],
    yawDeg: Math.round(-30 + chance() * 60),
    distanceM: 1.6 + chance() * 1.9,
    leftHanded: chance() < 0.4,
    seated: chance() < 0.2,
    size: 0.85 + chance() * 0.25,
    look: {
      ...{ skin, shirt, trousers: colour(20, 120), hair: oneOf(HAIRS) },
      ...{ band: chance() < 0.2, light: oneOf([1, 1, 1, 0.8, 0.6, 0.4]) },
    },
  };
}

/** The same, and how far and how fast the draw goes drawn at random too. */
function otherArcher(chance: () => number): FilmScript {
  const { reps, ...archer } = anyArcher(chance);
  const way = () => ({
    drawS: 0.8 + chance() * 1.4,
    letDownS: 0.6 + chance() * 0.8,
    raisedS: 0.2 + chance(),
  });
  return { ...archer, reps: reps.map((rep) => ({ ...rep, ...way() })), longerDrawM: -0.05 + chance() * 0.1 };
}

/** The same, seen from the front or little off it. */
function frontArcher(chance: () => number): FilmScript {
  const archer = otherArcher(chance);
  return { ...archer, yawDeg: Math.round((archer.yawDeg ?? 0) / 6) };
}

const atRandom: Record<string, (chance: () => number) => FilmScript> = {
  any: anyArcher,
  other: otherArcher,
  front: frontArcher,
};

/**
 * A film by its name: one of `films`, or `any`, `other` or `front` with a number, an archer drawn at random.
 * @throws RangeError where there is none of that name
 */
export function filmOf(name: string): FilmScript {
  const [, kind = '', seed] = /^([a-z]+)(\d+)$/.exec(name) ?? [];
  const film = atRandom[kind]?.(chanceFrom(Number(seed))) ?? films[name];
  if (film === undefined)
    throw new RangeError(`there is no film "${name}"; there are ${Object.keys(films)}, any1, other1, front1 ...`);
  return film;
}

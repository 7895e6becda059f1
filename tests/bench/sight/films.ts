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
  walker: { reps: short, walker: true },
  mirror: { reps: short, mirror: true },
  onlooker: { reps: short, onlooker: true },
  pet: { reps: short, pet: true },
  slow: { reps: short, fps: 10 },
  behind: { reps: short, yawDeg: 180 },
  dim: { reps: short, look: { light: 0.12, grain: 5 } },
  dark: { reps: short, look: { light: 0.03, grain: 5 } },
  lamp: { reps: [{ holdS: 3 }, { holdS: 6 }], darkFromMs: 17_000 },
};

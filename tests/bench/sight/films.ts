import type { FilmScript } from '../../fixtures/sight/write-film.ts';

const plain = [{ holdS: 5 }, { holdS: 3, twitchM: 0.02 }, { holdS: 2.2 }];

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
  left: { reps: plain, leftHanded: true, look: { skin: [96, 62, 44], shirt: [150, 50, 46] } },
  side: { reps: plain, yawDeg: 30 },
  near: { reps: plain, distanceM: 1.8 },
  far: { reps: plain, distanceM: 3.5 },
  band: { reps: plain, look: { band: true } },
  seated: { reps: plain, seated: true },
  walker: { reps: plain, walker: true },
  mirror: { reps: plain, mirror: true },
  behind: { reps: plain, yawDeg: 180 },
  dim: { reps: plain, look: { light: 0.12, grain: 5 } },
  dark: { reps: plain, look: { light: 0.03, grain: 5 } },
  lamp: { reps: [{ holdS: 3 }, { holdS: 6 }], darkFromMs: 17_000 },
};

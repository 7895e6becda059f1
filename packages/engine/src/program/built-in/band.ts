import { type BuiltIn, coolDown, layoff, warmUpBand } from './rack.ts';

const source = 'spigarellirevolution.blogspot.com, 2013: 10 s holds, 10 s rest, 6 reps, 10 sets, 20 s between sets.';

const travelBand: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e100c',
  title: 'Travel band',
  about:
    'Short holds on a stretch band, for a journey or a week without the bow. It grows a set at a time to a full band evening.',
  source: `${source} Beginning with three sets and adding one at a time is ours.`,
  tool: 'band',
  warmUp: warmUpBand,
  blocks: [
    {
      ...{ title: 'Band holds', drill: 'holding', sets: 3, reps: 6 },
      ...{ draw: 2, hold: 10, letDown: 2, rest: { seconds: 10 }, setRest: 20 },
      ladder: { rungs: [{ raise: 'sets', by: 1, until: 10 }], layoff },
    },
  ],
  coolDown,
};

const bandEvening: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1006',
  title: 'Band evening',
  about: 'Many short holds on a stretch band. Quiet, and possible in any room.',
  source,
  tool: 'band',
  warmUp: warmUpBand,
  blocks: [
    {
      ...{ title: 'Band holds', drill: 'holding', sets: 10, reps: 6 },
      ...{ draw: 2, hold: 10, letDown: 2, rest: { seconds: 10 }, setRest: 20 },
    },
  ],
  coolDown,
};

/** Programs on a stretch band, the gentler first. */
export const bandPrograms: readonly BuiltIn[] = [travelBand, bandEvening];

import { type BuiltIn, coolDown, warmUpBow } from './rack.ts';

const baselineTest: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1007',
  title: 'Baseline test',
  kind: 'test',
  measure: 'rep-where-form-fails',
  about:
    'Holds of 15 seconds with 25 seconds of rest until form fails. Stop at that rep: its number is where you start. Repeat every 4 to 8 weeks.',
  source:
    'ndarchery.co, "Developing an SPT protocol", 2025: 15 s holds, 25 s rest, until form fails; the rep where form fails is the starting number. Ending after twenty reps is ours.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{ title: 'Holds until form fails', drill: 'holding', sets: 1, reps: 20 },
      ...{ draw: 3, hold: 15, letDown: 3, rest: { seconds: 25 } },
    },
  ],
  coolDown,
};

const longestHold: BuiltIn = {
  id: '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e100d',
  title: 'Longest hold',
  kind: 'test',
  measure: 'longest-hold-seconds',
  about:
    'One hold, as long as the form is good: let down when the line goes, not when nothing is left. Not on a day with pain. Repeat every 4 to 8 weeks.',
  source:
    'Time to failure at a held load is how endurance is measured: Frey Law & Avin 2010, Ergonomics 53:109. Doing it at full draw, letting down when form fails, and ending after two minutes are ours.',
  tool: 'bow',
  warmUp: warmUpBow,
  blocks: [
    {
      ...{ title: 'One hold until form fails', drill: 'holding', sets: 1, reps: 1 },
      ...{ draw: 3, hold: 120, letDown: 3, rest: { seconds: 0 } },
    },
  ],
  coolDown,
};

/** Programs that measure. */
export const builtInTests: readonly BuiltIn[] = [baselineTest, longestHold];

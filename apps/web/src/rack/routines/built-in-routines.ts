import type { Routine } from './routine.ts';

/**
 * Routines that every rack has, gentle and without a bow.
 * @source common practice, no source; a coach or a physiotherapist knows what suits an archer
 */
export const builtInRoutines: readonly Routine[] = [
  {
    id: 'shoulder-mobility',
    title: 'Easy shoulders',
    kind: 'mobility',
    minutes: 8,
    lines: [
      'Shoulder circles, 10 each way',
      'Arms overhead along a wall, slowly, 10',
      'Upper back turns on hands and knees, 8 each side',
      'Chest stretch in a doorway, 30 s each side',
      'Slow breaths with the shoulders low, one minute',
    ],
  },
  {
    id: 'shoulder-strength',
    title: 'Band and floor',
    kind: 'strength',
    minutes: 20,
    lines: [
      'Band rows, elbows close, 3 x 12',
      'Turning out against a band, elbow at the side, 3 x 12 each side',
      'Push-ups on a wall or the floor, 3 x 8',
      'Side support on the forearm, 2 x 20 s each side',
    ],
  },
];

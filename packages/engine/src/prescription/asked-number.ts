/** The numbers of a prescription that can be asked about. */
export type AskedNumber =
  | 'sets'
  | 'reps'
  | 'draw'
  | 'hold'
  | 'letDown'
  | 'rest'
  | 'setRest'
  | 'addedWeight'
  | 'duration';

/** Those that a ladder climbs by. */
export const levers = ['sets', 'reps', 'hold', 'addedWeight'] as const satisfies readonly AskedNumber[];

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

/** What the archer does in one stretch of time. */
export type StepKind = 'ready' | 'draw' | 'hold' | 'letDown' | 'rest' | 'setRest';

/** One stretch of a timeline. Times are whole milliseconds from the timeline's start; block, set and rep are 0-based. */
export interface Step {
  kind: StepKind;
  startMs: number;
  durationMs: number;
  /** A rest belongs to the rep it follows; the ready step to the first rep. */
  block: number;
  set: number;
  rep: number;
  hand: 'usual' | 'opposite';
  /** Of a draw and a hold only: where full draw is seen, the hold counts from there. */
  countFrom?: 'anchor';
  /** Of a let-down only: where it ends. Absent means rest. */
  to?: 'set-up';
}

/**
 * What sounds or is said. `ready`: stand to; `draw`, `hold`, `letDown`, `rest`, `setRest`: a step begins; `half`: half of the hold is
 * over; `count`: one of the last three seconds of a hold; `call`: words said during the hold; `mark`: how much of a long rest, or of a hold, is
 * left; `restOver`: the next draw is near; `done`: the last let-down is over.
 */
export type CueKind =
  | 'ready'
  | 'draw'
  | 'hold'
  | 'half'
  | 'count'
  | 'call'
  | 'mark'
  | 'letDown'
  | 'rest'
  | 'setRest'
  | 'restOver'
  | 'done';

/** One sound or word at an offset from the timeline's start, whole milliseconds. */
export interface Cue {
  atMs: number;
  kind: CueKind;
  words?: string;
}

/** A prescription laid out in time: steps without gap or overlap, cues in order of time. */
export interface Timeline {
  steps: Step[];
  cues: Cue[];
  durationMs: number;
  /** Weight added in each block, pounds-force, by the block's place in the program: what each rep's record says of it. */
  addedWeightsLbf?: Readonly<Record<number, number>>;
  /** A test's drill is marked as one. */
  kind?: 'test';
}

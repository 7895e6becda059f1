import type { MovedPart, RepRecord, Why } from '../journal/drill-record.ts';
import type { Step } from '../timeline/timeline.ts';

/** What a screen needs to know of a session at one moment. */
export interface SessionView {
  /** `waiting`: not begun; `done`: walked to its end; `stopped`: ended early. */
  state: 'waiting' | 'running' | 'paused' | 'done' | 'stopped';
  /** Why it is paused. `gap`: time was lost (sleep, frozen page), the running rep is `unsure`. */
  pausedBy?: 'archer' | 'gap';
  /**
   * The step under way; while waiting, the first. After a skip or a gap it may be a wait that the timeline does not hold. Absent when
   * ended, and after a gap in the last rep.
   */
  step?: Step;
  /** Time left in the step, milliseconds. */
  msLeft: number;
  /** The step's length as lived: more rest lengthens it. */
  stepMs: number;
  /** The next step. */
  next?: Step;
  /**
   * Offset in the timeline, milliseconds; equals the `atMs` clock of its cues: those from here on are still to come. Early let-down and skip
   * jump it forward, pause and more rest hold it. More rest in the last seconds before a draw takes it back to just before the call.
   */
  offsetMs: number;
  /** The caller's clock at which offset 0 would lie now: `cueAtNow = originMs + cue.atMs`. Changes with every pause, jump and more rest. Absent unless running. */
  originMs?: number;
  /** How far it has come. Reps done are those that ended, however they ended; set, rep and block are 0-based, the block's place among today's. */
  progress: {
    repsDone: number;
    repsTotal: number;
    set: number;
    sets: number;
    rep: number;
    reps: number;
    block: number;
    blocks: number;
    msLeft: number;
  };
  lastRep?: RepRecord;
}

/** What can be sent to a session: by the archer, and `gap` by the caller when time was lost (a frozen page, a crash). `letDownNow` may say why;
 * `why` says it of the last rep, if that was let down early, or takes it back. */
export type SessionEvent =
  | { type: 'begin' | 'pause' | 'resume' | 'skipRep' | 'moreRest' | 'lessRest' | 'stop' | 'gap' }
  | { type: 'letDownNow'; why?: Why }
  | { type: 'why'; why?: Why };

/** What a witness saw: the bow at full draw, or let down, at an instant of the caller's clock, milliseconds. It may be reported later. */
export interface SeenEvent {
  type: 'observe';
  seen: 'drawn' | 'letDown';
  atMs: number;
  /** Of a let-down: what had moved in the hold, and how long nothing had, milliseconds. Absent where the form could not be judged. */
  form?: SeenForm;
}

/** The form of a hold as a witness saw it. */
export interface SeenForm {
  /** Empty where nothing moved. */
  moved: readonly MovedPart[];
  wholeMs: number;
}

import { GAP_LIMIT_MS, type SessionView } from '@larkhold/engine';

/** Looking away for this long, with nothing heard, is no loss. */
export const UNNOTICED_MS = 1_000;
/** A rest that nobody notices may go on until this long before the draw. */
export const CALL_BACK_MS = 5_000;

/** What was known at one look at a running drill. */
export interface Look {
  /** The page clock, milliseconds. */
  nowMs: number;
  /** The wall clock, milliseconds; only its difference to the page clock is read, and only to notice a sleep. */
  wallMs: number | undefined;
  /** Whether the page is on the screen. */
  isSeen: boolean;
  /** Whether its cues are heard. */
  isHeard: boolean;
}

/** `lost`: the machine slept or the page hung; `unnoticed`: a step that counts could be neither seen nor heard. */
export type Loss = 'lost' | 'unnoticed';

/** Notices time that nobody may credit, from one look at a drill to the next. */
export class TimeWatch {
  #last: Look | undefined;
  #noticedMs = 0;

  /**
   * Looks once more.
   * @param look what is known now
   * @param view where the drill was at the last look
   * @returns why what passed since the last look does not count, or undefined
   */
  look(look: Look, view: Pick<SessionView, 'state' | 'step' | 'msLeft'>): Loss | undefined {
    const last = this.#last;
    this.#last = look;
    if (last === undefined || view.state !== 'running') {
      this.#noticedMs = look.nowMs;
      return undefined;
    }
    const spanMs = look.nowMs - last.nowMs;
    // A page that hangs shows nothing new, but its cues are on the audio clock already.
    const isShown = last.isSeen && look.isSeen && spanMs <= UNNOTICED_MS;
    if (isShown || (last.isHeard && look.isHeard)) this.#noticedMs = look.nowMs;
    // Most systems stop the page clock while they sleep; the wall clock tells. Set back it tells nothing.
    const sleptMs = (look.wallMs ?? 0) - (last.wallMs ?? 0) - spanMs;
    if (spanMs > GAP_LIMIT_MS || sleptMs > GAP_LIMIT_MS) return 'lost';
    const isUnnoticed = look.nowMs - this.#noticedMs > UNNOTICED_MS;
    if (!isUnnoticed || isLongWait(view, spanMs)) return undefined;
    // A hidden page is looked at less often by browsers: only where it was on the screen all the while has it hung.
    return last.isSeen && look.isSeen && spanMs > UNNOTICED_MS ? 'lost' : 'unnoticed';
  }
}

function isLongWait({ step, msLeft }: Pick<SessionView, 'step' | 'msLeft'>, spanMs: number): boolean {
  const isWait = step?.kind === 'ready' || step?.kind === 'rest' || step?.kind === 'setRest';
  return isWait && msLeft - spanMs > CALL_BACK_MS;
}

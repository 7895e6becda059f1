import type { DrillRecord, RepRecord, SessionSnapshot } from '@larkhold/engine';

/** What `lark-drill` says: event name to `detail`. All bubble and are composed. */
export interface DrillEvents {
  /** Begun; the record is open. */
  'lark-begin': { record: DrillRecord };
  /** A rep ended, however it ended. */
  'lark-rep': { rep: RepRecord; record: DrillRecord; snapshot: SessionSnapshot };
  /** Another step, or paused, resumed, ended; and every two seconds while the bow is drawn. */
  'lark-change': { snapshot: SessionSnapshot };
  /** Done or stopped; the record is closed. */
  'lark-end': { record: DrillRecord };
  /** Something the archer has to know. */
  'lark-notice': { message: string };
}

/** What an archer says after a drill. Absent: not said. */
export interface AfterDrill {
  /** 0 to 10. */
  effort?: number;
  pain?: boolean;
  note?: string;
  /** All reps, corrected ones included. */
  reps: RepRecord[];
}

/**
 * An event of the runner, ready to dispatch.
 * @param type its name
 * @param detail what it tells
 * @returns an event that bubbles and is composed
 */
export function drillEvent<Type extends keyof DrillEvents>(
  type: Type,
  detail: DrillEvents[Type],
): CustomEvent<DrillEvents[Type]> {
  return new CustomEvent(type, { detail, bubbles: true, composed: true });
}

/** The events of `lark-drill` as listeners get them. */
type DrillEventMap = { [Type in keyof DrillEvents]: CustomEvent<DrillEvents[Type]> };

declare global {
  // They bubble: whichever element of a page listens, it knows what they tell.
  interface HTMLElementEventMap extends DrillEventMap {}
}

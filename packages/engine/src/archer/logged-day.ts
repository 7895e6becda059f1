import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import type { DrillSummary } from './drill-summary.ts';

/** What the journal says of one day: its drills in order of their instants, and its diary entry. */
export interface LoggedDay {
  /** Days from 1970-01-01. */
  day: number;
  drills: readonly DrillRecord[];
  entry?: DayEntry;
  /** It represents itself and everything before it, folded already; see `dayOfPast`. */
  isPast?: true;
  /** What each drill comes to; made when it is first asked for. */
  summaries?: readonly DrillSummary[];
}

/** What one day asked of the body. */
export interface DayLoad {
  /** Days from 1970-01-01. */
  day: number;
  /** At full draw in all drills, milliseconds. */
  heldMs: number;
  /** Force times time at full draw, newton-seconds, of the drills whose weight is known. */
  impulseNs: number;
  arrowCount: number;
  drillCount: number;
  /** Length of the drills, milliseconds, where it was kept. */
  durationMs: number;
}

import type { LoggedDay } from './logged-day.ts';

/** States are kept this many days apart: each one kept is memory that lives as long as the history. */
const APART = 32;

/** A fold over days. */
export interface DayFold<S, T> {
  /**
   * The state after the first days of a history.
   * @param days the journal by days
   * @param count how many of them
   * @returns the state
   */
  after(days: readonly LoggedDay[], count: number): S;
  /**
   * What was noted of the state after every day.
   * @param days the journal by days
   * @returns one note a day, in the same order
   */
  notes(days: readonly LoggedDay[]): readonly T[];
  /**
   * Folds some days ahead of being asked for them, so that a long history can be folded in parts. No answer depends on it.
   * @param days the journal by days
   * @param count how many of them
   */
  ahead(days: readonly LoggedDay[], count: number): void;
}

interface Kept<S, T> {
  days: readonly LoggedDay[];
  /** How many of the days are folded. */
  count: number;
  /** After no day, after 32, after 64 and so on. */
  states: S[];
  /** After all days that are folded, and after all but the last of these, where that is known. */
  end: S;
  beforeEnd: S;
  isBeforeKnown: boolean;
  notes: T[];
}

/**
 * Makes a fold over days that keeps a state now and then, so that one more day costs one step, and a late edit only the steps since then. Pure
 * to its caller: the same days give the same states, kept or not.
 * @param start the state before the first day
 * @param step the state after a day; it must not change a state
 * @param note what is wanted of the state after every day, small
 * @returns the fold
 */
export function foldDays<S, T = undefined>(
  start: S,
  step: (state: S, day: LoggedDay, at: number, days: readonly LoggedDay[]) => S,
  note?: (state: S) => T,
): DayFold<S, T> {
  // The first day names the history.
  const kept = new WeakMap<LoggedDay, Kept<S, T>>();

  function fold(days: readonly LoggedDay[], count: number): Kept<S, T> | undefined {
    const [first] = days;
    if (first === undefined) return undefined;
    const before = kept.get(first);
    if (before?.days === days && before.count >= count) return before;
    const now = goOn(before?.days === days ? before : rebased(before, days), count);
    kept.set(first, now);
    return now;
  }

  /** The part of a fold that still holds for other days, as a fold of these. */
  function rebased(before: Kept<S, T> | undefined, days: readonly LoggedDay[]): Kept<S, T> {
    const same = before ? Math.min(before.count, sameCount(before.days, days)) : 0;
    const { at, state } = before ? nearest(before, same) : { at: 0, state: start };
    const states = before ? before.states.slice(0, Math.floor(at / APART) + 1) : [start];
    // The fold that this one continues is not asked again, so that its notes need no copy.
    const notes = before?.notes.length === at ? before.notes : (before?.notes.slice(0, at) ?? []);
    const isSameEnd = before !== undefined && at === before.count;
    const beforeEnd = isSameEnd ? before.beforeEnd : state;
    return { days, count: at, states, end: state, beforeEnd, isBeforeKnown: isSameEnd && before.isBeforeKnown, notes };
  }

  function goOn(now: Kept<S, T>, count: number): Kept<S, T> {
    const { days, states, notes } = now;
    for (let at = now.count; at < count; at++) {
      now.beforeEnd = now.end;
      now.isBeforeKnown = true;
      now.end = step(now.end, days[at]!, at, days);
      now.count = at + 1;
      if (note) notes.push(note(now.end));
      if (now.count % APART === 0) states.push(now.end);
    }
    return now;
  }

  function nearest(
    { count, states, end, beforeEnd, isBeforeKnown }: Kept<S, T>,
    wanted: number,
  ): { at: number; state: S } {
    if (wanted === count) return { at: count, state: end };
    if (wanted === count - 1 && isBeforeKnown) return { at: wanted, state: beforeEnd };
    const place = Math.floor(wanted / APART);
    return { at: place * APART, state: states[place] as S };
  }

  function stateAt(states: readonly S[], days: readonly LoggedDay[], count: number): S {
    const place = Math.floor(count / APART);
    let state = states[place] as S;
    for (let at = place * APART; at < count; at++) state = step(state, days[at]!, at, days);
    return state;
  }

  return {
    after(days, count) {
      const known = count > 0 ? fold(days, days.length) : undefined;
      if (known === undefined) return start;
      const { at, state } = nearest(known, count);
      return at === count ? state : stateAt(known.states, days, count);
    },
    notes: (days) => fold(days, days.length)?.notes ?? [],
    ahead: (days, count) => void fold(days, Math.min(count, days.length)),
  };
}

function sameCount(a: readonly LoggedDay[], b: readonly LoggedDay[]): number {
  const most = Math.min(a.length, b.length);
  let at = 0;
  while (at < most && a[at] === b[at]) at++;
  return at;
}

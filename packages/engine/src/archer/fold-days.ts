import type { LoggedDay } from './logged-days.ts';

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
}

interface Kept<S, T> {
  days: readonly LoggedDay[];
  /** After no day, after 32, after 64 and so on. */
  states: S[];
  /** After all days, and after all but the last. */
  end: S;
  beforeEnd: S;
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

  function fold(days: readonly LoggedDay[]): Kept<S, T> | undefined {
    const [first] = days;
    if (first === undefined) return undefined;
    const before = kept.get(first);
    if (before?.days === days) return before;
    const now = goOn(before, days);
    kept.set(first, now);
    return now;
  }

  function goOn(before: Kept<S, T> | undefined, days: readonly LoggedDay[]): Kept<S, T> {
    const same = before ? sameCount(before.days, days) : 0;
    const from = before ? nearest(before, same) : { at: 0, state: start };
    const states = before ? before.states.slice(0, Math.floor(from.at / APART) + 1) : [start];
    const notes = before ? before.notes.slice(0, from.at) : [];
    let end = from.state;
    let beforeEnd = from.state;
    if (before && from.at === days.length) {
      beforeEnd = before.days.length === from.at ? before.beforeEnd : stateAt(before.states, days, from.at - 1);
    }
    for (let at = from.at; at < days.length; at++) {
      beforeEnd = end;
      end = step(end, days[at]!, at, days);
      if (note) notes.push(note(end));
      if ((at + 1) % APART === 0) states.push(end);
    }
    return { days, states, end, beforeEnd, notes };
  }

  function nearest({ days, states, end, beforeEnd }: Kept<S, T>, count: number): { at: number; state: S } {
    if (count === days.length) return { at: count, state: end };
    if (count === days.length - 1) return { at: count, state: beforeEnd };
    const place = Math.floor(count / APART);
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
      const known = count > 0 ? fold(days) : undefined;
      if (known === undefined) return start;
      const { at, state } = nearest(known, count);
      return at === count ? state : stateAt(known.states, days, count);
    },
    notes: (days) => fold(days)?.notes ?? [],
  };
}

function sameCount(a: readonly LoggedDay[], b: readonly LoggedDay[]): number {
  const most = Math.min(a.length, b.length);
  let at = 0;
  while (at < most && a[at] === b[at]) at++;
  return at;
}

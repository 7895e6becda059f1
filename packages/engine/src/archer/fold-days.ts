import type { LoggedDay } from './logged-days.ts';

/**
 * Makes a fold over days that keeps a state after every day, so that one more day costs one step. Pure to its caller: the same days give the
 * same states, kept or not.
 * @param start the state before the first day
 * @param step the state after a day
 * @returns gives the states after each of the days
 */
export function foldDays<S>(
  start: S,
  step: (state: S, day: LoggedDay, at: number, days: readonly LoggedDay[]) => S,
): (days: readonly LoggedDay[]) => readonly S[] {
  // The first day names the history.
  const kept = new WeakMap<LoggedDay, { days: readonly LoggedDay[]; states: S[] }>();
  return (days) => {
    const first = days[0];
    if (first === undefined) return [];
    const before = kept.get(first);
    if (before?.days === days) return before.states;
    const same = before ? sameCount(before.days, days) : 0;
    const states = before ? before.states.slice(0, same) : [];
    let state = states.at(-1) ?? start;
    for (let at = same; at < days.length; at++) {
      state = step(state, days[at]!, at, days);
      states.push(state);
    }
    kept.set(first, { days, states });
    return states;
  };
}

function sameCount(a: readonly LoggedDay[], b: readonly LoggedDay[]): number {
  const most = Math.min(a.length, b.length);
  let at = 0;
  while (at < most && a[at] === b[at]) at++;
  return at;
}

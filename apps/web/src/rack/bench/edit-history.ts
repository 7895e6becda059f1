/** Earlier drafts, the present one, and those that were undone. Never changed in place. */
export interface EditHistory<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** The field that the last edit was made in; more typing there is the same edit. */
  readonly mark?: string;
}

/** More steps than anybody takes back; older ones are let go. */
const mostSteps = 200;

/** @param present the first state. @returns a history with nothing to undo. */
export function createHistory<T>(present: T): EditHistory<T> {
  return { past: [], present, future: [] };
}

/**
 * Makes an edit.
 * @param history so far
 * @param next the state after the edit
 * @param mark the field it was made in; an edit with the mark of the one before joins it
 * @returns the new history; the same one when nothing changed
 */
export function edit<T>(history: EditHistory<T>, next: T, mark?: string): EditHistory<T> {
  if (next === history.present) return history;
  const joins = mark !== undefined && mark === history.mark;
  const past = joins ? history.past : [...history.past, history.present].slice(-mostSteps);
  return { past, present: next, future: [], mark };
}

/** @param history so far. @returns it with the next edit on its own, even in the same field. */
export function endEdit<T>(history: EditHistory<T>): EditHistory<T> {
  return history.mark === undefined ? history : { ...history, mark: undefined };
}

/** @param history so far. @returns it with the last edit undone; the same one when there is nothing to undo. */
export function undo<T>(history: EditHistory<T>): EditHistory<T> {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return { past: history.past.slice(0, -1), present: before, future: [history.present, ...history.future] };
}

/** @param history so far. @returns it with the last undo redone; the same one when there is nothing to redo. */
export function redo<T>(history: EditHistory<T>): EditHistory<T> {
  const [after, ...future] = history.future;
  if (after === undefined) return history;
  return { past: [...history.past, history.present], present: after, future };
}

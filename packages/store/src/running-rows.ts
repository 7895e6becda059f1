import * as z from 'zod';
import type { Change, Found } from './adapter.ts';
import { RefusedValueError } from './refused-value.ts';
import { type RunningDrill, runningDrillSchema } from './running-drill.ts';

// The drill under way is kept in two rows: what it was laid out from, written once, and where it is, written at every step. Its reps are
// in its record, which is written with each rep: a drill of thousands of reps would otherwise rewrite all of them at every step.

/** Where the drill under way is. */
export const placeSchema = z.strictObject({
  recordId: z.string().max(64).optional(),
  /** How many reps the snapshot counts; they are in the record. Absent where the snapshot is kept whole. */
  repCount: z.int().min(0).optional(),
  /** The session's own snapshot without its reps. */
  snapshot: z.unknown(),
});
type Place = z.output<typeof placeSchema>;

/**
 * The changes that keep the drill under way.
 * @param running the drill as it is
 * @param found what is stored, at least the table of single values
 * @returns only what has changed
 * @throws RefusedValueError if it is no drill under way
 */
export function runningChanges(running: RunningDrill, found: Found): Change[] {
  const read = runningDrillSchema.safeParse(running);
  if (!read.success) throw new RefusedValueError('running', read.error, running);
  const { snapshot, ...head } = read.data;
  const single = found.get('single');
  const known = runningDrillSchema.safeParse(single?.get('running'));
  const isKnown =
    single?.has('place') && known.data?.recordId === head.recordId && known.data?.startedAt === head.startedAt;
  const place: Place = { recordId: head.recordId, ...withoutReps(snapshot) };
  return [...(isKnown ? [] : [putCopy('running', { ...head, snapshot: null })]), putCopy('place', place)];
}

/** The changes that forget the drill under way. */
export const noRunning: readonly Change[] = [
  { table: 'single', do: 'remove', key: 'running' },
  { table: 'single', do: 'remove', key: 'place' },
];

/**
 * The drill under way, put together again.
 * @param found what is stored: single values and drills, checked
 * @returns the drill; its snapshot is `null` where its record no longer holds the reps that it counts. Undefined where none is under way
 */
export function runningOf(found: Found): RunningDrill | undefined {
  const single = found.get('single');
  const head = single?.get('running') as RunningDrill | undefined;
  const place = single?.get('place') as Place | undefined;
  if (head === undefined) return undefined;
  if (place === undefined || place.recordId !== head.recordId) return head;
  const { snapshot, repCount } = place;
  if (repCount === undefined) return { ...head, snapshot };
  const record: unknown = found.get('drills')?.get(head.recordId ?? '');
  const reps = isObject(record) && Array.isArray(record.reps) ? record.reps.slice(0, repCount) : [];
  if (reps.length < repCount || !isObject(snapshot) || !isObject(snapshot.walk)) return { ...head, snapshot: null };
  return { ...head, snapshot: { ...snapshot, walk: { ...snapshot.walk, reps } } };
}

function withoutReps(snapshot: unknown): Pick<Place, 'snapshot' | 'repCount'> {
  if (!isObject(snapshot) || !isObject(snapshot.walk) || !Array.isArray(snapshot.walk.reps)) return { snapshot };
  const { reps, ...walk } = snapshot.walk;
  return { snapshot: { ...snapshot, walk }, repCount: (reps as unknown[]).length };
}

/** A copy, and JSON: a value that a disk can't hold must not wait among the changes that are still to be written. */
function putCopy(key: string, value: unknown): Change {
  return { table: 'single', do: 'put', key, value: JSON.parse(JSON.stringify(value)) };
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

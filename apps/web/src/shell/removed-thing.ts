import type { DrillRecord, Milestone, NoteScrap, Program } from '@larkhold/engine';

/** A hand-over on a coach's table. */
export interface KeptHandOver {
  /** The archer's id in it. */
  id: string;
  archer: string;
  /** The file, whole. */
  text: string;
}

/** Something that was removed, as it was. */
export type RemovedThing =
  | { kind: 'program'; value: Program }
  | { kind: 'drill'; value: DrillRecord }
  | { kind: 'note'; value: NoteScrap }
  | { kind: 'milestone'; value: Milestone }
  | { kind: 'handOver'; value: KeptHandOver };

/** More is not kept for an undo than this. */
const MOST = 200;

/** What was removed on one day. */
interface RemovedDay {
  day: string;
  things: readonly RemovedThing[];
}

/**
 * What was removed today, from what this device kept of it.
 * @param kept as it was found on the device
 * @param today ISO 8601
 * @returns the things, newest last; none of another day
 */
export function removedOn(kept: unknown, today: string): readonly RemovedThing[] {
  const { day, things } = Object(kept) as Partial<RemovedDay>;
  return day === today && Array.isArray(things) ? things : [];
}

/**
 * Adds what was just removed.
 * @param before what was removed today
 * @param things what was removed now
 * @param today ISO 8601
 * @returns what to keep on the device
 */
export function withRemoved(
  before: readonly RemovedThing[],
  things: readonly RemovedThing[],
  today: string,
): RemovedDay {
  const ids = new Set(things.map(keyOf));
  return { day: today, things: [...before.filter((one) => !ids.has(keyOf(one))), ...things].slice(-MOST) };
}

/**
 * Takes out what was brought back.
 * @param before what was removed today
 * @param thing what is there again
 * @param today ISO 8601
 * @returns what to keep on the device
 */
export function withoutRemoved(before: readonly RemovedThing[], thing: RemovedThing, today: string): RemovedDay {
  return { day: today, things: before.filter((one) => keyOf(one) !== keyOf(thing)) };
}

function keyOf({ kind, value }: RemovedThing): string {
  return `${kind} ${value.id}`;
}

/**
 * Writes a removed thing again.
 * @param thing as it was
 * @param act what writes it
 * @param editedAt the instant, ISO 8601, so that it counts as later than its removal
 * @returns whether it is kept
 */
export function putBack(
  { kind, value }: RemovedThing,
  act: {
    putProgram(value: Program): Promise<boolean>;
    putDrill(value: DrillRecord): Promise<boolean>;
    putNote(value: NoteScrap): Promise<boolean>;
    putMilestone(value: Milestone): Promise<boolean>;
    keepHandOver(value: KeptHandOver): Promise<boolean>;
  },
  editedAt: string,
): Promise<boolean> {
  switch (kind) {
    case 'program':
      return act.putProgram(value);
    case 'drill':
      return act.putDrill({ ...value, editedAt });
    case 'note':
      return act.putNote({ ...value, editedAt });
    case 'milestone':
      return act.putMilestone({ ...value, editedAt });
    case 'handOver':
      return act.keepHandOver(value);
  }
}

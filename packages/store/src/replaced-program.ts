import { compareInstants, isSame, withoutDevice } from '@larkhold/engine';
import { z } from 'zod';
import type { TakenIn } from './taken-in.ts';

/** How long an old program is kept, milliseconds. */
const KEPT_MS = 86_400_000;

/** A program that another one took the place of: enough to bring it back. */
export interface ReplacedProgram {
  title: string;
  programId: string;
  /** When, ISO 8601. */
  at: string;
  /** What the replacing changed, for `takeBack`. */
  taken: TakenIn;
}

const replacedSchema = z.object({
  title: z.string().max(200),
  programId: z.string().min(1).max(120),
  at: z.string().max(60),
  taken: z.object({
    values: z.array(z.object({ table: z.string(), key: z.string(), before: z.unknown(), after: z.unknown() })),
  }),
});

/**
 * Reads what was kept of a program that was replaced.
 * @param kept as it was put
 * @param now ISO 8601
 * @param stored the program of this id as it is stored now
 * @returns it; undefined where a day is over, or where what took its place has been changed or removed since
 */
export function readReplaced(kept: unknown, now: string, stored: (id: string) => unknown): ReplacedProgram | undefined {
  const read = replacedSchema.safeParse(kept).data as ReplacedProgram | undefined;
  if (read === undefined) return undefined;
  const ends = new Date(Date.parse(withoutDevice(read.at)) + KEPT_MS);
  if (Number.isNaN(ends.getTime()) || compareInstants(ends.toISOString(), withoutDevice(now)) < 0) return undefined;
  const taken = read.taken.values.find(({ table, key }) => table === 'opened' && key === read.programId);
  const after: unknown = Object(taken?.after).program;
  return taken && isSame(stored(read.programId), after) ? read : undefined;
}

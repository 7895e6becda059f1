import type { RepRecord } from './rep-record.ts';

const MOST_REPS = 20_000;
const MOST_ADDED_LBF = 60;
const LEAST_KEYS = 7;

/**
 * Copies a list of reps if every one is what `repRecordSchema` takes, thirty times as quickly as the schema does it.
 * @param found what came from outside.
 * @returns the copy; undefined where anything is not right, or where only the schema can tell.
 */
export function copyReps(found: unknown): RepRecord[] | undefined {
  if (!Array.isArray(found) || found.length > MOST_REPS) return undefined;
  const reps: RepRecord[] = [];
  for (const one of found) {
    const rep = copyRep(one);
    if (!rep) return undefined;
    reps.push(rep);
  }
  return reps;
}

function copyRep(found: unknown): RepRecord | undefined {
  if (typeof found !== 'object' || found === null) return undefined;
  const { block, set, rep, hand, prescribedMs, heldMs, outcome, why, addedWeightLbf } = found as Record<
    string,
    unknown
  >;
  if (!isCount(block) || !isCount(set) || !isCount(rep) || !isCount(prescribedMs) || !isCount(heldMs)) return undefined;
  if (hand !== 'usual' && hand !== 'opposite') return undefined;
  if (outcome !== 'held' && outcome !== 'short' && outcome !== 'skipped' && outcome !== 'unsure') return undefined;
  const copy: RepRecord = { block, set, rep, hand, prescribedMs, heldMs, outcome };
  let keyCount = LEAST_KEYS;
  if (why !== undefined) {
    if (why !== 'form' && why !== 'tired' && why !== 'interrupted') return undefined;
    copy.why = why;
  }
  if ('why' in found) keyCount += 1;
  if (addedWeightLbf !== undefined) {
    if (typeof addedWeightLbf !== 'number' || !(addedWeightLbf >= 0 && addedWeightLbf <= MOST_ADDED_LBF))
      return undefined;
    copy.addedWeightLbf = addedWeightLbf;
  }
  if ('addedWeightLbf' in found) keyCount += 1;
  return countKeys(found) === keyCount ? copy : undefined;
}

/** As each key that was read has a value, as many keys mean that none is a strange one. */
function countKeys(found: object): number {
  let count = 0;
  for (const _key in found) count += 1;
  return count;
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && Number(value) >= 0;
}

import type { BlockRules } from './block-rules.ts';
import { type Dose, totalSeconds } from './dose.ts';
import type { PrescribedBlock } from './prescription.ts';

/** The longest rest that failing again and again can make, seconds: as long as a file may ask for. */
const LONGEST_REST_SECONDS = 1800;

/**
 * A block's numbers at a dose.
 * @param rules the block's
 * @param dose what is asked of it
 * @param restHold the hold by which a rest counts that is a multiple of the hold, seconds
 * @param restFactor rests as a multiple of the file's
 * @returns milliseconds and pounds-force
 */
export function blockOf({ block, index }: BlockRules, dose: Dose, restHold: number, restFactor = 1): PrescribedBlock {
  const { title, drill, countFrom, letDownTo, hand, calls } = block;
  const own = 'seconds' in block.rest ? block.rest.seconds : block.rest.timesHold * restHold;
  const longer = (seconds: number) =>
    restFactor === 1
      ? seconds
      : Math.max(seconds, Math.min(LONGEST_REST_SECONDS, Math.ceil(2 * seconds * restFactor) / 2));
  const rest = longer(own);
  // One literal: prescriptions are made thousands of times in a row, and joining objects takes longer than all else here.
  const made: PrescribedBlock = {
    block: index,
    title,
    drill,
    sets: dose.sets,
    reps: dose.reps,
    letDownTo,
    hand,
    calls,
    addedWeightLbf: dose.addedWeight,
    drawMs: toMs(block.draw),
    holdMs: toMs(dose.hold),
    letDownMs: toMs(block.letDown),
    restMs: toMs(rest),
    setRestMs: toMs(longer(block.setRest ?? own)),
  };
  if (countFrom !== undefined) made.countFrom = countFrom;
  return made;
}

/** What a block asks for. */
export function doseOf({ holdMs, reps, sets, addedWeightLbf }: PrescribedBlock): Dose {
  return { hold: holdMs / 1000, reps, sets, addedWeight: addedWeightLbf };
}

/** The same block with another dose; rests stay as they are. */
export function withDose(block: PrescribedBlock, { hold, reps, sets, addedWeight }: Dose): PrescribedBlock {
  const { title, drill, letDownTo, hand, calls, drawMs, letDownMs, restMs, setRestMs, countFrom } = block;
  // Written out like the one above: to spread the block made a day of a life, from prescription to record, a tenth slower.
  const made: PrescribedBlock = {
    block: block.block,
    title,
    drill,
    sets,
    reps,
    letDownTo,
    hand,
    calls,
    addedWeightLbf: addedWeight,
    drawMs,
    holdMs: toMs(hold),
    letDownMs,
    restMs,
    setRestMs,
  };
  if (countFrom !== undefined) made.countFrom = countFrom;
  return made;
}

/** Time at full draw in all blocks, seconds. */
export function heldSeconds(blocks: readonly PrescribedBlock[]): number {
  return blocks.reduce((sum, block) => sum + totalSeconds(doseOf(block)), 0);
}

/**
 * Fewer reps, then sets, in every block by about the same share, until the time at full draw of all is no more than a limit.
 * @param blocks today's
 * @param limitSeconds at full draw, over all blocks
 * @param isStrict also leaves out blocks, the last first, and at the very end shortens the hold; else each block keeps one rep
 * @returns holds as they were, unless one rep alone is more than a strict limit
 */
export function fewerOverall(blocks: PrescribedBlock[], limitSeconds: number, isStrict: boolean): PrescribedBlock[] {
  const total = heldSeconds(blocks);
  if (total <= limitSeconds + 1e-6) return blocks;
  const share = limitSeconds / total;
  let now = blocks.map((block) => {
    const dose = doseOf(block);
    return withDose(block, {
      ...dose,
      ...mostReps(dose, Math.max(1, Math.floor(dose.sets * dose.reps * share + 1e-9))),
    });
  });
  now = filledUp(now, blocks, limitSeconds);
  if (!isStrict) return givenBack(now, limitSeconds);
  while (now.length > 1 && heldSeconds(now) > limitSeconds + 1e-6) now = now.slice(0, -1);
  const [first] = now;
  if (now.length !== 1 || !first || heldSeconds(now) <= limitSeconds + 1e-6) return now;
  const dose = doseOf(first);
  const count = Math.floor(limitSeconds / dose.hold + 1e-9);
  if (count >= 1) return [withDose(first, { ...dose, sets: 1, reps: Math.min(dose.reps, count) })];
  return [
    withDose(first, { ...dose, sets: 1, reps: 1, hold: Math.max(0.1, Math.floor(limitSeconds * 10 + 1e-9) / 10) }),
  ];
}

/** What the same share left over goes to the first blocks that can take it. */
function filledUp(now: PrescribedBlock[], full: readonly PrescribedBlock[], limitSeconds: number): PrescribedBlock[] {
  let leftSeconds = limitSeconds - heldSeconds(now) + 1e-6;
  return now.map((block, at) => {
    const [dose, most] = [doseOf(block), doseOf(full[at]!)];
    if (leftSeconds < dose.hold) return block;
    const count = dose.sets * dose.reps + Math.floor(leftSeconds / dose.hold);
    const filled = { ...dose, ...mostReps(most, Math.min(most.sets * most.reps, count)) };
    leftSeconds -= totalSeconds(filled) - totalSeconds(dose);
    return withDose(block, filled);
  });
}

/** Where the one rep that each block keeps is over the limit, blocks with more give up as much, the last first. */
function givenBack(blocks: readonly PrescribedBlock[], limitSeconds: number): PrescribedBlock[] {
  let overSeconds = heldSeconds(blocks) - limitSeconds - 1e-6;
  const left = [...blocks];
  for (let at = left.length - 1; at >= 0 && overSeconds > 0; at--) {
    const dose = doseOf(left[at]!);
    const count = Math.max(1, dose.sets * dose.reps - Math.ceil(overSeconds / dose.hold));
    const fewer = { ...dose, ...mostReps(dose, count) };
    overSeconds -= totalSeconds(dose) - totalSeconds(fewer);
    left[at] = withDose(left[at]!, fewer);
  }
  return left;
}

/** The sets and reps that come closest to a count without passing it; of two that do, the one with more sets. */
function mostReps({ sets, reps }: Dose, count: number): Pick<Dose, 'sets' | 'reps'> {
  let best = { sets: 1, reps: 1 };
  for (let tried = Math.min(sets, count); tried >= 1; tried--) {
    const each = Math.min(reps, Math.floor(count / tried));
    if (tried * each > best.sets * best.reps) best = { sets: tried, reps: each };
  }
  return best;
}

function toMs(seconds: number): number {
  return Math.round(seconds * 1000);
}

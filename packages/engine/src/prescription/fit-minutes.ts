import type { PrescribedBlock } from './prescription.ts';
import { READY_MS } from './timeline-duration.ts';

/** One way to do some of the blocks: how long it takes and how long the bow is held, milliseconds. */
interface Choice {
  timeMs: number;
  heldMs: number;
  sets: number;
  blocks: readonly PrescribedBlock[];
}

/**
 * The best of a prescription that is not longer than a given time. Exact: keeps the hold length and the rests, then the most time under
 * tension, then the most sets. Where not one rep fits, the hold of one rep is cut to what fits, half a second at least.
 * @param blocks today's blocks, not empty
 * @param limitMs the time there is, milliseconds
 * @returns the blocks to do, in order; whole blocks may be left out
 * @source own: choices per block joined from the last block back, dominated ones dropped
 */
export function fitToLimit(blocks: readonly PrescribedBlock[], limitMs: number): readonly PrescribedBlock[] {
  const budgetMs = limitMs - READY_MS;
  let suffix: Choice[] = [{ timeMs: 0, heldMs: 0, sets: 0, blocks: [] }];
  for (const block of [...blocks].reverse()) {
    const own = choicesOf(block, budgetMs);
    const joined = suffix.flatMap((rest) => own.map((choice) => join(choice, rest, block.setRestMs)));
    suffix = undominated([...suffix, ...joined.filter(({ timeMs }) => timeMs <= budgetMs)]);
  }
  const best = suffix.at(-1);
  if (best && best.blocks.length > 0) return best.blocks;
  const [first] = blocks;
  if (!first) return [];
  const leftMs = Math.floor((budgetMs - first.drawMs - first.letDownMs) / 100) * 100;
  return [{ ...first, sets: 1, reps: 1, holdMs: Math.min(first.holdMs, Math.max(500, leftMs)) }];
}

function choicesOf(block: PrescribedBlock, budgetMs: number): Choice[] {
  const repMs = block.drawMs + block.holdMs + block.letDownMs;
  const choices: Choice[] = [];
  for (let sets = 1; sets <= block.sets; sets++) {
    for (let reps = 1; reps <= block.reps; reps++) {
      const timeMs = sets * (reps * repMs + (reps - 1) * block.restMs) + (sets - 1) * block.setRestMs;
      if (timeMs <= budgetMs)
        choices.push({ timeMs, heldMs: sets * reps * block.holdMs, sets, blocks: [{ ...block, sets, reps }] });
    }
  }
  return undominated(choices);
}

function join(choice: Choice, rest: Choice, setRestMs: number): Choice {
  return {
    timeMs: choice.timeMs + rest.timeMs + (rest.blocks.length > 0 ? setRestMs : 0),
    heldMs: choice.heldMs + rest.heldMs,
    sets: choice.sets + rest.sets,
    blocks: [...choice.blocks, ...rest.blocks],
  };
}

/** Keeps, in rising time, only choices that hold longer (or as long in more sets) than every quicker one. */
function undominated(choices: Choice[]): Choice[] {
  choices.sort((a, b) => a.timeMs - b.timeMs || b.heldMs - a.heldMs || b.sets - a.sets);
  const kept: Choice[] = [];
  for (const choice of choices) {
    const best = kept.at(-1);
    if (!best || choice.heldMs > best.heldMs || (choice.heldMs === best.heldMs && choice.sets > best.sets))
      kept.push(choice);
  }
  return kept;
}

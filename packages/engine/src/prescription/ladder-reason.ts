import type { Block } from '../program/program.ts';
import { mostClimbs } from './ladder-path.ts';
import type { Reason } from './prescription.ts';
import { changeWords, counted, dayWords } from './reason-words.ts';
import type { LadderState } from './replay-ladder.ts';

/**
 * Where a block's numbers come from today, in words.
 * @param block the block as its file says
 * @param index its index in the program
 * @param state its place on the ladder
 * @returns one reason
 */
export function ladderReason(block: Block, index: number, state: LadderState): Reason {
  const { place, lastMove } = state;
  const numbers = `${counted(place.sets, 'set')} of ${counted(place.reps, 'rep')}, hold ${place.hold} s`;
  const facts = factsOf(block, state);
  const acts = ['sets', 'reps', 'hold', 'addedWeight'] as const;
  if (!block.ladder) {
    const change = `${block.title}: ${numbers}, as the program says. It has no ladder.`;
    return { rule: 'fixed', block: index, facts, change, acts };
  }
  const next = nextWords(block, state);
  if (!lastMove) {
    const change = `${block.title}: ${numbers}, where the program begins. ${next}`;
    return { rule: 'start', block: index, facts, change, acts };
  }
  const because = {
    climb: `${counted(lastMove.because, 'clean session')} in a row, the last on ${dayWords(lastMove.day)}`,
    stepDown: `too many reps let down early or skipped on ${dayWords(lastMove.day)}`,
    layoff: `${counted(lastMove.because, 'day')} without this drill`,
  }[lastMove.kind];
  return {
    rule: lastMove.kind,
    block: index,
    facts: { ...facts, because: lastMove.because, on: dayWords(lastMove.day) },
    change: `${block.title}: ${changeWords(lastMove.from, place) || numbers}, because of ${because}. ${next}`,
    acts: acts.filter((lever) => lastMove.from[lever] !== place[lever]),
  };
}

/** The place on the ladder, where the program begins, and where the rests come from. */
function factsOf(block: Block, { place, level, top }: LadderState): Reason['facts'] {
  return {
    ...{ level, top, hold: place.hold, reps: place.reps, sets: place.sets, addedWeight: place.addedWeight },
    ...{ startHold: block.hold, startReps: block.reps, startSets: block.sets, startAddedWeight: block.addedWeight },
    ...('timesHold' in block.rest ? { restTimesHold: block.rest.timesHold } : {}),
    ...(block.setRest === undefined ? { setRestFrom: 'rest' } : {}),
  };
}

function nextWords(block: Block, { cleanInRow, level, top, isCut }: LadderState): string {
  if (level === top && isCut) return `The ladder goes on, but only its first ${mostClimbs} steps are counted.`;
  if (level === top) return 'This is the top of its ladder.';
  const need = (block.ladder?.climbAfter.cleanSessions ?? 0) - cleanInRow;
  return `${counted(need, 'more clean session')} to the next step.`.replace(
    '1 more clean session to',
    'One more clean session to',
  );
}

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
  const { place, lastMove, level, top } = state;
  const facts = { level, top, hold: place.hold, reps: place.reps, sets: place.sets, addedWeight: place.addedWeight };
  const numbers = `${counted(place.sets, 'set')} of ${counted(place.reps, 'rep')}, hold ${place.hold} s`;
  if (!block.ladder) {
    return {
      rule: 'fixed',
      block: index,
      facts,
      change: `${block.title}: ${numbers}, as the program says. It has no ladder.`,
    };
  }
  const next = nextWords(block, state);
  if (!lastMove) {
    return {
      rule: 'start',
      block: index,
      facts,
      change: `${block.title}: ${numbers}, where the program begins. ${next}`,
    };
  }
  const moved = changeWords(lastMove.from, place) || numbers;
  const because = {
    climb: `${counted(lastMove.because, 'clean session')} in a row, the last on ${dayWords(lastMove.day)}`,
    stepDown: `too many reps let down early or skipped on ${dayWords(lastMove.day)}`,
    layoff: `${counted(lastMove.because, 'day')} without this drill`,
  }[lastMove.kind];
  const change = `${block.title}: ${moved}, because of ${because}. ${next}`;
  return {
    rule: lastMove.kind,
    block: index,
    facts: { ...facts, because: lastMove.because, on: dayWords(lastMove.day) },
    change,
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

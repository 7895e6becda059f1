import type { Block } from '../program/program.ts';
import { ladderReason } from './ladder-reason.ts';
import type { PrescribedBlock, Reason } from './prescription.ts';
import type { PastSession } from './program-sessions.ts';
import { replayLadder } from './replay-ladder.ts';

/**
 * A block's numbers at its place on the ladder, before today asks for less. A program of one set needs no set rest; where a rung adds sets to it,
 * the rest between reps stands between them.
 * @param block the block as its file says
 * @param index its index in the program
 * @param sessions the program's sessions in order of time
 * @param day days from 1970-01-01
 * @returns milliseconds and pounds-force, and where they come from
 */
export function prescribeBlock(
  block: Block,
  index: number,
  sessions: readonly PastSession[],
  day: number,
): { block: PrescribedBlock; reason: Reason } {
  const state = replayLadder(block, index, sessions, day);
  const { hold, reps, sets, addedWeight } = state.place;
  const { title, drill, letDownTo, hand, calls } = block;
  const rest = 'seconds' in block.rest ? block.rest.seconds : block.rest.timesHold * hold;
  const prescribed = {
    ...{ block: index, title, drill, sets, reps, letDownTo, hand, calls, addedWeightLbf: addedWeight },
    drawMs: toMs(block.draw),
    holdMs: toMs(hold),
    letDownMs: toMs(block.letDown),
    restMs: toMs(rest),
    setRestMs: toMs(block.setRest ?? rest),
  };
  return { block: prescribed, reason: ladderReason(block, index, state) };
}

function toMs(seconds: number): number {
  return Math.round(seconds * 1000);
}

import type { Block, Ladder } from '../program/program.ts';
import { judgeBlock } from './judge-block.ts';
import { type LeverValues, walkLadder } from './ladder-path.ts';
import type { PastSession } from './program-sessions.ts';

/** The last thing that moved a block on its ladder. */
export interface LadderMove {
  kind: 'climb' | 'stepDown' | 'layoff';
  /** Days from 1970-01-01. */
  day: number;
  from: LeverValues;
  /** Sessions in a row that caused it; days off for a layoff. */
  because: number;
}

/** Where a block stands on its ladder today. */
export interface LadderState {
  place: LeverValues;
  level: number;
  top: number;
  /** The ladder goes on above `top`. */
  isCut: boolean;
  cleanInRow: number;
  lastMove?: LadderMove;
}

/**
 * Walks a block's ladder through its history. Nothing of this is stored: a corrected record gives a corrected walk.
 * @param block the block as its file says today
 * @param index its index in the program
 * @param sessions the program's sessions in order of time
 * @param today days from 1970-01-01
 * @returns the place on the ladder and what led there last
 */
export function replayLadder(
  block: Block,
  index: number,
  sessions: readonly PastSession[],
  today: number,
): LadderState {
  const { path, isCut } = walkLadder(block);
  const { ladder } = block;
  const state = { level: 0, cleanInRow: 0, missedInRow: 0, lastMove: undefined as LadderMove | undefined };
  let lastDay: number | undefined;

  function move(kind: LadderMove['kind'], to: number, day: number, because: number): void {
    const from = path[state.level]!;
    const level = Math.min(path.length - 1, Math.max(0, to));
    if (level !== state.level) state.lastMove = { kind, day, from, because };
    state.level = level;
    state.cleanInRow = 0;
    state.missedInRow = 0;
  }

  function layOff(day: number): void {
    const days = lastDay === undefined ? 0 : day - lastDay;
    const steps = ladder ? stepsDown(ladder, days) : 0;
    if (steps > 0) move('layoff', state.level - steps, day, days);
  }

  for (const { record, day } of ladder ? sessions : []) {
    layOff(day);
    lastDay = Math.max(lastDay ?? day, day); // west across the date line the local day goes back
    const verdict = judgeBlock(record, index, path[state.level]!, ladder!);
    if (verdict === 'absent' || verdict === 'neutral') continue;
    state.cleanInRow = verdict === 'clean' ? state.cleanInRow + 1 : 0;
    state.missedInRow = verdict === 'missed' ? state.missedInRow + 1 : 0;
    if (state.cleanInRow >= ladder!.climbAfter.cleanSessions) move('climb', state.level + 1, day, state.cleanInRow);
    else if (state.missedInRow >= ladder!.stepDownAfter.sessions)
      move('stepDown', state.level - 1, day, state.missedInRow);
  }
  layOff(today);
  const { level, cleanInRow, lastMove } = state;
  return { place: path[level]!, level, top: path.length - 1, isCut, cleanInRow, lastMove };
}

function stepsDown(ladder: Ladder, days: number): number {
  return Math.max(0, ...(ladder.layoff ?? []).filter((entry) => days >= entry.days).map((entry) => entry.stepsDown));
}

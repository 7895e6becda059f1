import type { Program } from '../program/program.ts';
import { doseOf, fewerOverall, heldSeconds, withDose } from './block-dose.ts';
import { rulesOf } from './block-rules.ts';
import type { KnownToday } from './known-today.ts';
import { lessReasons } from './less-reasons.ts';
import type { Limited } from './limited.ts';
import type { PrescribedBlock } from './prescription.ts';
import type { AskedDrill, ProgramState } from './program-state.ts';
import type { Reason } from './reason.ts';
import { reasonOf } from './reason-of.ts';

/** From one drill to the next the time at full draw grows by a fifth at most. Own: no source. */
const GROWS_AT_MOST = 1.2;
/** Up to where the program begins it may treble: after mornings of one hold the whole drill does not come back at once. Own: no source. */
const GROWS_TO_FOOT = 3;

/**
 * While something eases, nothing rises above the most of the last five drills: not the hold, not the time at full draw, not the weight; and no
 * rest gets shorter because a hold did.
 * @param blocks today's full day
 * @param known everything that is known today
 * @returns nowhere more
 */
export function capToLast(blocks: PrescribedBlock[], { state: { asked }, program }: KnownToday): Limited {
  if (asked.length === 0) return { blocks };
  const most = (of: (drill: AskedDrill) => number) => Math.max(...asked.map(of));
  const hold = most(({ summary }) => summary.longestAskedMs) / 1000;
  const weight = most(({ addedLbf }) => addedLbf);
  const held = blocks.map((block) => {
    const dose = doseOf(block);
    return withDose(block, {
      ...dose,
      hold: Math.min(dose.hold, Math.max(0.1, hold)),
      addedWeight: Math.min(dose.addedWeight, weight),
    });
  });
  const capped = fewerOverall(held, most(({ summary }) => summary.askedMs) / 1000, true);
  return {
    blocks: capped.map((block) => longRest(block, asked, program)),
    reasonsFor: (from, to) =>
      lessReasons(from, to, (less, where) => reasonOf('cap', { ...less, drills: asked.length }, where)),
  };
}

/** Where the rest is a multiple of the hold, it is that of the longest hold of the last drills. */
function longRest(block: PrescribedBlock, asked: readonly AskedDrill[], program: Program): PrescribedBlock {
  const { block: file } = rulesOf(program)[block.block]!;
  if (!('timesHold' in file.rest)) return block;
  const holds = asked.map(
    ({ summary }) => summary.blocks.find((one) => one.block === block.block)?.longestAskedMs ?? 0,
  );
  const restMs = Math.max(block.restMs, Math.round(file.rest.timesHold * Math.max(...holds)));
  return {
    ...block,
    restMs,
    setRestMs: file.setRest === undefined ? Math.max(block.setRestMs, restMs) : block.setRestMs,
  };
}

/**
 * Lets the time at full draw grow by a fifth, or by one rep, at most over the most of the last five drills; up to where the program begins it may treble.
 * @param blocks today's
 * @param state the program's
 * @param program for its foot
 * @param keep the share of a full day that today is
 * @returns the blocks, and the reasons where the limit acted
 */
export function keepPace(
  blocks: PrescribedBlock[],
  { asked }: ProgramState,
  program: Program,
  keep = 1,
): { blocks: PrescribedBlock[]; reasons: Reason[] } {
  const footSeconds = keep * program.blocks.reduce((sum, { hold, reps, sets }) => sum + hold * reps * sets, 0);
  const mostSeconds = Math.max(0, ...asked.map(({ summary }) => summary.askedMs)) / 1000;
  // One rep more is always allowed: a fifth of a few reps is less than one, and nothing would ever grow.
  const repSeconds = Math.max(0, ...blocks.map(({ holdMs }) => holdMs)) / 1000;
  const toFootSeconds = asked.length === 0 ? footSeconds : Math.min(footSeconds, GROWS_TO_FOOT * mostSeconds);
  const limit = Math.max(toFootSeconds, GROWS_AT_MOST * mostSeconds, mostSeconds + repSeconds);
  if (heldSeconds(blocks) <= limit + 1e-6) return { blocks, reasons: [] };
  const less = fewerOverall(blocks, limit, false);
  const reasons = less.flatMap((block, at) => {
    const from = doseOf(blocks[at]!);
    if (from.reps === block.reps && from.sets === block.sets) return [];
    const facts = { title: block.title, fromReps: from.reps, fromSets: from.sets, reps: block.reps, sets: block.sets };
    const acts = ['sets', 'reps'] as const;
    return [reasonOf('pace', { ...facts, mostSeconds: Math.round(limit) }, { block: block.block, acts })];
  });
  return { blocks: less, reasons };
}

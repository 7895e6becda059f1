import type { Archer } from '../archer/archer.ts';
import type { Tool } from '../archer/capacity-state.ts';
import type { PainStage } from '../archer/pain-state.ts';
import type { Program } from '../program/program.ts';
import { doseOf, withDose } from './block-dose.ts';
import { type Dose, leastOf, totalSeconds } from './dose.ts';
import type { PrescribedBlock } from './prescription.ts';
import type { Reason } from './reason.ts';
import { reasonOf } from './reason-of.ts';
import { lessFacts } from './todays-eases.ts';

// Bands of age: usarchery.org 2020, "Developing strength and endurance with SPTs": under 11 band, 12-15 light bow. 11 itself is in no band and
// takes the lighter: own. How much is ours: a child no more than the club starter (bannockburnbowmen.org, coaching corner), a youth half.
const CHILD_UNTIL = 12;
const YOUTH_UNTIL = 16;
const CHILD_HOLD = 5;
const CHILD_REPS = 5;
const CHILD_REST_MS = 20_000;

const weightOrder: readonly Tool[] = ['strap', 'band', 'light-bow', 'bow'];

/**
 * What is drawn today: what the program draws, or lighter for a young archer and on the way back after pain.
 * @param tool the program's
 * @param archer their age, where known
 * @param stage of the way back after pain
 * @returns the lightest of these
 */
export function toolFor(tool: Tool, { ageYears }: Archer, stage?: PainStage): Tool {
  const allowed =
    ageYears === undefined || ageYears >= YOUTH_UNTIL ? 'bow' : ageYears < CHILD_UNTIL ? 'band' : 'light-bow';
  const byAge = lighter(tool, allowed);
  // A strap is as stiff as the arm that pulls it: a child takes the band instead.
  const own = byAge === 'strap' && allowed === 'band' ? 'band' : byAge;
  if (stage === undefined) return own;
  return stage === 'mimed' || stage === 'band' ? (own === 'strap' ? 'strap' : 'band') : lighter(own, stage);
}

function lighter(a: Tool, b: Tool): Tool {
  return weightOrder.indexOf(a) <= weightOrder.indexOf(b) ? a : b;
}

/** Why another tool is drawn than the program says, where age is the reason. */
export function toolReason(program: Program, tool: Tool, { ageYears }: Archer): Reason[] {
  if (ageYears === undefined || ageYears >= YOUTH_UNTIL || tool === program.tool) return [];
  return [reasonOf('age', { ageYears, tool })];
}

/**
 * Holds a full day to what suits a young archer: under 12 no more than the club starter over all blocks, from 12 to 15 at most half of what an
 * adult would begin with. That neither adds weight is seen to before, see `mostAddedLbf`.
 * @param blocks the full day, fitted to the minutes
 * @param program for its foot
 * @param archer their age, where known
 * @returns blocks and reasons
 */
export function limitToAge(
  blocks: PrescribedBlock[],
  program: Program,
  { ageYears }: Archer,
): { blocks: PrescribedBlock[]; reasons: Reason[] } {
  if (ageYears === undefined || ageYears >= YOUTH_UNTIL) return { blocks, reasons: [] };
  const reasons: Reason[] = [];
  const isChild = ageYears < CHILD_UNTIL;
  const limited = (isChild ? blocks.slice(0, 1) : blocks).map((block) => {
    const dose = doseOf(block);
    const foot = program.blocks[block.block]!;
    const youth = youthDose(dose, foot);
    const less = isChild ? leastOf(childDose(dose), youth) : youth;
    if (totalSeconds(less) < totalSeconds(dose) || less.hold < dose.hold) {
      const facts = { ...lessFacts(block.title, dose, less), ageYears };
      reasons.push(reasonOf('ageDose', facts, { block: block.block, acts: ['hold', 'reps', 'sets'] }));
    }
    const now = withDose(block, less);
    return isChild ? { ...now, restMs: Math.max(now.restMs, CHILD_REST_MS) } : now;
  });
  return { blocks: limited, reasons };
}

function childDose(dose: Dose): Dose {
  return { ...dose, hold: Math.min(dose.hold, CHILD_HOLD), reps: Math.min(dose.reps, CHILD_REPS), sets: 1 };
}

/** Half of an adult's first drill at the most, whatever less is worked with: who was led below the foot is not halved again. */
function youthDose(dose: Dose, foot: Dose): Dose {
  const { hold, reps, sets } = leastOf(dose, foot);
  if (foot.reps > 1) return { ...dose, hold, reps: Math.min(reps, Math.floor(foot.reps / 2)), sets };
  if (foot.sets > 1) return { ...dose, hold, reps, sets: Math.min(sets, Math.floor(foot.sets / 2)) };
  return { ...dose, hold: Math.max(0.1, Math.min(hold, Math.floor(foot.hold * 5) / 10)), reps, sets };
}

import type { Program } from '../program/program.ts';
import type { PrescribedBlock, Reason } from './prescription.ts';

/** What of the archer limits what is drawn. */
export interface Archer {
  /** Whole or part years, 0 to 120. */
  ageYears?: number;
  bow?: 'recurve' | 'compound' | 'barebow' | 'longbow';
}

/** What an archer's age and bow make of a prescription. */
export interface ArcherLimits {
  tool: Program['tool'];
  blocks: PrescribedBlock[];
  reasons: Reason[];
  cautions: string[];
}

/**
 * Holds a prescription to what suits the archer: under 12 a stretch band only, under 16 a light bow and no added weight. A compound bow keeps
 * its numbers and adds a caution, because no published number says how many let-downs are too many.
 * @param tool what the program draws
 * @param blocks today's blocks
 * @param archer age and bow, where known
 * @returns tool, blocks, reasons and cautions
 * @throws RangeError when the age is no number from 0 to 120
 * @source usarchery.org 2020, "Developing strength and endurance with SPTs": under 11 band, 12-15 light bow. 11 itself is in no band and takes the lighter: own.
 */
export function limitToArcher(tool: Program['tool'], blocks: PrescribedBlock[], archer: Archer = {}): ArcherLimits {
  const { ageYears, bow } = archer;
  if (ageYears !== undefined && !(ageYears >= 0 && ageYears <= 120)) {
    throw new RangeError(`archer.ageYears is ${ageYears}; expected years, 0 to 120`);
  }
  const limits: ArcherLimits = { tool, blocks, reasons: [], cautions: [] };
  if (ageYears !== undefined && ageYears < 16) limitToAge(limits, ageYears);
  const drawsBow = limits.tool === 'bow' || limits.tool === 'light-bow';
  if (bow === 'compound' && drawsBow) {
    limits.cautions.push(
      'A compound bow pulls hard as it is let down, and this drill lets down often. Keep both elbows high, let down slowly, and have a coach watch you first.',
    );
  }
  return limits;
}

function limitToAge(limits: ArcherLimits, ageYears: number): void {
  const isChild = ageYears < 12;
  const allowed: readonly Program['tool'][] = isChild ? ['band'] : ['light-bow', 'band', 'strap'];
  if (!allowed.includes(limits.tool)) {
    limits.tool = isChild ? 'band' : 'light-bow';
    const change = isChild
      ? 'Under 12: take a stretch band, not a bow.'
      : 'From 12 to 15: take a light bow, not your own full weight.';
    limits.reasons.push({ rule: 'age', facts: { ageYears, tool: limits.tool }, change, acts: [] });
  }
  for (const { addedWeightLbf, title, block } of limits.blocks) {
    if (addedWeightLbf === 0) continue;
    limits.reasons.push({
      rule: 'ageWeight',
      block,
      facts: { ageYears, fromLbf: addedWeightLbf, addedWeight: 0 },
      change: `${title}: no added weight under 16, instead of ${addedWeightLbf} lb.`,
      acts: ['addedWeight'],
    });
  }
  limits.blocks = limits.blocks.map((block) => ({ ...block, addedWeightLbf: 0 }));
  limits.cautions.push(
    isChild
      ? 'Under 12: a stretch band only, with a coach or another adult beside you.'
      : 'Under 16: a light bow, no added weight, and a coach who knows the plan.',
  );
}

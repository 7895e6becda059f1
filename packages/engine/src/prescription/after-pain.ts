import { dayOfNumber } from '../units/calendar-day.ts';
import { doseOf, fewerOverall, heldSeconds, withDose } from './block-dose.ts';
import { rulesOf } from './block-rules.ts';
import { halfSeconds, leastHold, shrink } from './dose.ts';
import type { KnownToday } from './known-today.ts';
import { lessReasons } from './less-reasons.ts';
import type { Limited } from './limited.ts';
import type { PrescribedBlock } from './prescription.ts';
import { reasonOf } from './reason-of.ts';
import { STAGE_KEEP } from './todays-eases.ts';

/** How much the hold and the time at full draw may grow after pain over the most that was done since, as a share; or by one second and one rep. Own: no source. */
const GROWS_AT_MOST = 1.2;

/**
 * After pain the way leads up in steps: no hold and no time at full draw is more than a fifth above the most that was really held since, and no weight
 * is above the most that was drawn since, whatever the program. Where nothing was drilled since, it begins no higher than with the band. Once the climb
 * is over, weight is free, and the limit grows by a fifth with every day with a drill.
 * @param blocks today's full day
 * @param known everything that is known today
 * @returns nowhere more
 */
export function climbAfterPain(blocks: PrescribedBlock[], known: KnownToday): Limited {
  const { since, painDay } = known.body.pain;
  if (since === undefined || painDay === undefined || blocks.length === 0) return { blocks };
  const isBegun = since.days > 0;
  const rules = rulesOf(known.program);
  const begins = blocks.map((block) =>
    withDose(block, shrink(doseOf(block), STAGE_KEEP.band, Math.min(0.5, leastHold(rules[block.block]!.path[0]!)))),
  );
  const [doneHold, doneSeconds] = [since.holdMs / 1000, since.heldMs / 1000];
  const stepHold = halfSeconds(Math.max(GROWS_AT_MOST * doneHold, doneHold + 1));
  const shorter = blocks.map((block, at) => {
    const dose = doseOf(block);
    const most = isBegun ? stepHold : begins[at]!.holdMs / 1000;
    return withDose(block, {
      ...dose,
      hold: Math.min(dose.hold, most),
      addedWeight: since.fadingDays === undefined ? Math.min(dose.addedWeight, since.addedLbf) : dose.addedWeight,
    });
  });
  const repSeconds = Math.min(...shorter.map(({ holdMs }) => holdMs)) / 1000;
  const stepSeconds = Math.max(GROWS_AT_MOST * doneSeconds, doneSeconds + repSeconds);
  const left = fewerOverall(shorter, isBegun ? stepSeconds : heldSeconds(begins), true);
  return {
    blocks: left,
    reasonsFor: (from, to) =>
      lessReasons(from, to, (less, where) => reasonOf('afterPain', { ...less, on: dayOfNumber(painDay) }, where)),
  };
}

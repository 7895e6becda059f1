import { type DrillOutlook, drillOutlook, layOut, longestOf, type Prescription, type Timeline } from '@larkhold/engine';
import type { AppView } from './app-context.ts';
import { ownHoldOf } from './own-hold.ts';

/** What is known of a drill before it is done, and its timeline. */
export interface Outlook extends DrillOutlook {
  timeline: Timeline;
}

type OutlookView = Pick<AppView, 'journal' | 'kit' | 'programs' | 'chosen' | 'today'>;

const kept = new WeakMap<Prescription, Pick<OutlookView, 'journal' | 'kit'> & { outlook: Outlook }>();

/**
 * What a drill will do to the archer. The same journal, kit and prescription give the same object, so that a page can ask as often as it draws.
 * @param view the app as it is
 * @param prescription the drill
 * @returns what the model says, and what is known besides
 */
export function outlookOf(view: OutlookView, prescription: Prescription): Outlook {
  const { programs, chosen, journal, kit } = view;
  const before = kept.get(prescription);
  if (before?.journal === journal && before.kit === kit) return before.outlook;
  const timeline = layOut(prescription);
  const known = drillOutlook({
    ...{ prescription, timeline, records: journal.drills, onFingersLbf: kit.drawWeightLbf },
    program: [chosen, ...programs].find(({ title }) => title === prescription.programTitle),
    longest: longestOf(ownHoldOf(view)),
  });
  const outlook = { ...known, timeline };
  kept.set(prescription, { journal, kit, outlook });
  return outlook;
}

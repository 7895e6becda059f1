import type { Outcome } from '@larkhold/engine';
import { formatCount, formatCounted, formatSeconds } from './format-for-people.ts';

/** A rep as a ribbon shows it; see `lark-hold-ribbon`. */
interface ShownRep {
  prescribedMs: number;
  heldMs: number;
  outcome: Outcome | 'coming' | 'now';
  why?: 'form' | 'tired' | 'interrupted';
}

/** More doubtful reps than these are only counted. */
const MOST_TOLD = 8;

/** How a rep ended, as a button says it. */
export const outcomeNames = { held: 'Held', short: 'Short', skipped: 'Skipped', unsure: 'Unsure' } as const;

/** Why a rep was let down early, as a button says it. */
export const shortReasonNames = { form: 'Form', tired: 'Tired', interrupted: 'Interrupted' } as const;

/**
 * One rep of a ribbon.
 * @param rep as it is shown
 * @param index its place, 0-based
 * @returns 'Rep 7: 12 s of 30 s, tired'
 */
export function ribbonRepWords({ outcome, heldMs, prescribedMs, why }: ShownRep, index: number): string {
  const name = `Rep ${formatCount(index + 1)}`;
  const asked = formatSeconds(prescribedMs);
  if (outcome === 'coming') return `${name}: still to come, ${asked}`;
  if (outcome === 'now') return `${name}: now, ${asked}`;
  if (outcome === 'held') return `${name}: held ${formatSeconds(heldMs)}`;
  if (outcome === 'skipped') return `${name}: skipped`;
  if (outcome === 'unsure') return `${name}: unsure`;
  return `${name}: ${formatSeconds(heldMs)} of ${asked}${why ? `, ${shortReasonNames[why].toLowerCase()}` : ''}`;
}

/**
 * What a ribbon shows, for those who do not see it.
 * @param reps in the order of the drill
 * @returns '20 reps: 18 held, 1 short, 1 skipped. Rep 7: 12 s of 30 s, tired. Rep 9: skipped.'
 */
export function ribbonWords(reps: readonly ShownRep[]): string {
  const count = (outcome: ShownRep['outcome']) => reps.filter((rep) => rep.outcome === outcome).length;
  const kinds = [
    ['held', 'held'],
    ['short', 'short'],
    ['skipped', 'skipped'],
    ['unsure', 'unsure'],
    ['now', 'under way'],
    ['coming', 'to come'],
  ] as const;
  const counted = kinds.flatMap(([kind, words]) => (count(kind) > 0 ? [`${formatCount(count(kind))} ${words}`] : []));
  const odd = reps.flatMap((rep, index) =>
    rep.outcome === 'short' || rep.outcome === 'skipped' || rep.outcome === 'unsure'
      ? [ribbonRepWords(rep, index)]
      : [],
  );
  const told = odd.slice(0, MOST_TOLD).map((words) => `${words}.`);
  const more = odd.length > MOST_TOLD ? [`And ${formatCount(odd.length - MOST_TOLD)} more.`] : [];
  return [`${formatCounted(reps.length, 'rep')}: ${counted.join(', ')}.`, ...told, ...more].join(' ');
}

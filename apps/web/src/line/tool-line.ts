import type { Prescription } from '@larkhold/engine';
import { formatWeight, say } from '@larkhold/words';
import type { AppView } from '../shell/app-context.ts';

/**
 * What is drawn today, and how heavy.
 * @param prescription today's
 * @param kit the archer's
 * @returns 'Your bow, 38 lb + 2 lb'
 */
export function toolLine(
  { tool: drawn = 'bow', blocks }: Prescription,
  { drawWeightLbf, units }: AppView['kit'],
): string {
  const added = Math.max(0, ...blocks.map(({ addedWeightLbf }) => addedWeightLbf));
  const tool = drawn === 'light-bow' ? 'light' : drawn;
  if (drawWeightLbf === undefined || tool !== 'bow') return say('today.tool', { tool });
  const weight = formatWeight(drawWeightLbf, units);
  if (added === 0) return say('today.toolWeight', { tool, weight });
  return say('today.toolAdded', {
    tool,
    weight: formatWeight(drawWeightLbf, 'imperial'),
    added: formatWeight(added, 'imperial'),
  });
}

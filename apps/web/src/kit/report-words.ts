import type { IntegrityReport } from '@larkhold/store';

const things: Readonly<Record<string, readonly [one: string, many: string]>> = {
  programs: ['opened program', 'opened programs'],
  drills: ['drill', 'drills'],
  days: ['day', 'days'],
  weeks: ['week page', 'week pages'],
  notes: ['note', 'notes'],
  milestones: ['milestone', 'milestones'],
};

/**
 * What a check of the store found, in plain sentences.
 * @param report what was found
 * @returns sentences, the most important first
 */
export function reportWords({ where, trouble, counts, setAside, unwrittenCount }: IntegrityReport): string[] {
  const counted = Object.entries(things).flatMap(([table, [one, many]]) => {
    const count = counts[table] ?? 0;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  });
  const unwritten = unwrittenCount === 1 ? 'One change has' : `${unwrittenCount} changes have`;
  const place = where === 'disk' ? 'on this device' : 'in memory';
  return [
    ...(trouble ? [trouble.message] : []),
    ...(unwrittenCount > 0 ? [`${unwritten} not reached the disk yet.`] : []),
    setAside.length === 0
      ? 'Everything that was read is in order.'
      : `${setAside.length} ${setAside.length === 1 ? 'value' : 'values'} could not be read. Nothing was thrown away: what was found is kept aside and is in the file of all that is on the disk.`,
    counted.length === 0 ? `Nothing is ${place} yet.` : `Read ${place}: ${counted.join(', ')}.`,
  ];
}

import type { IntegrityReport } from '@larkhold/store';
import { presentWords, type Words } from '@larkhold/words';

const things = ['programs', 'drills', 'days', 'weeks', 'notes', 'milestones'] as const;

/**
 * What a check of the store found, in plain sentences.
 * @param report what was found
 * @param words the language
 * @returns sentences, the most important first
 */
export function reportWords(
  { where, trouble, counts, setAside, unwrittenCount }: IntegrityReport,
  words: Words = presentWords(),
): string[] {
  const counted = things.flatMap((table) => {
    const n = counts[table] ?? 0;
    return n === 0 ? [] : [words.say(`report.${table}`, { n })];
  });
  const isDisk = where === 'disk';
  const read = () => words.say(isDisk ? 'report.readDisk' : 'report.readMemory', { things: words.row(counted) });
  return [
    ...(trouble ? [trouble.message] : []),
    ...(unwrittenCount > 0 ? [words.say('report.unwritten', { n: unwrittenCount })] : []),
    setAside.length === 0 ? words.say('report.inOrder') : words.say('report.setAside', { n: setAside.length }),
    counted.length === 0 ? words.say(isDisk ? 'report.emptyDisk' : 'report.emptyMemory') : read(),
  ];
}

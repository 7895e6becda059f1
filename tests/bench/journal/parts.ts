import { compareJournals, formatJournal, mergeJournals, parseHandOver, parseJournal } from '@larkhold/engine';
import { createTwoYears, createYears } from './years.ts';

/** One thing to measure, and how long it may take, milliseconds. */
export interface Part {
  name: string;
  aimMs?: number;
  work: () => unknown;
}

/**
 * What is measured of the engine alone, in Node.
 * @param lastDay ISO 8601
 * @returns the parts, their data made
 */
export function createParts(lastDay: string): Part[] {
  const [phone, tablet] = ['phone', 'tablet'].map((device) => createYears({ lastDay, dayCount: 3650, device }));
  if (!phone || !tablet) return [];
  const text = formatJournal(tablet);
  const squad = Array.from({ length: 30 }, (_, archer) => createTwoYears(archer, lastDay));
  return [
    { name: 'merge two journals of ten years', aimMs: 1000, work: () => mergeJournals(phone, tablet) },
    { name: 'compare them', work: () => compareJournals(phone, tablet) },
    { name: 'write one as a file', work: () => formatJournal(phone) },
    { name: 'read the file', work: () => parseJournal(text) },
    { name: 'read 30 hand-overs of two years', aimMs: 2000, work: () => squad.map(parseHandOver) },
  ];
}

/**
 * The files that the pages are measured with.
 * @param lastDay ISO 8601
 * @returns their texts
 */
export function createFiles(lastDay: string): { phone: string; tablet: string; squad: string[] } {
  const fileOf = (device: string): string => formatJournal(createYears({ lastDay, dayCount: 3650, device }));
  const squad = Array.from({ length: 30 }, (_, archer) => createTwoYears(archer, lastDay));
  return { phone: fileOf('phone'), tablet: fileOf('tablet'), squad };
}

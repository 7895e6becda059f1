import type { DayEntry } from '../journal/journal.ts';
import type { Block } from '../program/program.ts';
import { dayOfNumber, mondayNumber } from '../units/calendar-day.ts';
import type { Ease } from './ease.ts';
import type { PrescribedBlock, Reason } from './prescription.ts';
import type { PastSession } from './program-sessions.ts';
import { readDay } from './read-day.ts';
import { counted, dayWords } from './reason-words.ts';
import { taper } from './taper.ts';

/** Pain eases a drill while the session or diary entry that names it is no older, days. Common practice, no source. */
export const PAIN_DAYS = 14;
/** So many arrows in a day are many: about two rounds of 72. Common practice, no source. */
export const MANY_ARROWS = 140;

/** What is known of today before the numbers are made. */
export interface Condition {
  sessions: readonly PastSession[];
  /** Days from 1970-01-01. */
  day: number;
  readiness?: 'fresh' | 'as usual' | 'heavy';
  diary?: readonly DayEntry[];
  /** Days from 1970-01-01. */
  competitionDay?: number;
}

/**
 * Keeps a share of the reps where today asks for less. One cut acts, the deepest; two are not multiplied.
 * @param block the block as its file says
 * @param today the block as its ladder has it
 * @param condition what is known of today
 * @returns today's block, and the reason if one acted
 */
export function easeBlock(
  block: Block,
  today: PrescribedBlock,
  condition: Condition,
): { block: PrescribedBlock; reason?: Reason } {
  const eases = [
    deload(block, condition),
    taper(condition.day, condition.competitionDay),
    ...readinessEases(condition),
  ];
  const deepest = eases.filter((ease) => ease !== undefined).sort((a, b) => a.keep - b.keep)[0];
  if (!deepest) return { block: today };
  const reps = Math.max(1, Math.floor(today.reps * deepest.keep + 1e-9));
  const cut =
    reps < today.reps
      ? `${counted(reps, 'rep')} instead of ${today.reps}`
      : `${counted(reps, 'rep')}, the least there is`;
  const reason: Reason = {
    rule: deepest.rule,
    block: today.block,
    facts: { ...deepest.facts, keep: deepest.keep, from: today.reps, reps },
    change: `${today.title}: ${cut}, because ${deepest.because}.`,
    acts: ['reps'],
  };
  return { block: { ...today, reps }, reason };
}

/**
 * The day of the last pain that still counts.
 * @param condition what is known of today
 * @returns days from 1970-01-01; undefined without recent pain
 */
export function painDay({ sessions, day, diary = [] }: Condition): number | undefined {
  const last = sessions.at(-1);
  const from = dayOfNumber(Math.max(last?.day ?? 0, day - PAIN_DAYS));
  const to = dayOfNumber(day);
  // ISO days compare as text; what is no day is passed over.
  const painful = diary
    .filter(({ pain, removed, date }) => pain && !removed && date >= from && date <= to)
    .flatMap(({ date }) => readDay(date) ?? []);
  if (last?.record.pain) painful.push(last.day);
  const latest = Math.max(...painful);
  return day - latest <= PAIN_DAYS ? latest : undefined;
}

function deload({ ladder }: Block, { sessions, day }: Condition): Ease | undefined {
  if (!ladder?.deload) return undefined;
  const { everyWeeks, keep } = ladder.deload;
  const thisMonday = mondayNumber(day);
  const week = new Set(sessions.map(({ monday }) => monday).filter((monday) => monday < thisMonday)).size + 1;
  if (week % everyWeeks !== 0) return undefined;
  return {
    rule: 'deload',
    keep,
    facts: { week, everyWeeks },
    because: `this is training week ${week}, and every ${everyWeeks} weeks is a lighter one`,
  };
}

// The shares are ours, and err to less: common practice, no source.
function readinessEases(condition: Condition): Ease[] {
  const { sessions, day, diary = [] } = condition;
  const eases: Ease[] = [];
  const pain = painDay(condition);
  if (pain !== undefined) {
    eases.push({
      rule: 'pain',
      keep: 0.5,
      facts: { on: dayWords(pain) },
      because: `there was pain on ${dayWords(pain)}`,
    });
  }
  const effort = sessions.at(-1)?.record.effort ?? 0;
  if (effort >= 9)
    eases.push({ rule: 'effort', keep: 0.8, facts: { effort }, because: `last time cost ${effort} of 10` });
  const entries = diary.filter(({ removed }) => !removed);
  const readiness = condition.readiness ?? entries.find(({ date }) => date === dayOfNumber(day))?.readiness;
  if (readiness === 'heavy') {
    eases.push({ rule: 'heavy', keep: 0.7, facts: { readiness }, because: 'you said today is heavy' });
  }
  for (const [words, number] of [
    ['today', day],
    ['yesterday', day - 1],
  ] as const) {
    const arrows = arrowsOn(entries, dayOfNumber(number));
    if (arrows < MANY_ARROWS) continue;
    const because = `you shot ${arrows} arrows ${words}; from ${MANY_ARROWS} on we ease a little: common practice, no source`;
    eases.push({ rule: 'arrows', keep: 0.8, facts: { arrows, on: dayWords(number) }, because });
  }
  return eases;
}

/** Of two entries for one day, which a journal does not have, the greater counts. */
function arrowsOn(entries: readonly DayEntry[], date: string): number {
  const sums = entries
    .filter((entry) => entry.date === date)
    .map(({ arrows = [] }) => arrows.reduce((sum, { count }) => sum + count, 0));
  return Math.max(0, ...sums);
}

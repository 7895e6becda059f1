import type { DrillRecord } from '../journal/drill-record.ts';
import type { DayEntry } from '../journal/journal.ts';
import type { Program } from '../program/program.ts';
import { dayNumber } from '../units/calendar-day.ts';
import { type Archer, limitToArcher } from './archer-limits.ts';
import { cautionsFor } from './cautions.ts';
import { type Condition, easeBlock, painDay } from './ease-block.ts';
import { fitBlocks } from './fit-blocks.ts';
import { limitBlock } from './limit-growth.ts';
import { prescribeBlock } from './prescribe-block.ts';
import type { Prescription, Reason } from './prescription.ts';
import { type ProgramSessions, sessionsOf } from './program-sessions.ts';
import { counted, dayWords } from './reason-words.ts';
import { timelineDurationMs } from './timeline-duration.ts';
import { validProgram } from './valid-program.ts';

/** What a prescription is made from. */
export interface PrescribeInput {
  program: Program;
  /** Any order; other programs' records allowed. */
  records: readonly DrillRecord[];
  /** The archer's local day, ISO 8601. */
  today: string;
  /** "I have this long", whole minutes. */
  minutes?: number;
  /** The archer's own word for today; without it, today's diary entry is asked. */
  readiness?: 'fresh' | 'as usual' | 'heavy';
  /** Age and bow, where known: they limit tool and weight. */
  archer?: Archer;
  /** The diary: arrows shot, pain and readiness of today and yesterday. */
  days?: readonly DayEntry[];
  /** The day of a competition, ISO 8601: the two weeks before it are lighter. */
  competitionDay?: string;
}

/**
 * Today's numbers for a program, and the reason for each. Pure: the place on each ladder is replayed from the records.
 * @param input program, records, day, and what the archer says of today
 * @returns blocks in milliseconds and pounds-force, reasons, cautions and the timeline's length
 * @throws TypeError when the program is not valid; RangeError when the day, the minutes, the age or the competition day are not
 * @example prescribe({ program: builtInPrograms[0], records: [], today: '2026-11-25' })
 */
export function prescribe(input: PrescribeInput): Prescription {
  const { minutes } = input;
  const program = validProgram(input.program);
  const day = dayNumber(input.today);
  if (minutes !== undefined && !(Number.isInteger(minutes) && minutes >= 1)) {
    throw new RangeError(`minutes is ${minutes}; expected whole minutes, at least 1`);
  }
  const past = sessionsOf(program, input.records, day);
  const { sessions } = past;
  const condition: Condition = {
    ...{ sessions, day, readiness: input.readiness, diary: input.days },
    competitionDay: input.competitionDay === undefined ? undefined : dayNumber(input.competitionDay),
  };
  const laddered = program.blocks.map((block, index) => prescribeBlock(block, index, sessions, day));
  const eased = laddered.map(({ block }, index) => easeBlock(program.blocks[index]!, block, condition));
  const limited = eased.map(({ block }, index) => limitBlock(program.blocks[index]!.ladder, block, sessions, day));
  const suited = limitToArcher(
    program.tool,
    limited.map(({ block }) => block),
    input.archer,
  );
  const fitted: ReturnType<typeof fitBlocks> =
    minutes === undefined ? { blocks: suited.blocks } : fitBlocks(suited.blocks, minutes);
  const reasons = [...laddered, ...eased, ...limited]
    .flatMap(({ reason }) => reason ?? [])
    .concat(suited.reasons, fitted.reason ?? [], leftOutReasons(past));
  const { title, warmUp, coolDown } = program;
  return {
    ...{ programTitle: title, date: input.today, tool: suited.tool, warmUp, coolDown },
    ...{ blocks: fitted.blocks, reasons },
    cautions: [...painCaution(condition), ...suited.cautions, ...cautionsFor({ ...program, tool: suited.tool })],
    durationMs: timelineDurationMs(fitted.blocks),
  };
}

function painCaution(condition: Condition): string[] {
  const day = painDay(condition);
  if (day === undefined) return [];
  return [
    `There was pain on ${dayWords(day)}. Stop today if it comes again, and see a doctor or a physiotherapist if it stays.`,
  ];
}

function leftOutReasons({ futureCount, impossibleDates }: ProgramSessions): Reason[] {
  const reasons: Reason[] = [];
  const were = (count: number) => (count === 1 ? 'was' : 'were');
  if (impossibleDates.length > 0) {
    const count = impossibleDates.length;
    const named = [...new Set(impossibleDates)].slice(0, 3).join(', ');
    const change = `${counted(count, 'record')} ${were(count)} left out: there is no such day as ${named}. Correct the date in the journal.`;
    reasons.push({ rule: 'impossibleDate', facts: { records: count, dates: named }, change });
  }
  if (futureCount > 0) {
    const change = `${counted(futureCount, 'record')} dated after today ${were(futureCount)} left out. Check the device's date.`;
    reasons.push({ rule: 'future', facts: { records: futureCount }, change });
  }
  return reasons;
}

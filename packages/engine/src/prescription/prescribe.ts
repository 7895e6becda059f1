import type { DrillRecord } from '../journal/drill-record.ts';
import { type Block, type Program, programSchema } from '../program/program.ts';
import { dayNumber, mondayNumber } from '../units/calendar-day.ts';
import { cautionsFor } from './cautions.ts';
import { fitToLimit } from './fit-minutes.ts';
import { ladderReason } from './ladder-reason.ts';
import { growthBudget, withinBudget } from './limit-growth.ts';
import type { PrescribedBlock, Prescription, Reason } from './prescription.ts';
import { type PastSession, sessionsOf } from './program-sessions.ts';
import { counted, dayWords } from './reason-words.ts';
import { replayLadder } from './replay-ladder.ts';
import { timelineDurationMs } from './timeline-duration.ts';

/** What a prescription is made from. */
export interface PrescribeInput {
  program: Program;
  /** Any order; other programs' records allowed. */
  records: readonly DrillRecord[];
  /** The archer's local day, ISO 8601. */
  today: string;
  /** "I have this long", whole minutes. */
  minutes?: number;
  /** The archer's own word for today. */
  readiness?: 'fresh' | 'as usual' | 'heavy';
}

/**
 * Today's numbers for a program, and the reason for each. Pure: the place on each ladder is replayed from the records.
 * @param input program, records, day, and what the archer says of today
 * @returns blocks in milliseconds and pounds-force, reasons, cautions and the timeline's length
 * @throws TypeError when the program is not valid; RangeError when the day or the minutes are not
 * @example prescribe({ program: builtInPrograms[0], records: [], today: '2026-11-25' })
 */
export function prescribe(input: PrescribeInput): Prescription {
  const { records, today, minutes, readiness } = input;
  const program = validProgram(input.program);
  const day = dayNumber(today);
  if (minutes !== undefined && !(Number.isInteger(minutes) && minutes >= 1)) {
    throw new RangeError(`minutes is ${minutes}; expected whole minutes, at least 1`);
  }
  const { sessions, futureCount } = sessionsOf(program, records, day);
  const reasons: Reason[] = [];
  const cautions = cautionsFor(program);
  let blocks = program.blocks.map((block, index) => prescribeBlock(block, index, sessions, day, reasons));
  blocks = blocks.map((block, index) =>
    easeBlock(program.blocks[index]!, block, { sessions, day, readiness, reasons }),
  );
  blocks = blocks.map((block, index) => limitBlock(program.blocks[index]!, block, { sessions, day, reasons }));
  if (minutes !== undefined) blocks = fitBlocks(blocks, minutes, reasons);
  if (sessions.at(-1)?.record.pain) {
    cautions.unshift(
      'There was pain last time. Stop today if it comes again, and see a doctor or a physiotherapist if it stays.',
    );
  }
  if (futureCount > 0) {
    const change = `${counted(futureCount, 'record')} dated after today ${futureCount === 1 ? 'was' : 'were'} left out. Check the device's date.`;
    reasons.push({ rule: 'future', facts: { records: futureCount }, change });
  }
  return {
    ...{
      programTitle: program.title,
      date: today,
      tool: program.tool,
      warmUp: program.warmUp,
      coolDown: program.coolDown,
    },
    ...{ blocks, reasons, cautions, durationMs: timelineDurationMs(blocks) },
  };
}

function validProgram(program: Program): Program {
  const result = programSchema.safeParse(program);
  if (result.success) return result.data;
  const [issue] = result.error.issues;
  throw new TypeError(`program is not valid at /${issue?.path.map(String).join('/')}: ${issue?.message}`);
}

function toMs(seconds: number): number {
  return Math.round(seconds * 1000);
}

function prescribeBlock(
  block: Block,
  index: number,
  sessions: readonly PastSession[],
  day: number,
  reasons: Reason[],
): PrescribedBlock {
  const state = replayLadder(block, index, sessions, day);
  reasons.push(ladderReason(block, index, state));
  const { hold, reps, sets, addedWeight } = state.place;
  const { title, drill, letDownTo, hand, calls } = block;
  return {
    ...{ block: index, title, drill, sets, reps, letDownTo, hand, calls, addedWeightLbf: addedWeight },
    drawMs: toMs(block.draw),
    holdMs: toMs(hold),
    letDownMs: toMs(block.letDown),
    restMs: toMs('seconds' in block.rest ? block.rest.seconds : block.rest.timesHold * hold),
    setRestMs: toMs(block.setRest ?? 0),
  };
}

interface Ease {
  rule: string;
  keep: number;
  facts: Reason['facts'];
  because: string;
}

/** Keeps a share of the reps where today asks for less. One cut acts, the deepest; two are not multiplied. */
function easeBlock(
  block: Block,
  today: PrescribedBlock,
  input: { sessions: readonly PastSession[]; day: number; readiness: PrescribeInput['readiness']; reasons: Reason[] },
): PrescribedBlock {
  const eases = [deload(block, input.sessions, input.day), ...ready(input.sessions, input.readiness)];
  const deepest = eases.filter((ease) => ease !== undefined).sort((a, b) => a.keep - b.keep)[0];
  if (!deepest) return today;
  const reps = Math.max(1, Math.floor(today.reps * deepest.keep + 1e-9));
  const change = `${today.title}: ${counted(reps, 'rep')} instead of ${today.reps}, because ${deepest.because}.`;
  input.reasons.push({
    rule: deepest.rule,
    block: today.block,
    facts: { ...deepest.facts, keep: deepest.keep, from: today.reps, reps },
    change,
  });
  return { ...today, reps };
}

function deload({ ladder }: Block, sessions: readonly PastSession[], day: number): Ease | undefined {
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
function ready(sessions: readonly PastSession[], readiness: PrescribeInput['readiness']): Ease[] {
  const last = sessions.at(-1);
  const eases: Ease[] = [];
  if (last?.record.pain) {
    eases.push({
      rule: 'pain',
      keep: 0.5,
      facts: { on: dayWords(last.day) },
      because: `there was pain on ${dayWords(last.day)}`,
    });
  }
  if ((last?.record.effort ?? 0) >= 9) {
    eases.push({
      rule: 'effort',
      keep: 0.8,
      facts: { effort: last?.record.effort ?? 0 },
      because: `last time cost ${last?.record.effort} of 10`,
    });
  }
  if (readiness === 'heavy')
    eases.push({ rule: 'heavy', keep: 0.7, facts: { readiness }, because: 'you said today is heavy' });
  return eases;
}

function limitBlock(
  { ladder }: Block,
  today: PrescribedBlock,
  { sessions, day, reasons }: { sessions: readonly PastSession[]; day: number; reasons: Reason[] },
): PrescribedBlock {
  if (ladder?.weeklyGrowth === undefined) return today;
  const budget = growthBudget(sessions, today.block, day, ladder.weeklyGrowth);
  if (!budget || today.sets * today.reps * today.holdMs <= budget.leftMs) return today;
  const { sets, reps } = withinBudget(today, budget.leftMs);
  const seconds = (ms: number) => Math.round(ms / 1000);
  reasons.push({
    rule: 'weeklyGrowth',
    block: today.block,
    facts: {
      growth: ladder.weeklyGrowth,
      meanSeconds: seconds(budget.meanMs),
      doneSeconds: seconds(budget.doneMs),
      sets,
      reps,
    },
    change: `${today.title}: ${sets} × ${reps} instead of ${today.sets} × ${today.reps}, to keep this week near the last ones. A habit, not a proven protection.`,
  });
  return { ...today, sets, reps };
}

function fitBlocks(blocks: PrescribedBlock[], minutes: number, reasons: Reason[]): PrescribedBlock[] {
  const limitMs = minutes * 60_000;
  if (timelineDurationMs(blocks) <= limitMs) return blocks;
  const fitted = [...fitToLimit(blocks, limitMs)];
  const held = (some: readonly PrescribedBlock[]) =>
    some.reduce((sum, { sets, reps, holdMs }) => sum + sets * reps * holdMs, 0);
  const share = Math.round((100 * held(fitted)) / held(blocks));
  const given = blocks.flatMap((block) => {
    const kept = fitted.find((other) => other.block === block.block);
    if (!kept) return [`${block.title} left out`];
    if (kept.holdMs < block.holdMs) return [`${block.title} cut to one hold of ${kept.holdMs / 1000} s`];
    return kept.sets === block.sets && kept.reps === block.reps
      ? []
      : [`${block.title} ${kept.sets} × ${kept.reps} instead of ${block.sets} × ${block.reps}`];
  });
  const over = timelineDurationMs(fitted) > limitMs ? ' Even one rep takes longer than that.' : '';
  const change = `In ${counted(minutes, 'minute')}: ${given.join('; ')}. ${share} % of today's time at full draw is left.${over}`;
  reasons.push({ rule: 'minutes', facts: { minutes, sharePercent: share }, change });
  return fitted;
}

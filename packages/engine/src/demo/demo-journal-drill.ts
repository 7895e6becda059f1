import type { DrillRecord, RepRecord } from '../journal/drill-record.ts';
import type { PrescribedBlock } from '../prescription/prescription.ts';
import type { Program } from '../program/program.ts';
import { addToInstant } from '../units/instant.ts';
import type { DemoChance } from './demo-journal-chance.ts';

/** One invented morning. */
export interface DemoMorning {
  program: Program;
  /** What is asked for that morning. */
  blocks: readonly PrescribedBlock[];
  /** ISO 8601 day. */
  date: string;
  /** Longest hold with good form when fresh, seconds. */
  longestHoldSeconds: number;
  /** What is on the fingers without added weight, pounds-force. */
  onFingersLbf: number;
  /** Of a test: the rep in which form fails, 0-based; it ends the morning. */
  formFailsAtRep?: number;
  /** After how many reps it ends early, with pain. */
  hurtsAfterReps?: number;
}

/** How long the archer gets ready before the first draw, milliseconds; as a timeline does. */
const READY_MS = 10_000;

/**
 * Invents the record of a morning by a small rule: the longest hold shrinks to six tenths of itself within a few reps, and a rep that asks
 * for more than is left, give or take, is let down early. A test goes on until form fails.
 * @param morning what is drilled, when, and how strong the archer is
 * @param chance numbers to invent from
 * @returns a drill record without note
 */
export function inventDrill(morning: DemoMorning, chance: DemoChance): DrillRecord {
  const { program, blocks, date, longestHoldSeconds } = morning;
  const reps: RepRecord[] = [];
  let prescribedReps = 0;
  let durationMs = READY_MS;
  let hardest = 0;
  let isOver = false;

  for (const {
    block,
    drawMs,
    holdMs,
    letDownMs,
    restMs,
    setRestMs,
    sets,
    reps: count,
    hand,
    addedWeightLbf,
  } of blocks) {
    for (let index = 0; index < sets * count; index++) {
      prescribedReps += 1;
      if (isOver) continue;
      const left = longestHoldSeconds * (0.6 + 0.4 * Math.exp(-reps.length / 4)) * chance.between(0.93, 1.15);
      const isFailing = reps.length === morning.formFailsAtRep;
      const heldMs = Math.min(
        holdMs,
        Math.round((isFailing ? (holdMs / 1000) * chance.between(0.4, 0.9) : left) * 10) * 100,
      );
      hardest = Math.max(hardest, holdMs / 1000 / (longestHoldSeconds * 0.6));
      reps.push({
        block,
        set: Math.floor(index / count),
        rep: index % count,
        hand: hand === 'both' ? ((index % count) % 2 === 0 ? 'usual' : 'opposite') : hand,
        prescribedMs: holdMs,
        heldMs,
        outcome: heldMs < holdMs ? 'short' : 'held',
        ...(heldMs < holdMs && { why: isFailing || chance.percent(30) ? 'form' : 'tired' }),
        addedWeightLbf,
      });
      isOver = isFailing || reps.length === morning.hurtsAfterReps;
      const pause = index % count === count - 1 ? setRestMs : restMs;
      durationMs += drawMs + heldMs + letDownMs + (isOver ? 0 : pause);
    }
  }

  const startedAt = `${date}T06:${String(Math.floor(chance.between(10, 50)))}:00Z`;
  const record: DrillRecord = {
    id: `demo-${date}`,
    program: program.title,
    date,
    startedAt,
    endedAt: addToInstant(startedAt, durationMs),
    reps,
    effort: Math.min(10, Math.max(1, Math.round(1.5 + 4.5 * hardest + chance.between(-0.7, 0.7)))),
    prescribedReps,
    durationMs,
    onFingersLbf: morning.onFingersLbf + Math.max(0, ...blocks.map(({ addedWeightLbf }) => addedWeightLbf)),
    tool: program.tool,
  };
  if (program.id !== undefined) record.programId = program.id;
  if (program.kind === 'test') record.kind = 'test';
  record.pain = morning.hurtsAfterReps !== undefined;
  return record;
}

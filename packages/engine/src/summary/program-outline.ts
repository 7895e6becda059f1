import { predictSession, type SessionPrediction } from '../fatigue/predict-session.ts';
import { prescribe } from '../prescription/prescribe.ts';
import type { Prescription } from '../prescription/prescription.ts';
import type { Program } from '../program/program.ts';
import { layOut } from '../timeline/lay-out.ts';
import type { Timeline } from '../timeline/timeline.ts';

/** What a program asks of an archer who starts it today. */
export interface DraftOutline {
  prescription: Prescription;
  timeline: Timeline;
  /** Milliseconds at full draw. */
  tensionMs: number;
  /** By the model; absent while the archer's longest hold is not known. */
  fatigue?: SessionPrediction;
}

/**
 * Outlines a program's first session.
 * @param program a valid program
 * @param archer the local day, ISO 8601, and the longest hold in seconds where it is known
 * @returns times, the timeline and the fatigue along it
 */
export function outlineOf(program: Program, archer: { today: string; maxHoldSeconds?: number }): DraftOutline {
  const prescription = prescribe({ program, records: [], today: archer.today });
  const timeline = layOut(prescription);
  const tensionMs = timeline.steps.reduce((sum, { kind, durationMs }) => sum + (kind === 'hold' ? durationMs : 0), 0);
  const { maxHoldSeconds } = archer;
  const fatigue = maxHoldSeconds === undefined ? undefined : predictSession(timeline, { maxHoldSeconds });
  return { prescription, timeline, tensionMs, fatigue };
}

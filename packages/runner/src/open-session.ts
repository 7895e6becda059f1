import { createSession, type Session, type Timeline } from '@larkhold/engine';
import type { DrillInput } from './drill-input.ts';

/**
 * The session of a drill.
 * @param input what to run
 * @param timeline its steps and cues
 * @returns a session that has not begun, or one where the kept snapshot is
 * @throws RangeError or TypeError when the snapshot cannot be run
 */
export function openSession(input: DrillInput, timeline: Timeline): Session {
  const { prescription, settings, environment, resumeFrom } = input;
  return createSession({
    timeline,
    program: input.programTitle || prescription.programTitle,
    programId: input.programId || undefined,
    startedAt: resumeFrom?.startedAt ?? environment.wallNow(),
    newId: () => environment.newId(),
    countFromAnchor: settings.countFromAnchor,
    resumeFrom,
  });
}

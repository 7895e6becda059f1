import type { DrillRecord, Prescription, RepRecord, SessionSnapshot } from '@larkhold/engine';
import type { RunnerEnvironment } from './runner-environment.ts';
import type { RunnerSettings } from './runner-settings.ts';

/** What a drill is run from. */
export interface DrillInput {
  prescription: Prescription;
  programId?: string;
  settings: RunnerSettings;
  resumeFrom?: SessionSnapshot;
  environment: RunnerEnvironment;
  /** The program's title; the prescription's where left out. */
  programTitle?: string;
}

/** Who hears of a drill. */
export interface DrillListener {
  /** Something to show has changed: the view, a notice, the question. */
  onShow(): void;
  onBegin(record: DrillRecord): void;
  onRep(rep: RepRecord, record: DrillRecord, snapshot: SessionSnapshot): void;
  /** Another step or state, and every two seconds while the bow is drawn. */
  onChange(snapshot: SessionSnapshot): void;
  onEnd(record: DrillRecord): void;
  onNotice(message: string): void;
}

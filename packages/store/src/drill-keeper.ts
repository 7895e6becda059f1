import {
  createSession,
  type DrillRecord,
  drillRecordSchema,
  layOut,
  type Prescription,
  type SessionSnapshot,
  sessionSnapshotSchema,
} from '@larkhold/engine';
import type { RunningDrill } from './running-drill.ts';

/** What a keeper writes to: the store, or whoever answers for the store's troubles. */
export interface DrillDisk {
  putRunning(running: RunningDrill): Promise<unknown>;
  writeRep(record: DrillRecord, running: RunningDrill): Promise<unknown>;
  endDrill(record?: DrillRecord): Promise<unknown>;
  putDrill(record: DrillRecord): Promise<unknown>;
}

/** A drill as it is begun. */
export interface PlannedDrill {
  prescription: Prescription;
  /** The program's title, and the program file's id where it has one. */
  program: string;
  programId?: string;
  /** The bow's weight on the fingers, pounds-force, where the archer has said it. */
  drawWeightLbf?: number;
}

/** What a drill that was cut off leaves. */
export interface CutOff {
  /** Its record as it would be closed now: every rep that ended, and the running one as `unsure`. Undefined where nothing had begun. */
  record: DrillRecord | undefined;
  /** From where it can go on; undefined where it can't. */
  resumeFrom: SessionSnapshot | undefined;
}

/**
 * The life of a drill on the disk, from its begin to what the archer says of it afterwards, or to its being cut off. It decides what is
 * written when; what a session says is handed to it. One drill at a time.
 */
export class DrillKeeper {
  readonly #disk: DrillDisk;
  readonly #instant: () => string;
  #drill: PlannedDrill | undefined;

  /**
   * @param disk where it writes
   * @param instant the instant of an edit, ISO 8601 UTC
   */
  constructor(disk: DrillDisk, instant: () => string) {
    this.#disk = disk;
    this.#instant = instant;
  }

  /** A drill is about to begin, or to go on. @param drill what it is run from */
  begin(drill: PlannedDrill): void {
    this.#drill = drill;
  }

  /**
   * Another step or state, or a while of a long hold.
   * @param snapshot where the session is
   * @returns resolves when it is written
   */
  async moved(snapshot: SessionSnapshot): Promise<void> {
    const running = this.#runningOf(snapshot);
    const isUnderWay = snapshot.state === 'running' || snapshot.state === 'paused';
    if (running && isUnderWay) await this.#disk.putRunning(running);
  }

  /**
   * A rep is over.
   * @param record the session's record so far
   * @param snapshot where the session is
   * @returns resolves when both are written, in one transaction
   */
  async repEnded(record: DrillRecord, snapshot: SessionSnapshot): Promise<void> {
    const running = this.#runningOf(snapshot);
    if (running) await this.#disk.writeRep(this.#complete(record), running);
  }

  /**
   * The drill is over.
   * @param record the session's record, closed
   * @returns the record as it is kept; undefined where no rep had ended, so that there is nothing to keep
   */
  async finish(record: DrillRecord): Promise<DrillRecord | undefined> {
    const kept = record.reps.length > 0 ? this.#complete(record) : undefined;
    await this.#disk.endDrill(kept);
    return kept;
  }

  /**
   * What the archer says afterwards.
   * @param record as it was kept
   * @param said effort, pain, note, corrected reps
   * @returns the record as it is kept now
   */
  async describe(record: DrillRecord, said: Partial<DrillRecord>): Promise<DrillRecord> {
    const described = { ...record, ...said, editedAt: this.#instant() };
    await this.#disk.putDrill(described);
    return described;
  }

  /**
   * Closes a drill that was cut off.
   * @param running what was kept of it
   * @param stored its record as far as it was written
   * @returns the record; undefined where nothing had begun
   */
  async close(running: RunningDrill, stored: DrillRecord | undefined): Promise<DrillRecord | undefined> {
    const { record } = cutOff(running, stored);
    const closed = record && { ...record, editedAt: this.#instant() };
    await this.#disk.endDrill(closed);
    return closed;
  }

  #runningOf(snapshot: SessionSnapshot): RunningDrill | undefined {
    if (!this.#drill) return undefined;
    const { prescription, program, programId } = this.#drill;
    return { recordId: snapshot.id, program, programId, prescription, snapshot, startedAt: snapshot.startedAt };
  }

  /** What the bow is, which the session does not know. */
  #complete(record: DrillRecord): DrillRecord {
    const { prescription, drawWeightLbf } = this.#drill ?? {};
    const { tool, blocks = [] } = prescription ?? {};
    const addedLbf = Math.max(0, ...blocks.map(({ addedWeightLbf }) => addedWeightLbf));
    const onFingers = drawWeightLbf === undefined || tool !== 'bow' ? {} : { onFingersLbf: drawWeightLbf + addedLbf };
    return { ...record, ...(tool ? { tool } : {}), ...onFingers };
  }
}

/**
 * What is left of a drill that was cut off.
 * @param running what was kept of the drill
 * @param stored its record as far as it was written, if a rep had ended
 * @returns its record as it would be closed, and from where it can go on
 */
export function cutOff(running: RunningDrill, stored: DrillRecord | undefined): CutOff {
  const read = sessionSnapshotSchema.safeParse(running.snapshot);
  const isOver = read.data?.state === 'done' || read.data?.state === 'stopped';
  return { record: closedRecord(running, read.data, stored), resumeFrom: isOver ? undefined : read.data };
}

function closedRecord(
  running: RunningDrill,
  snapshot: SessionSnapshot | undefined,
  stored: DrillRecord | undefined,
): DrillRecord | undefined {
  const lived = snapshot && livedRecord(running, snapshot);
  if (!lived || lived.reps.length < (stored?.reps.length ?? 0)) return stored && { ...stored, open: undefined };
  if (lived.reps.length === 0) return undefined;
  // Reps that were written stay as they are: the archer may have put one right.
  const reps = lived.reps.map((rep, index) => stored?.reps[index] ?? rep);
  return { ...lived, ...stored, reps, open: undefined, endedAt: lived.endedAt, durationMs: lived.durationMs };
}

/** What the session itself says when time was lost; undefined where it can't go on from the snapshot. */
function livedRecord({ prescription, program, programId }: RunningDrill, resumeFrom: SessionSnapshot) {
  const { startedAt, id, ledger } = resumeFrom;
  try {
    const timeline = layOut(prescription);
    const session = createSession({ timeline, program, programId, startedAt, newId: () => id, resumeFrom });
    const nowMs = ledger.seenMs ?? 0;
    session.send({ type: 'gap' }, nowMs);
    session.send({ type: 'stop' }, nowMs);
    // A snapshot that was damaged may tell of a drill that no journal takes.
    return drillRecordSchema.safeParse(session.record()).data;
  } catch (error) {
    if (!(error instanceof RangeError || error instanceof TypeError)) throw error;
    return undefined; // a prescription of another version: what was written is all there is
  }
}

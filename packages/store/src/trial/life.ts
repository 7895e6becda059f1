import {
  correctOutcome,
  createSession,
  type DrillRecord,
  type Journal,
  layOut,
  type Prescription,
  type Session,
  type SessionEvent,
  sessionSnapshotSchema,
} from '@larkhold/engine';
import type { Adapter } from '../adapter.ts';
import { createLocalStore, type TabChannel } from '../local-store.ts';
import { createMemoryAdapter } from '../memory-adapter.ts';
import type { RunningDrill } from '../running-drill.ts';
import type { Store } from '../store.ts';
import type { Plan } from './drill-model.ts';

const never = new Promise<never>(() => {});

/** A disk that can fill up, and that a page can be cut off from in the middle of its work. */
export function createTrialDisk() {
  const inner = createMemoryAdapter();
  const state = { isFull: false, writesLeft: Number.POSITIVE_INFINITY };
  const meet = async (): Promise<void> => {
    state.writesLeft -= 1;
    if (state.writesLeft < 0) await never;
    if (state.isFull) throw new DOMException('injected', 'QuotaExceededError');
  };
  const adapter: Adapter = {
    ...inner,
    where: 'disk',
    write: async (...args) => {
      await meet();
      return inner.write(...args);
    },
    update: async (...args) => {
      await meet();
      return inner.update(...args);
    },
  };
  return { adapter, inner, state };
}

/** One page of the app at a time over a disk: a session that is walked, and a store that is written to as the app does it. */
export class Life {
  readonly disk = createTrialDisk();
  readonly #tabs = new Set<(changed: Parameters<TabChannel['tell']>[0]) => void>();
  #store: Store = this.#open();
  #session: Session | undefined;
  #prescription: Prescription | undefined;
  #nowMs = 0;
  #writes: Promise<unknown>[] = [];

  get store(): Store {
    return this.#store;
  }

  begin(id: string, plan: Plan, instant: string): void {
    this.#prescription = prescriptionOf(plan);
    const timeline = layOut(this.#prescription);
    this.#walk(createSession({ timeline, program: 'Trial', startedAt: instant, newId: () => id }), instant, {
      type: 'begin',
    });
  }

  /** Something is asked, or time passes in one piece. */
  ask(what: SessionEvent['type'] | number, instant: string): void {
    const session = this.#session;
    if (!session) return;
    if (typeof what === 'number') this.#nowMs += what;
    this.#step(session, instant, () => {
      if (typeof what === 'number') session.advance(this.#nowMs);
      else session.send({ type: what }, this.#nowMs);
    });
  }

  /** All that was written so far, or failed to be. */
  async settle(): Promise<void> {
    await Promise.all(this.#writes.splice(0));
  }

  /** The page dies. What it was writing is on the disk or not; another page opens, on a clock that began anew. */
  async die(): Promise<void> {
    // The memory behind the disk answers within microtasks, so that what reaches it has reached it by now.
    await new Promise((resolve) => setImmediate(resolve));
    this.#writes = [];
    this.#session = undefined;
    this.disk.state.writesLeft = Number.POSITIVE_INFINITY;
    this.#nowMs = 7;
    this.#store = this.#open();
  }

  /** Goes on with the drill that was cut off. */
  async goOn(instant: string): Promise<void> {
    const running = await this.#store.running();
    if (!running) return;
    this.#prescription = running.prescription;
    this.#walk(sessionFrom(running), instant, { type: 'gap' });
  }

  /** Closes the drill that was cut off. */
  async close(instant: string): Promise<void> {
    const running = await this.#store.running();
    if (!running) return;
    const session = sessionFrom(running);
    session.send({ type: 'gap' }, 0);
    session.send({ type: 'stop' }, 0);
    const record = session.record();
    if (record.reps.length > 0) this.#write(() => this.#store.putDrill({ ...record, editedAt: instant }));
    this.#write(() => this.#store.putRunning(undefined));
  }

  /** Puts a rep right; in another tab where it is asked for. */
  async correct(record: DrillRecord, rep: number, outcome: 'held' | 'skipped', instant: string, isOtherTab: boolean) {
    const store = isOtherTab ? this.#open() : this.#store;
    this.#write(() => store.putDrill(correctOutcome(record, rep, outcome, instant)));
    await this.settle();
    if (isOtherTab) store.close();
  }

  remove(id: string): void {
    this.#write(() => this.#store.removeDrills([id]));
  }

  merge(copy: Journal): void {
    this.#write(() => this.#store.mergeInto(copy));
  }

  /** A store that knows nothing but the disk. */
  readDisk(): Store {
    return createLocalStore({ adapter: this.disk.inner, now: () => this.instant });
  }

  /** The instant that removals are stamped with. */
  instant = '';

  #open(): Store {
    let own: ((changed: Parameters<TabChannel['tell']>[0]) => void) | undefined;
    const tabs = this.#tabs;
    const channel: TabChannel = {
      tell: (changed) => {
        for (const fn of tabs) if (fn !== own) fn(changed);
      },
      hear: (fn) => {
        own = fn;
        tabs.add(fn);
      },
      close: () => {
        if (own) tabs.delete(own);
      },
    };
    return createLocalStore({ adapter: this.disk.adapter, channel, now: () => this.instant });
  }

  #walk(session: Session, instant: string, event: SessionEvent): void {
    this.#session = session;
    this.#step(session, instant, () => session.send(event, this.#nowMs));
  }

  /** What `drill-controller` and the line do: each rep is written with the snapshot, and each new step or state. */
  #step(session: Session, instant: string, move: () => void): void {
    const before = session.view();
    const repsBefore = session.record().reps.length;
    move();
    const view = session.view();
    const record = session.record();
    const snapshot = session.snapshot();
    const running: RunningDrill = {
      ...{ recordId: snapshot.id, program: 'Trial', snapshot, startedAt: snapshot.startedAt },
      prescription: this.#prescription ?? prescriptionOf(),
    };
    for (let count = repsBefore; count < record.reps.length; count++) {
      this.#write(() => this.#store.writeRep(record, running));
    }
    const isOver = view.state === 'done' || view.state === 'stopped';
    const isNewStep = before.step?.startMs !== view.step?.startMs || before.step?.kind !== view.step?.kind;
    if (!isOver && (isNewStep || before.state !== view.state)) this.#write(() => this.#store.putRunning(running));
    if (isOver) this.#end(record, instant);
  }

  #end(record: DrillRecord, instant: string): void {
    this.#session = undefined;
    if (record.reps.length > 0) this.#write(() => this.#store.putDrill(record));
    this.#write(() => this.#store.putRunning(undefined));
    if (record.reps.length > 0) this.#write(() => this.#store.putDrill({ ...record, editedAt: instant }));
  }

  /** A refused write is told by `store.trouble`; the drill goes on. */
  #write(work: () => Promise<void>): void {
    this.#writes.push(work().catch(() => {}));
  }
}

function sessionFrom({ snapshot, prescription, program }: RunningDrill): Session {
  const resumeFrom = sessionSnapshotSchema.parse(snapshot);
  const { startedAt, id } = resumeFrom;
  return createSession({ timeline: layOut(prescription), program, startedAt, newId: () => id, resumeFrom });
}

function prescriptionOf(plan?: Plan): Prescription {
  const same = { block: 0, title: 'Holds', drill: 'holding', letDownTo: 'rest', hand: 'usual' } as const;
  const blocks = plan ? [{ ...plan, ...same, addedWeightLbf: 0 }] : [];
  return { programTitle: 'Trial', date: '2026-11-25', blocks, reasons: [], cautions: [], durationMs: 0 };
}

import {
  correctOutcome,
  createSession,
  type DrillRecord,
  type Journal,
  layOut,
  type Prescription,
  type Session,
  type SessionEvent,
} from '@larkhold/engine';
import type { Adapter } from '../adapter.ts';
import { cutOff, DrillKeeper } from '../drill-keeper.ts';
import { createLocalStore } from '../local-store.ts';
import { createMemoryAdapter } from '../memory-adapter.ts';
import type { Store } from '../store.ts';
import type { TabChannel } from '../table-keeper.ts';
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
  #instant = '';
  /** The app's own keeper of drills, over the page's store. */
  #keeper = this.#openKeeper();
  #nowMs = 0;
  #writes: Promise<unknown>[] = [];

  get store(): Store {
    return this.#store;
  }

  begin(id: string, plan: Plan, instant: string): void {
    const prescription = prescriptionOf(plan);
    this.#keeper.begin({ prescription, program: 'Trial' });
    const timeline = layOut(prescription);
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

  /** The page dies. What it was writing is on the disk or not; another page opens, on a clock that began again. */
  async die(): Promise<void> {
    // The memory behind the disk answers within microtasks, so that what reaches it has reached it by now.
    await new Promise((resolve) => setImmediate(resolve));
    this.#writes = [];
    this.#session = undefined;
    this.disk.state.writesLeft = Number.POSITIVE_INFINITY;
    this.#nowMs = 7;
    this.#store = this.#open();
    this.#keeper = this.#openKeeper();
  }

  /** Goes on with the drill that was cut off. */
  async goOn(instant: string): Promise<void> {
    const running = await this.#store.running();
    if (!running) return;
    const { resumeFrom } = cutOff(running, undefined);
    if (!resumeFrom) throw new TypeError('the snapshot on the disk can not be resumed');
    const { prescription, program } = running;
    const { startedAt, id } = resumeFrom;
    this.#keeper.begin({ prescription, program });
    const timeline = layOut(prescription);
    this.#walk(createSession({ timeline, program, startedAt, newId: () => id, resumeFrom }), instant, { type: 'gap' });
  }

  /** Closes the drill that was cut off. */
  async close(instant: string): Promise<void> {
    const running = await this.#store.running();
    if (!running) return;
    const stored = (await this.#store.journal()).drills.find(({ id }) => id === running.recordId);
    this.#instant = instant;
    this.#write(() => this.#keeper.close(running, stored));
  }

  /** Corrects a rep, if need be in another tab. */
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

  #openKeeper(): DrillKeeper {
    return new DrillKeeper(this.#store, () => this.#instant);
  }

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

  /** Hands over what the session says, as the runner's events do. */
  #step(session: Session, instant: string, move: () => void): void {
    const before = session.view();
    const repsBefore = session.record().reps.length;
    move();
    const view = session.view();
    const record = session.record();
    const snapshot = session.snapshot();
    for (let count = repsBefore; count < record.reps.length; count++) {
      this.#write(() => this.#keeper.repEnded(record, snapshot));
    }
    const isNewStep = before.step?.startMs !== view.step?.startMs || before.step?.kind !== view.step?.kind;
    if (isNewStep || before.state !== view.state) this.#write(() => this.#keeper.moved(snapshot));
    if (view.state === 'done' || view.state === 'stopped') this.#end(record, instant);
  }

  #end(record: DrillRecord, instant: string): void {
    this.#session = undefined;
    this.#instant = instant;
    this.#write(() => this.#keeper.finish(record));
    if (record.reps.length > 0) this.#write(() => this.#keeper.describe(record, {}));
  }

  /** A refused write is reported by `store.trouble`; the drill goes on. */
  #write(work: () => Promise<unknown>): void {
    this.#writes.push(work().catch(() => {}));
  }
}

function prescriptionOf(plan: Plan): Prescription {
  const same = { block: 0, title: 'Holds', drill: 'holding', letDownTo: 'rest', hand: 'usual' } as const;
  const blocks = [{ ...plan, ...same, addedWeightLbf: 0 }];
  return { programTitle: 'Trial', date: '2026-11-25', blocks, reasons: [], cautions: [], durationMs: 0 };
}

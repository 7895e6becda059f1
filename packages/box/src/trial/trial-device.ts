import type { DrillRecord, Journal } from '@larkhold/engine';
import { createLocalStore, createMemoryAdapter, type Store } from '@larkhold/store';
import type { BoxAdapter } from '../box-adapter.ts';
import { type BoxLink, createBoxLink } from '../box-link.ts';
import { meetBox, type Round } from '../box-round.ts';
import type { BoxKeys, Pairing } from '../pairing.ts';
import type { Cipher } from '../sealed-text.ts';

type Disk = ReturnType<typeof createMemoryAdapter>;
type Written = Parameters<Disk['write']>[0];

/** A disk in memory, and all that was ever written to it, in order. */
function createDisk(): { disk: Disk; written: Written[] } {
  const inner = createMemoryAdapter();
  const written: Written[] = [];
  const disk: Disk = {
    ...inner,
    async write(changes) {
      written.push(changes);
      await inner.write(changes);
    },
    async update(from, decide) {
      const changes = await inner.update(from, decide);
      written.push(changes);
      return changes;
    },
  };
  return { disk, written };
}

/** A device of an archer: a store with a clock of its own, and the way to a box. */
export class TrialDevice {
  /** The device's own clock, ISO 8601 UTC. */
  clock: string;
  link: BoxLink;
  store: Store;
  #disk = createDisk();
  readonly #keys: BoxKeys;

  /**
   * @param title what the archer calls it
   * @param pairing the box's
   * @param keys that follow from it
   * @param clock where its clock begins
   */
  constructor(title: string, pairing: Pairing, keys: BoxKeys, clock = '2026-11-25T06:00:00.000Z') {
    this.clock = clock;
    this.#keys = keys;
    this.link = createBoxLink(pairing, title);
    this.store = this.#open();
  }

  #open(): Store {
    const store = createLocalStore({ adapter: this.#disk.disk, now: () => this.clock });
    store.nameDevice(this.link.device);
    return store;
  }

  /**
   * Backs the whole disk up, its way to the box with it.
   * @returns puts all of it back as it was
   */
  backUp(): () => Promise<void> {
    const written = [...this.#disk.written];
    const link = structuredClone(this.link);
    return async () => {
      this.#disk = createDisk();
      for (const changes of written) await this.#disk.disk.write(changes);
      this.link = structuredClone(link);
      this.store = this.#open();
    };
  }

  /** Moves the clock; back where the milliseconds are below zero. */
  pass(ms: number): void {
    this.clock = new Date(Date.parse(this.clock) + ms).toISOString();
  }

  /** In the place of the box's own, where thousands of rounds are made. */
  cipher: Cipher | undefined;

  /** Its own controls; none, as an older app has it, unless a test gives some. */
  kit: Readonly<Record<string, unknown>> | undefined;

  async meet(box: BoxAdapter): Promise<Round> {
    const { kit } = this;
    const round = await meetBox({
      ...{ box, keys: this.#keys, link: this.link, now: () => this.clock, cipher: this.cipher },
      readJournal: () => this.store.journal(),
      ...(kit === undefined ? {} : { readKit: async () => kit }),
      mergeIn: (journal) => this.store.mergeInto(journal),
      keep: async (link) => {
        this.link = link;
      },
    });
    this.link = round.link;
    this.store.nameDevice(this.link.device);
    return round;
  }

  /** What an edit is stamped with: asked for after a reading, as the app does. */
  async instant(): Promise<string> {
    await this.store.journal();
    return this.store.instant();
  }

  journal(): Promise<Journal> {
    return this.store.journal();
  }
}

/**
 * A drill with some reps.
 * @param id its id
 * @param repCount how many
 * @returns the record
 */
export function trialDrill(id: string, repCount: number): DrillRecord {
  const reps = Array.from({ length: repCount }, (_, rep) => ({
    ...{
      block: 0,
      set: 0,
      rep,
      hand: 'usual' as const,
      prescribedMs: 20_000,
      heldMs: 20_000,
      outcome: 'held' as const,
    },
  }));
  const startedAt = '2026-11-25T06:30:00Z';
  return { id, program: 'Slow mornings', date: '2026-11-25', startedAt, endedAt: startedAt, reps };
}

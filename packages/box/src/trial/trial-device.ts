import type { DrillRecord, Journal } from '@larkhold/engine';
import { createLocalStore, createMemoryAdapter, type Store } from '@larkhold/store';
import type { BoxAdapter } from '../box-adapter.ts';
import { type BoxLink, createBoxLink } from '../box-link.ts';
import { meetBox, type Round } from '../box-round.ts';
import type { BoxKeys, Pairing } from '../pairing.ts';
import type { Cipher } from '../sealed-text.ts';

/** A device of an archer: a store with a clock of its own, and the way to a box. */
export class TrialDevice {
  /** The device's own clock, ISO 8601 UTC. */
  clock: string;
  link: BoxLink;
  readonly store: Store;
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
    this.store = createLocalStore({ adapter: createMemoryAdapter(), now: () => this.clock });
    this.store.nameDevice(this.link.device);
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

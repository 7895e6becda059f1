import type { DayEntry, WeekPage } from '@larkhold/engine';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { App } from '../../shell/app-context.ts';

/** A first change is written down at once; those that follow closely wait until typing has rested for this time. Leaving the page writes too. */
const RESTS_MS = 400;

type Fields = Record<string, unknown>;

/** What was typed into one thing and is not yet on disk. */
interface Draft {
  changes: Fields;
  /** @returns false where the value was refused: what was typed stays here then. */
  write(changes: Fields): Promise<boolean>;
}

/**
 * Writes what is typed, field by field. A change is laid over the thing as it is stored at that moment, so that two places that change
 * two fields of one day both keep theirs. Until it is written, what was typed is read back from here.
 */
export class JournalKeeper implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #app: () => App | undefined;
  readonly #drafts = new Map<string, Draft>();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #tail: Promise<void> = Promise.resolve();

  /**
   * @param host the element that shows the journal
   * @param app gives the app as it is now
   */
  constructor(host: ReactiveControllerHost, app: () => App | undefined) {
    this.#host = host;
    this.#app = app;
    host.addController(this);
  }

  hostConnected(): void {
    globalThis.addEventListener('pagehide', this.#onLeave);
    document.addEventListener('visibilitychange', this.#onLeave);
  }

  hostDisconnected(): void {
    globalThis.removeEventListener('pagehide', this.#onLeave);
    document.removeEventListener('visibilitychange', this.#onLeave);
    void this.flush();
  }

  /** @param date ISO 8601. @returns the day's entry, with what was just typed. */
  dayOf(date: string): DayEntry {
    const stored = this.#app()?.view.journal.days.find((entry) => entry.date === date);
    return { ...(stored ?? { date }), ...this.#drafts.get(`day ${date}`)?.changes };
  }

  /** @param week ISO week. @returns the week's page, with what was just typed. */
  weekOf(week: string): WeekPage {
    const stored = this.#app()?.view.journal.weeks.find((page) => page.week === week);
    return { ...(stored ?? { week }), ...this.#drafts.get(`week ${week}`)?.changes };
  }

  /** @returns the major goal, with what was just typed. */
  goal(): string {
    const typed = this.#drafts.get('goal')?.changes.text;
    return typeof typed === 'string' ? typed : (this.#app()?.view.journal.majorGoal?.text ?? '');
  }

  /**
   * Changes some fields of a day; `undefined` takes a field away.
   * @param date ISO 8601
   * @param changes the fields, in full
   */
  changeDay(date: string, changes: Partial<DayEntry>): void {
    this.#change(`day ${date}`, changes, async (fields) => {
      const app = this.#app();
      const stored = app?.view.journal.days.find((entry) => entry.date === date) ?? { date };
      return (await app?.act.putDay({ ...withChanges(stored, fields), editedAt: app.act.instant() })) ?? false;
    });
  }

  /**
   * Changes some fields of a week's page; `undefined` takes a field away.
   * @param week ISO week
   * @param changes the fields, in full
   */
  changeWeek(week: string, changes: Partial<WeekPage>): void {
    this.#change(`week ${week}`, changes, async (fields) => {
      const app = this.#app();
      const stored = app?.view.journal.weeks.find((page) => page.week === week) ?? { week };
      return (await app?.act.putWeek({ ...withChanges(stored, fields), editedAt: app.act.instant() })) ?? false;
    });
  }

  /** @param text the major goal, in the archer's own words */
  changeGoal(text: string): void {
    this.#change('goal', { text }, async () => {
      const app = this.#app();
      return (await app?.act.putMajorGoal({ text: this.goal(), editedAt: app.act.instant() })) ?? false;
    });
  }

  /** Writes everything that is waiting. @returns resolves when it is written. */
  flush(): Promise<void> {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    // One after the other: each write reads what the one before has left.
    this.#tail = this.#tail.then(() => this.#writeAll());
    return this.#tail;
  }

  #change(key: string, changes: Fields, write: Draft['write']): void {
    this.#drafts.set(key, { changes: { ...this.#drafts.get(key)?.changes, ...changes }, write });
    // A write that begins only when the page is left may not be let finish, so a single press does not wait.
    if (this.#timer === undefined) void this.flush();
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), RESTS_MS);
    this.#host.requestUpdate();
  }

  async #writeAll(): Promise<void> {
    for (const [key, { changes, write }] of [...this.#drafts]) {
      if (!(await write(changes))) continue;
      const draft = this.#drafts.get(key);
      if (!draft) continue;
      // What was typed while this was being written stays a draft.
      const rest = Object.entries(draft.changes).filter(
        ([name, value]) => changes[name] !== value || !(name in changes),
      );
      if (rest.length === 0) this.#drafts.delete(key);
      else this.#drafts.set(key, { ...draft, changes: Object.fromEntries(rest) });
    }
    this.#host.requestUpdate();
  }

  readonly #onLeave = (): void => {
    if (this.#drafts.size > 0) void this.flush();
  };
}

/**
 * Lays changed fields over a thing; those that are `undefined` are removed.
 * @param stored left as it is
 * @param fields the changes
 * @returns a new thing
 */
export function withChanges<T extends object>(stored: T, fields: Fields): T {
  const next: T & Fields = { ...stored, ...fields };
  for (const [name, value] of Object.entries(next)) if (value === undefined) delete next[name];
  return next;
}

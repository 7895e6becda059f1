import { askModel, beginModel, type DrillModel, hasMoved, type KnownRep, type Plan, passModel } from './drill-model.ts';

/** A drill in the journal. */
export interface KnownDrill {
  reps: KnownRep[];
  isOpen: boolean;
  /** When it was last corrected or closed; absent until then. */
  editedAt?: string;
}

interface Kept {
  drills: Map<string, KnownDrill>;
  /** Ids of drills that were removed: nothing brings them back. */
  removed: Set<string>;
  /** The drill under way as it was last written down. */
  running?: { id: string; drill: DrillModel };
}

/** What a journal on a device holds, what its disk holds of that, and what dies with the page. */
export class LifeModel {
  /** In the page. */
  shown: Kept = { drills: new Map(), removed: new Set() };
  /** On the disk. */
  disk: Kept = { drills: new Map(), removed: new Set() };
  /** The drill on the screen. */
  current: { id: string; drill: DrillModel } | undefined;
  isFull = false;
  /** How many more writes reach the disk; the page dies then. */
  writesLeft = Number.POSITIVE_INFINITY;

  get isClean(): boolean {
    return JSON.stringify(plain(this.shown)) === JSON.stringify(plain(this.disk));
  }

  begin(id: string, plan: Plan): void {
    this.current = { id, drill: beginModel(plan) };
    this.#write((kept) => this.#keepRunning(kept));
  }

  /** Something is asked of the drill, or time passes in one piece. */
  ask(what: keyof typeof askModel | number, instant: string): void {
    const { current } = this;
    if (!current) return;
    const before = structuredClone(current.drill);
    if (typeof what === 'number') passModel(current.drill, what);
    else askModel[what](current.drill);
    this.#follow(current, before, instant);
  }

  #follow(current: { id: string; drill: DrillModel }, before: DrillModel, instant: string): void {
    const { id, drill } = current;
    for (let count = before.reps.length; count < drill.reps.length; count++) {
      this.#write((kept) => {
        kept.drills.set(id, { reps: structuredClone(drill.reps), isOpen: drill.state !== 'over' });
        this.#keepRunning(kept);
      });
    }
    if (drill.state === 'over') this.#end(id, drill, instant);
    else if (hasMoved(before, drill)) this.#write((kept) => this.#keepRunning(kept));
  }

  #end(id: string, { reps }: DrillModel, instant: string): void {
    const closed = { reps: structuredClone(reps), isOpen: false };
    this.#write((kept) => {
      if (reps.length > 0) kept.drills.set(id, structuredClone(closed));
      kept.running = undefined;
    });
    if (reps.length > 0) {
      this.#write((kept) => void kept.drills.set(id, { ...structuredClone(closed), editedAt: instant }));
    }
    this.current = undefined;
  }

  /** The page is gone; another one is opened. */
  die(): void {
    this.shown = structuredClone(this.disk);
    this.current = undefined;
    this.writesLeft = Number.POSITIVE_INFINITY;
  }

  goOn(instant: string): void {
    const kept = this.shown.running;
    if (!kept) return;
    this.current = structuredClone(kept);
    this.ask('gap', instant);
  }

  close(instant: string): void {
    const kept = structuredClone(this.shown.running);
    if (!kept) return;
    askModel.gap(kept.drill);
    askModel.stop(kept.drill);
    const { id, drill } = kept;
    this.#write((one) => {
      const closed = { reps: structuredClone(drill.reps), isOpen: false, editedAt: instant };
      if (drill.reps.length > 0) one.drills.set(id, closed);
      one.running = undefined;
    });
  }

  /** Also an edit that says what was said before: that one keeps its instant. */
  edit(id: string, drill: Omit<KnownDrill, 'editedAt'>, instant: string): void {
    this.#write((kept) => {
      const { editedAt, ...before } = kept.drills.get(id) ?? { reps: [], isOpen: true };
      const isSame = editedAt !== undefined && JSON.stringify(before) === JSON.stringify(drill);
      kept.drills.set(id, { ...structuredClone(drill), editedAt: isSame ? editedAt : instant });
    });
  }

  remove(id: string): void {
    this.#write((kept) => {
      kept.drills.delete(id);
      kept.removed.add(id);
    });
  }

  /** Another copy of the journal comes in: of each drill the one that had ended is kept, then the one that got further, then the later edit. */
  merge(copy: ReadonlyMap<string, KnownDrill>): void {
    this.#write((kept) => {
      for (const [id, theirs] of copy) {
        if (kept.removed.has(id)) continue;
        const ours = kept.drills.get(id);
        const winner = !ours || ranks(theirs, ours) ? theirs : ours;
        const editedAt = [ours?.editedAt, theirs.editedAt]
          .flatMap((at) => at ?? [])
          .sort()
          .at(-1);
        kept.drills.set(id, { ...structuredClone(winner), ...(editedAt ? { editedAt } : {}) });
      }
    });
  }

  #keepRunning(kept: Kept): void {
    kept.running = structuredClone(this.current);
  }

  /** Happens in the page at once, and on the disk together with all that had no room before. */
  #write(change: (kept: Kept) => void): void {
    change(this.shown);
    this.writesLeft -= 1;
    if (!this.isFull && this.writesLeft >= 0) this.disk = structuredClone(this.shown);
  }
}

function ranks(a: KnownDrill, b: KnownDrill): boolean {
  if (a.isOpen !== b.isOpen) return b.isOpen;
  if (a.isOpen && a.reps.length !== b.reps.length) return a.reps.length > b.reps.length;
  return (a.editedAt ?? '') > (b.editedAt ?? '');
}

function plain({ drills, removed, running }: Kept): unknown {
  return { drills: [...drills].sort(([a], [b]) => (a < b ? -1 : 1)), removed: [...removed].sort(), running };
}

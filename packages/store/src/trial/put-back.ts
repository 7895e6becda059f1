import type { Backup } from '../backup.ts';
import type { Store } from '../store.ts';
import type { TakenIn } from '../taken-in.ts';

/** Puts all of a backup into a store, its kit only where it is wanted. */
export function putBack(store: Store, backup: Backup, takesKit = true): Promise<TakenIn> {
  const { format: _format, version: _version, madeAt: _madeAt, kit, ...journal } = backup;
  return store.takeIn({ journal, ...(takesKit ? { kit } : {}) });
}

import type { Change, Table } from './adapter.ts';
import type { Kit } from './kit.ts';
import { ownPart } from './own-kit.ts';
import { type StampParts, stampChange } from './stamp-change.ts';
import { putSingle } from './stored-rows.ts';

/** The tables that a change of the kit reads. */
export const kitTables = ['single', 'removed'] as const satisfies readonly Table[];

/**
 * The changes that put a kit: this device's own values, and those that the archer shares among devices.
 * @param before the kit as it is stored
 * @param after the kit as it will be
 * @param parts see `StampParts`; `found` holds `kitTables`
 * @returns the changes
 * @throws RefusedValueError where a value is not what a kit holds
 */
export function kitChanges(before: Kit, after: Kit, parts: StampParts): Change[] {
  const change = putSingle('kit', after);
  const own = ownPart(parts.found.get('single')?.get('ownKit'), before, after, parts.now);
  return own === undefined ? [change] : [change, ...stampChange(putSingle('ownKit', own), parts)];
}

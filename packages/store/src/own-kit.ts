import type { OwnKit } from '@larkhold/engine';
import { isSame } from '@larkhold/engine';
import { type Kit, kitSchema, salvageKit } from './kit.ts';

/** The values of the kit that belong to the archer and are the same on all devices. The rest (sound, screen, keys, backup) belongs to a device. */
export const ownKitNames = [
  ...(['bow', 'hand', 'drawWeightLbf', 'drawLengthIn', 'ageBand', 'units', 'shotProcess', 'shotSketch'] as const),
  ...([
    'routines',
    'programId',
    'programDay',
    'maxHoldSeconds',
    'plan',
    'weekStart',
    'rangeCheckPlaces',
    'archer',
  ] as const),
] satisfies readonly (keyof Kit)[];

/**
 * Lays the archer's part, as all devices share it, over this device's kit.
 * @param device the kit as this device keeps it; anything, as it was found
 * @param archer the shared part; anything, as it was found
 * @returns the kit, every default filled in; a shared value that this app cannot read is left out, and stays where it is
 */
export function wholeKit(device: unknown, archer: unknown): Kit {
  const { kit } = salvageKit(device);
  const shared = Object(archer) as Partial<OwnKit>;
  const whole: Record<string, unknown> = { ...kit };
  for (const name of ownKitNames) {
    const value = shared[name];
    if (value !== undefined && kitSchema.shape[name].safeParse(value).success) whole[name] = value;
    else if (value === undefined && Object.hasOwn(Object(shared.edits), name)) delete whole[name];
  }
  return salvageKit(whole).kit;
}

/**
 * Makes the archer's shared part of a kit that was changed.
 * @param shared the shared part as it is stored; anything, as it was found
 * @param before the kit before
 * @param after the kit now
 * @param editedAt the instant, ISO 8601 UTC
 * @returns the shared part with what was changed; undefined if nothing of it was
 */
export function ownPart(shared: unknown, before: Kit, after: Kit, editedAt: string): OwnKit | undefined {
  const changed = ownKitNames.filter((name) => !isSame(before[name], after[name]));
  if (changed.length === 0) return undefined;
  const part: Record<string, unknown> = { ...Object(shared) };
  for (const name of changed) {
    if (after[name] === undefined) delete part[name];
    else part[name] = after[name];
  }
  return { ...part, editedAt };
}

import { isSame } from '@larkhold/engine';
import { createKit, type Kit, kitSchema } from './kit.ts';

/**
 * The values of the kit that belong to a device and that another one may copy: controls, sound, screen. What was allowed to be said at full draw, the camera,
 * the screen's own measure and the backup stay where they are.
 */
export const deviceKitNames = [
  ...(['keys', 'listens', 'soundLevel', 'voice', 'quiet', 'spoken', 'saysWarmUp'] as const),
  ...(['layout', 'theme', 'viewing', 'fullScreen', 'language'] as const),
] satisfies readonly (keyof Kit)[];
/** A device's own controls, sound and screen. */
export type DeviceKit = Pick<Kit, (typeof deviceKitNames)[number]>;

/**
 * The values of a kit that another device may copy.
 * @param kit a whole kit
 * @returns controls, sound and screen, and nothing else of it
 */
export function deviceKitOf(kit: Kit): DeviceKit {
  return Object.fromEntries(deviceKitNames.map((name) => [name, kit[name]])) as DeviceKit;
}

/**
 * Reads what another device says of its controls, value by value: what this app does not know or cannot read is left out.
 * @param found anything, as it was found
 * @returns the values that are good
 */
export function readDeviceKit(found: unknown): Partial<DeviceKit> {
  const usual = createKit();
  const good: Record<string, unknown> = {};
  for (const name of deviceKitNames) {
    const value: unknown = Object.getOwnPropertyDescriptor(Object(found), name)?.value;
    const read = kitSchema.shape[name].safeParse(knownOf(value, usual[name]));
    if (value !== undefined && read.success) good[name] = read.data;
  }
  return good;
}

/**
 * Tells whether a device's controls, sound and screen are still as on its first day.
 * @param kit a whole kit
 * @returns false once the archer has changed any of them
 */
export function isAsNew(kit: Kit): boolean {
  return isSame(deviceKitOf(kit), deviceKitOf(createKit()));
}

/** A newer app may know more keys in one value: the others count all the same. */
function knownOf(value: unknown, usual: unknown): unknown {
  if (typeof usual !== 'object' || typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).filter(([name]) => Object.hasOwn(Object(usual), name)));
}

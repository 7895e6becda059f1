/** A value as a program file may hold it, right or wrong. */
export type Json = string | number | boolean | null | readonly Json[] | JsonObject;
/** An object of a program file; a key whose value is undefined is not written. */
export interface JsonObject {
  readonly [key: string]: Json | undefined;
}

/** Keys and indexes from the root of a file. */
export type Path = readonly (string | number)[];

/**
 * The value at a path.
 * @param root where to start
 * @param path keys and indexes
 * @returns the value, or undefined where there is none
 */
export function valueAt(root: Json | undefined, path: Path): Json | undefined {
  let value = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = Array.isArray(value) ? value[Number(key)] : (value as JsonObject)[key];
  }
  return value;
}

/**
 * A copy with one value changed; everything off the path is shared with the original.
 * @param root what to copy
 * @param path keys and indexes; objects that are missing on the way are made
 * @param value the new value; undefined takes a key out of an object
 * @returns the changed copy
 */
export function withValueAt(root: Json | undefined, path: Path, value: Json | undefined): Json | undefined {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (Array.isArray(root)) {
    return root.map((entry, index) => (index === Number(key) ? (withValueAt(entry, rest, value) ?? null) : entry));
  }
  const object: JsonObject = typeof root === 'object' && root !== null ? (root as JsonObject) : {};
  const changed = withValueAt(Object.hasOwn(object, key) ? object[key] : undefined, rest, value);
  return Object.fromEntries(
    [...Object.entries(object).filter(([name]) => name !== key || changed !== undefined), [key, changed]].filter(
      ([, entry]) => entry !== undefined,
    ),
  ) as JsonObject;
}

/**
 * The RFC 6901 pointer of a path; the bench's own keys need no escapes, but a file's might.
 * @param path keys and indexes
 * @returns '/blocks/0/hold'
 * @source RFC 6901 section 3
 */
export function pointerOfPath(path: Path): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

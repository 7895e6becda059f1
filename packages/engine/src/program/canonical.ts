import * as z from 'zod';

/**
 * The canonical form of a value that a schema accepts: keys in the schema's own order, and nothing that parsing would fill in anyway.
 * @param schema what the value was read with; the one place that knows its keys, their order and their defaults
 * @param value a value as the schema's parse gives it
 * @returns what to write as JSON; undefined where the value is left out
 */
export function canonicalOf(schema: z.core.$ZodType, value: unknown): unknown {
  if (value === undefined) return undefined;
  if (schema instanceof z.ZodDefault) {
    return isAlike(value, schema.def.defaultValue) ? undefined : canonicalOf(schema.def.innerType, value);
  }
  if (schema instanceof z.ZodPrefault) {
    const written = canonicalOf(schema.def.innerType, value);
    return isAlike(written, schema.def.defaultValue) ? undefined : written;
  }
  if (schema instanceof z.ZodOptional) return canonicalOf(schema.def.innerType, value);
  if (schema instanceof z.ZodUnion) {
    const form = schema.def.options.find((option) => z.safeParse(option, value).success);
    return form ? canonicalOf(form, value) : value;
  }
  if (schema instanceof z.ZodArray) return (value as unknown[]).map((entry) => canonicalOf(schema.def.element, entry));
  if (schema instanceof z.ZodObject) {
    const written = Object.entries(schema.def.shape).map(([key, inner]) => [
      key,
      canonicalOf(inner, (value as Record<string, unknown>)[key]),
    ]);
    return Object.fromEntries(written.filter(([, entry]) => entry !== undefined));
  }
  return value;
}

function isAlike(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

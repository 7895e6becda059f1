/** What is in one of the parts, for all of them. */
export type Joined<Parts> = { [Part in keyof Parts]: (part: Parts[Part]) => void }[keyof Parts] extends (
  all: infer All,
) => void
  ? All
  : never;

/**
 * Makes one list of a language's messages.
 * @param parts the lists of its files
 * @returns all that is in them
 */
export function joinParts<Parts extends object>(parts: Parts): Joined<Parts> {
  return Object.assign({}, ...Object.values(parts));
}

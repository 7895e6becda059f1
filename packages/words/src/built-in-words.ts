/** What the built-in programs say in a language other than their own, English. */
export interface BuiltInWords {
  /** Lines of warm-up and cool-down, by the English line. */
  lines: Readonly<Record<string, string>>;
  /** Everything else, by the program's id; titles of blocks in order. */
  programs: Readonly<Record<string, { title: string; about: string; source: string; blocks: readonly string[] }>>;
}

/**
 * A frozen file as it is written today: its programs have become files of the version that is written now, and nothing else has changed.
 * @param text a backup or a dump of a database, as JSON
 * @returns the text with the programs' version raised
 */
export function withProgramsOfToday(text: string): string {
  return text.replace(/("format":\s*"larkhold\/program",\s*"version":\s*)1\b/g, '$12');
}

/** Where a file of ours names its format: near its beginning, characters. */
const HEAD_CHARS = 4000;

/**
 * The format that a file names, as `program` of `larkhold/program`. The first one that is named counts; its reader then looks at the whole file.
 * @param text what is in the file
 * @returns the name; undefined where no format of ours is named near its beginning
 * @example namedFormat('{ "format": "larkhold/season" }') // 'season'
 */
export function namedFormat(text: string): string | undefined {
  return /"format"\s*:\s*"larkhold\/([a-z-]+)"/.exec(text.slice(0, HEAD_CHARS))?.[1];
}

/** What a file is by the end of its name; everything else that the app writes is JSON. */
const kinds: Readonly<Record<string, string>> = { csv: 'text/csv', ics: 'text/calendar' };

/**
 * Hands a file to the archer: the browser saves it, or asks where.
 * @param name the file's name
 * @param text what is in it
 */
export function saveFile(name: string, text: string): void {
  saveBlob(name, new Blob([text], { type: kinds[name.split('.').at(-1) ?? ''] ?? 'application/json' }));
}

/**
 * Hands a file of any kind to the archer.
 * @param name the file's name
 * @param file what is in it
 */
export function saveBlob(name: string, file: Blob): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the address after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/**
 * A title as part of a file's name.
 * @param title any text
 * @returns letters, digits and hyphens of any script; 'program' where none are left
 */
export function fileNameOf(title: string): string {
  const name = title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return name === '' ? 'program' : name;
}

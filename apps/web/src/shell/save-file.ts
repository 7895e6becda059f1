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

/** Most signs of a title in a file's name; with what comes after, even the longest of any script stay under 255 bytes. */
const MOST_SIGNS = 50;

/** Names that stand for a device on some systems, whatever extension follows. */
const deviceNames = /^(?:con|prn|aux|nul|(?:com|lpt)[0-9\u00b9\u00b2\u00b3])$/;

/**
 * A title as part of a file's name. A title comes from anywhere, so nothing of it may lead to another folder or hide what kind of file it is.
 * @param title any text
 * @returns lower-case letters, digits and hyphens of any script; 'program' where none are left, and before the name of a device
 */
export function fileNameOf(title: string): string {
  const signs = title
    .normalize('NFC')
    .toLowerCase()
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-/, '');
  const name = [...signs].slice(0, MOST_SIGNS).join('').replace(/-$/, '');
  if (name === '') return 'program';
  return deviceNames.test(name) ? `program-${name}` : name;
}

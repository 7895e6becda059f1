import { say } from '@larkhold/words';

/** A file that the archer has chosen, to be written again without asking. */
export interface FileTarget {
  readonly name: string;
  /** The browser's own, to be kept. */
  readonly handle: FileSystemFileHandle;
  /** @param text what the file will hold. @throws where the browser or the disk refuses */
  write(text: string): Promise<void>;
}

/** The part of the File System Access API that is used; in Chromium, and nowhere else in 2026. */
interface Picker {
  showSaveFilePicker?(options: object): Promise<FileSystemFileHandle>;
}

/** @param scope the window. @returns whether a file can be chosen and written again here */
export function canChooseFile(scope: object): boolean {
  return typeof (scope as Picker).showSaveFilePicker === 'function';
}

/**
 * Asks the archer for a file to write to.
 * @param scope the window
 * @param suggestedName for a new file
 * @returns the file; undefined when the archer chose none or the browser can't
 */
export async function chooseFile(scope: object, suggestedName: string): Promise<FileTarget | undefined> {
  const picker = scope as Picker;
  if (!picker.showSaveFilePicker) return undefined;
  let handle: FileSystemFileHandle;
  try {
    handle = await picker.showSaveFilePicker({
      suggestedName,
      types: [{ description: say('share.fileKind'), accept: { 'application/json': ['.json'] } }],
    });
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return undefined; // the archer thought better of it
    throw error;
  }
  return targetOf(handle);
}

/** The part of a handle that asks to write; in Chromium only, and in no browser's types. */
interface Asking {
  requestPermission?(options: { mode: 'readwrite' }): Promise<PermissionState>;
}

/**
 * A file to write to, of a handle that was chosen now or before.
 * @param handle the browser's
 * @returns the file; after a new visit the browser may ask the archer before the first writing
 */
export function targetOf(handle: FileSystemFileHandle): FileTarget {
  return {
    name: handle.name,
    handle,
    async write(text) {
      const asking: FileSystemFileHandle & Asking = handle;
      const answer = await asking.requestPermission?.({ mode: 'readwrite' });
      if (answer !== undefined && answer !== 'granted') throw new DOMException('not allowed', 'NotAllowedError');
      const stream = await handle.createWritable();
      await stream.write(text);
      await stream.close();
    },
  };
}

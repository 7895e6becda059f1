import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileNameOf } from './save-file.ts';

/**
 * Microsoft, "Naming Files, Paths, and Namespaces": reserved characters and names, also before an extension; a name ends in no dot or space.
 * POSIX.1-2017, 3.170: no slash, no null.
 */
const reservedSigns = /[\\/:*?"<>|.\s\p{Cc}\p{Cf}\p{Cs}]/u;
const reservedNames = ['con', 'prn', 'aux', 'nul', 'com1', 'com9', 'lpt1', 'lpt9', 'conin$', 'conout$', 'com¹', 'lpt³'];
/** ext4, APFS, NTFS: at most 255 bytes or units; what the app adds after it, as '-2026-02-28.hand-over.json', is under 40. */
const MOST_BYTES = 215;

describe('a title as part of a file name', () => {
  it.each([
    ['Club starter', 'club-starter'],
    ['../../etc/passwd', 'etc-passwd'],
    ['..\\..\\boot.ini', 'boot-ini'],
    ['  .hidden', 'hidden'],
    ['C:\\x', 'c-x'],
    ['a\u202Egnp.exe', 'a-gnp-exe'],
    ['-rf *', 'rf'],
    ['Über Nacht', 'über-nacht'],
    ['Cafe\u0301', 'café'],
    ['弓 の 朝', '弓-の-朝'],
    ['***', 'program'],
    ['', 'program'],
  ])('%j becomes %s', (title, name) => {
    expect(fileNameOf(title)).toBe(name);
  });

  it.each(reservedNames)('%s is no device of a system', (title) => {
    expect(reservedNames).not.toContain(fileNameOf(title));
    expect(reservedNames).not.toContain(fileNameOf(title.toUpperCase()));
  });

  it('holds for any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (title) => {
        const name = fileNameOf(title);
        expect(name).not.toMatch(reservedSigns);
        expect(name).not.toMatch(/^-|-$/);
        expect(name).not.toBe('');
        expect(Buffer.byteLength(name)).toBeLessThanOrEqual(MOST_BYTES);
        // Cut between two halves of one sign, it would be no text any more.
        expect(Buffer.from(name).toString()).toBe(name);
        expect(fileNameOf(name)).toBe(name);
      }),
      { numRuns: 1000 },
    );
  });
});

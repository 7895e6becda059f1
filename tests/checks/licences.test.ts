import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { licenceTexts } from '../../apps/web/licence-texts.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Licences that ask for no more than to be named; the one weak copyleft is used unchanged and loaded only to write an audio file. */
const accepted = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', '0BSD'];
const exceptions: Record<string, string> = { mediabunny: 'MPL-2.0' };

interface LockedPackage {
  license?: string;
  dev?: boolean;
  link?: boolean;
  resolved?: string;
}

/** What ships or is needed at run time, by name, with its licence. */
function shipped(): [string, string][] {
  const lock: Record<string, LockedPackage> = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8')).packages;
  return Object.entries(lock)
    .filter(([path, { dev, link }]) => path.startsWith('node_modules/') && !dev && !link)
    .map(([path, { license }]) => [path.replace(/^.*node_modules\//, ''), license ?? 'none']);
}

describe('licences', () => {
  it('of everything that ships are permissive, or named exceptions', () => {
    const strange = shipped().filter(([name, licence]) => !accepted.includes(licence) && exceptions[name] !== licence);
    expect(strange).toEqual([]);
  });

  it('are listed in the docs, all of them', () => {
    const page = readFileSync(`${root}docs/licences.md`, 'utf8');
    const rows = shipped().filter(([name]) => !name.startsWith('@types/'));
    expect(rows.filter(([name, licence]) => !page.includes(`| ${name} | ${licence} |`))).toEqual([]);
  });

  it('are in the built app in their own words, all of them', () => {
    const parts = licenceTexts(root).split(`\n\n${'-'.repeat(72)}\n\n`);
    for (const [name, licence] of shipped().filter(([one]) => !one.startsWith('@types/'))) {
      const part = parts.find((one) => one.includes(`${name} `) && one.includes(`\n${licence}\n`));
      expect([name, (part ?? '').length > 60]).toEqual([name, true]);
    }
    // MIT and BSD ask for their copyright line to be passed on.
    expect(parts.filter((one) => /copyright/i.test(one)).length).toBeGreaterThan(parts.length * 0.8);
  });

  it('come from packages of the registry alone', () => {
    const lock: Record<string, LockedPackage> = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8')).packages;
    const elsewhere = Object.entries(lock).filter(
      ([, { resolved }]) => resolved?.startsWith('http:') || resolved?.startsWith('git'),
    );
    expect(elsewhere).toEqual([]);
  });
});

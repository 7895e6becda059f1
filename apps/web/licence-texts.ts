import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A package that ships with the app. */
interface LockedPackage {
  version?: string;
  license?: string;
  dev?: boolean;
  link?: boolean;
}

/**
 * The licences' own texts of everything that ships, as they ask to be passed on.
 * @param root the folder of the lock file
 * @returns one text: each package with its version, licence and the text that came with it
 */
export function licenceTexts(root: string): string {
  const lock: Record<string, LockedPackage> = JSON.parse(
    readFileSync(join(root, 'package-lock.json'), 'utf8'),
  ).packages;
  const shipped = Object.entries(lock).filter(
    ([path, { dev, link }]) => path.startsWith('node_modules/') && !dev && !link && !path.includes('/@types/'),
  );
  const parts = shipped.map(([path, { version, license }]) => {
    const name = path.replace(/^.*node_modules\//, '');
    return `${name} ${version ?? ''}\n${license ?? 'licence unknown'}\n\n${textIn(join(root, path), license)}`;
  });
  return `Larkhold is built on these packages. Thank you.\n\n${parts.join(`\n\n${'-'.repeat(72)}\n\n`)}\n`;
}

/** The licence and notice that lie in a package; who wrote it where it brings neither. */
function textIn(folder: string, licence: string | undefined): string {
  if (!existsSync(folder)) return `${licence ?? ''}`;
  const names = readdirSync(folder).filter((name) => /^(licen[cs]e|notice|copying)/i.test(name));
  const texts = names.map((name) => readFileSync(join(folder, name), 'utf8').trim());
  if (texts.length > 0) return texts.join('\n\n');
  const { author, homepage, repository } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const said = [author, homepage, repository].map((one: unknown) =>
    typeof one === 'string' ? one : Object.values(Object(one)).join(' '),
  );
  return said.filter((one) => one !== '').join('\n');
}

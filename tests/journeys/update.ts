import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';

/** A host of its own, whose files can change and which can go down. */
export interface Host {
  address: string;
  /** Puts a newer version of the app in place of the served one. */
  renew(version: string): void;
  close(): Promise<void>;
}

/** Serves a copy of the built app. */
export async function serveCopy(): Promise<Host> {
  const root = fileURLToPath(new URL('../../apps/web', import.meta.url));
  const folder = mkdtempSync(join(tmpdir(), 'larkhold-built-'));
  const built = process.env.LARKHOLD_BUILT ?? 'dist';
  cpSync(fileURLToPath(new URL(built, `file://${root}/`)), folder, { recursive: true });
  const server = await preview({
    root,
    logLevel: 'warn',
    build: { outDir: folder },
    preview: { port: 0, host: '127.0.0.1' },
  });
  const address = server.resolvedUrls?.local[0];
  if (!address) throw new Error('the copy could not be served');
  return {
    address,
    renew(version) {
      const page = join(folder, 'index.html');
      const worker = join(folder, 'sw.js');
      const text = readFileSync(worker, 'utf8');
      const changed = text.replace(/(url:"index\.html",revision:")[^"]*/, `$1${version}`);
      if (changed === text) throw new Error('sw.js lists no index.html');
      writeFileSync(
        page,
        readFileSync(page, 'utf8').replace(/<html[^>]*>/, `<html lang="en" data-version="${version}">`),
      );
      writeFileSync(worker, changed);
    },
    async close() {
      await server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

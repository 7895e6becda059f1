#!/usr/bin/env node
import { readFile, realpath, rename, stat, writeFile } from 'node:fs/promises';
import { buffer } from 'node:stream/consumers';
import { createNodeFolderBox } from './node-folder-box.ts';
import { run } from './run.ts';

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** All of a file or none of it: written beside and moved into its place, but for devices and pipes. */
async function writeWhole(path: string, content: string | Uint8Array): Promise<void> {
  const target = await realpath(path).catch(() => path);
  const found = await stat(target).catch(() => undefined);
  if (found?.isFile() === false) return writeFile(target, content);
  const beside = `${target}.${process.pid}.part`;
  await writeFile(beside, content, found && { mode: found.mode });
  await rename(beside, target);
}

/** Whoever reads the beginning alone, as `head` does, has had enough: that is no fault. */
const isEnough = (cause?: NodeJS.ErrnoException | null): boolean => cause?.code === 'EPIPE';
process.stdout.on('error', (cause) => {
  if (!isEnough(cause)) throw cause;
});

// The only place where the real files, streams and clock meet.
process.exitCode = await run(process.argv.slice(2), {
  read: (path) => (path === '-' ? buffer(process.stdin) : readFile(path)),
  async write(path, content) {
    if (path !== '-') return writeWhole(path, content);
    await new Promise<void>((resolve, reject) =>
      process.stdout.write(content, (error) => (error && !isEnough(error) ? reject(error) : resolve())),
    );
  },
  variable: (name) => process.env[name],
  openFolderBox: createNodeFolderBox,
  print: (line) => void process.stdout.write(line),
  complain: (line) => void process.stderr.write(line),
  isTerminal: process.stdout.isTTY === true && process.env.NO_COLOR === undefined,
  today() {
    const now = new Date();
    return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
  },
  instant: () => new Date().toISOString(),
});

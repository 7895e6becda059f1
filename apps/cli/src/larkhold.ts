#!/usr/bin/env node
import { readFile, writeFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { run } from './run.ts';

const twoDigits = (value: number): string => String(value).padStart(2, '0');

// The only place where the real files, streams and clock meet.
process.exitCode = await run(process.argv.slice(2), {
  read: (path) => (path === '-' ? text(process.stdin) : readFile(path, 'utf8')),
  async write(path, content) {
    if (path !== '-') return writeFile(path, content);
    await new Promise<void>((resolve, reject) =>
      process.stdout.write(content, (error) => (error ? reject(error) : resolve())),
    );
  },
  print: (line) => void process.stdout.write(line),
  complain: (line) => void process.stderr.write(line),
  isTerminal: process.stdout.isTTY === true && process.env.NO_COLOR === undefined,
  today() {
    const now = new Date();
    return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
  },
  instant: () => new Date().toISOString(),
});

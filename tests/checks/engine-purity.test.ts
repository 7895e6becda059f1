import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The engine has no clock, no chance, no network and no screen: each is written into a copy of its folder and must be refused. */
describe('the engine stays pure', () => {
  let tree: string;

  beforeAll(() => {
    tree = mkdtempSync('/tmp/larkhold-purity-');
    const config = JSON.parse(readFileSync(`${root}biome.json`, 'utf8'));
    writeFileSync(`${tree}/biome.json`, JSON.stringify({ ...config, $schema: undefined, vcs: { enabled: false } }));
    cpSync(`${root}scripts/no-chance.grit`, `${tree}/scripts/no-chance.grit`);
    mkdirSync(`${tree}/packages/engine/src/units`, { recursive: true });
  });

  afterAll(() => rmSync(tree, { recursive: true }));

  function lint(text: string) {
    writeFileSync(`${tree}/packages/engine/src/units/probe.ts`, `${text}\n`);
    return spawnSync(`${root}node_modules/.bin/biome`, ['lint', '.'], { cwd: tree, encoding: 'utf8' });
  }

  it.each([
    ['a clock', 'export const now = () => Date.now();'],
    ['another clock', 'export const now = () => performance.now();'],
    ['an identity', 'export const id = () => crypto.randomUUID();'],
    ['a timer', 'export const wait = () => setTimeout(() => undefined, 1);'],
    ['chance', 'export const dice = () => Math.random();'],
    ['the network', "export const get = () => fetch('/');"],
    ['a console', "export const log = () => console.log('');"],
  ])('refuses %s', (_name, text) => {
    const { status, stdout, stderr } = lint(text);
    expect(status, stdout + stderr).toBe(1);
  });

  it('accepts what is pure', () => {
    const { status, stdout, stderr } = lint('export const twice = (n: number) => 2 * n;');
    expect(status, stdout + stderr).toBe(0);
  });
});

import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type PreviewServer, preview } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';

const house = fileURLToPath(new URL('../..', import.meta.url));
const runner = join(house, 'packages/runner');

describe('a page of one’s own', () => {
  let folder: string;
  let server: PreviewServer;
  let address: string;

  // The page as it is in `docs`, and the package built as for publishing, where the page looks for it; nothing else.
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'larkhold-embed-'));
    const site = join(folder, 'site');
    cpSync(join(house, 'docs/embed.html'), join(site, 'docs/embed.html'));
    writeFileSync(join(site, 'favicon.ico'), ''); // a browser asks for it, whatever the page says
    const outDir = join(site, 'packages/runner/dist/bundle');
    await build({ configFile: join(runner, 'vite.config.ts'), logLevel: 'warn', build: { outDir } });
    server = await preview({
      ...{ root: folder, configFile: false, logLevel: 'warn', appType: 'mpa' },
      ...{ build: { outDir: 'site' }, preview: { port: 0, host: '127.0.0.1' } },
    });
    address = server.resolvedUrls?.local[0] ?? '';
  });

  afterAll(async () => {
    await leaveAll();
    await server?.close();
    rmSync(folder, { recursive: true });
  });

  it('is ten lines of HTML', () => {
    const lines = readFileSync(join(house, 'docs/embed.html'), 'utf8').trimEnd().split('\n');
    expect(lines.length).toBeLessThanOrEqual(10);
  });

  it('runs a built-in program with sound, and hears its events', async () => {
    const { page, faults, leave } = await arrive('docs/embed.html', {}, address);
    await page.getByRole('button', { name: 'Begin' }).click();
    const word = (words: string) => page.locator('lark-glance').getByText(words, { exact: true }).first();
    await word('Get ready').waitFor();
    await word('Draw').waitFor();
    await page.keyboard.press('Space');
    await page.getByText('lark-rep: 1 done').waitFor();
    await word('Let down').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('alert').getByText('Stop the drill?').waitFor();
    await page.waitForTimeout(350); // within 300 ms it would be the same press
    await page.keyboard.press('Escape');
    await page.getByText('lark-end: 1 done').waitFor();
    // The page's own list: it names what came from the cache too, which a browser need not report as a response.
    const loaded = await page.evaluate(() =>
      performance
        .getEntriesByType('resource')
        .filter((entry) => (entry as PerformanceResourceTiming).responseStatus < 400)
        .map((entry) => new URL(entry.name).pathname),
    );
    // The spoken words and the Worker that wakes the sound were found beside the package.
    expect(loaded.filter((path) => /pack-.*\.(webm|mp3)$/.test(path))).toHaveLength(1);
    expect(loaded.filter((path) => path.includes('wake-worker'))).not.toEqual([]);
    // Of the texts only those of the page's language.
    expect(loaded.filter((path) => path.includes('english-'))).toHaveLength(1);
    expect(loaded.filter((path) => path.includes('german-'))).toEqual([]);
    expect(faults).toEqual([]);
    await leave();
  });
});

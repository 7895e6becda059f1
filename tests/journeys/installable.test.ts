import { afterAll, expect, inject, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { loadDemo, stillScreens } from './every-screen.ts';

afterAll(leaveAll);

interface Manifest {
  name: string;
  short_name: string;
  id: string;
  start_url: string;
  scope: string;
  display: string;
  icons: { src: string; sizes: string; type: string; purpose?: string }[];
  file_handlers: { action: string; accept: Record<string, string[]> }[];
}

/** W3C PNG specification, 5.2 and 11.2.2: eight signature bytes, then the header's length and name, width and height. */
function pngSize(bytes: Buffer): string {
  expect(bytes.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a');
  expect(bytes.subarray(12, 16).toString()).toBe('IHDR');
  return `${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`;
}

it('can be installed: a manifest with what browsers ask for, and icons that are what they say', async () => {
  const { page, faults, leave } = await arrive('#/line', { whole: true, serviceWorkers: 'allow' });
  const address = await page.evaluate(() => document.querySelector<HTMLLinkElement>('link[rel=manifest]')?.href ?? '');
  const answer = await fetch(address);
  const manifest = (await answer.json()) as Manifest;
  // web.dev, "What does it take to be installable?": a name, icons of 192 and 512 pixels, a start address and a window of its own.
  expect(manifest.name).toBe('Larkhold');
  expect(manifest.short_name.length).toBeLessThanOrEqual(12);
  expect(['standalone', 'fullscreen', 'minimal-ui']).toContain(manifest.display);
  const [scope, start] = [new URL(manifest.scope, address), new URL(manifest.start_url, address)];
  expect(start.href.startsWith(scope.href)).toBe(true);
  expect(start.origin).toBe(new URL(inject('address')).origin);
  expect(manifest.icons.map(({ sizes, purpose }) => `${sizes} ${purpose ?? 'any'}`)).toEqual(
    expect.arrayContaining(['192x192 any', '512x512 any', '512x512 maskable']),
  );
  for (const { src, sizes, type } of manifest.icons) {
    const icon = await fetch(new URL(src, address));
    expect(icon.headers.get('content-type')).toContain(type);
    if (type === 'image/png') expect(pngSize(Buffer.from(await icon.arrayBuffer()))).toBe(sizes);
  }
  expect(manifest.file_handlers[0]?.accept['application/json']).toContain('.json');
  expect(new URL(manifest.file_handlers[0]?.action ?? '', address).hash).toBe('#/rack');

  // What the browser itself has against it.
  const devtools = await page.context().newCDPSession(page);
  const { errors } = (await devtools.send('Page.getAppManifest')) as { errors: { message: string }[] };
  expect(errors).toEqual([]);
  const { installabilityErrors } = (await devtools.send('Page.getInstallabilityErrors')) as {
    installabilityErrors: { errorId: string }[];
  };
  // A private window installs nothing, whatever the app does.
  expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual([]);
  expect(faults).toEqual([]);
  await leave();
});

it('asks nobody but its own address, on any page and after every file', async () => {
  const { page, faults, leave } = await arrive('#/rack', { serviceWorkers: 'allow' });
  const asked: string[] = [];
  page.context().on('request', (request) => asked.push(new URL(request.url()).origin));
  page.context().on('serviceworker', (worker) => asked.push(new URL(worker.url()).origin));
  await loadDemo(page);
  for (const { reach } of stillScreens) await reach(page);
  expect(
    [...new Set(asked)].filter((origin) => origin !== new URL(inject('address')).origin && origin !== 'null'),
  ).toEqual([]);
  expect(asked.length).toBeGreaterThan(10);
  expect(faults).toEqual([]);
  await leave();
});

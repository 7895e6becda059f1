import { builtInPrograms, formatProgram } from '@larkhold/engine';
import axe from 'axe-core';
import { afterEach, expect, test, vi } from 'vitest';
import type { App } from '../../shell/app-context.ts';
import './lark-share.ts';
import type { LarkShare } from './lark-share.ts';
import { parsePayload, payloadIn } from './program-link.ts';

const program = builtInPrograms[0]!;
const scope = window as unknown as Record<string, unknown>;

async function shareOf(about = program.about) {
  const share = document.createElement('lark-share');
  const saved: [string, string][] = [];
  share.app = {
    act: { saveFile: (name: string, text: string) => saved.push([name, text]) } as Partial<App['act']>,
  } as App;
  share.address = 'https://example.org/app/#/rack';
  share.program = { ...program, about };
  document.body.append(share);
  await share.updateComplete;
  return { share, saved };
}

async function press(share: LarkShare, words: string) {
  [...share.renderRoot.querySelectorAll('button')].find((one) => one.textContent?.trim().startsWith(words))!.click();
  await new Promise((resolve) => setTimeout(resolve, 20));
  await share.updateComplete;
}
const said = (share: LarkShare) => share.renderRoot.querySelector('[role=status]')?.textContent;

afterEach(() => {
  delete scope.showSaveFilePicker;
  Reflect.deleteProperty(navigator, 'share');
  Reflect.deleteProperty(navigator, 'canShare');
});

test('without a picker the file is saved by the app', async () => {
  scope.showSaveFilePicker = undefined;
  const { share, saved } = await shareOf();
  await press(share, 'Save as a file');
  expect(saved).toEqual([['club-starter.drill.json', formatProgram(program)]]);
});

/** A file of the browser's own disk: a real handle, which can be kept, as one that was picked. */
async function fileToPick(name: string) {
  const root = await navigator.storage.getDirectory();
  const folder = await root.getDirectoryHandle('picked', { create: true });
  const handle = await folder.getFileHandle(name, { create: true });
  const textIn = async () => (await handle.getFile()).text();
  return { remove: () => root.removeEntry('picked', { recursive: true }), handle, textIn };
}

test('with a picker the same file is written again without asking, also after the page was left', async () => {
  const { remove, handle, textIn } = await fileToPick('mine.drill.json');
  let asked = 0;
  scope.showSaveFilePicker = async () => {
    asked += 1;
    return handle;
  };
  const { share } = await shareOf();
  await press(share, 'Save as a file');
  await vi.waitFor(() => expect(said(share)).toBe('Saved to mine.drill.json.'));
  expect(await textIn()).toBe(formatProgram(program));
  share.remove();

  const { share: later } = await shareOf('Else.');
  await vi.waitFor(() => expect(later.renderRoot.textContent).toContain('Save again to mine.drill.json'));
  await press(later, 'Save again to mine.drill.json');
  await vi.waitFor(() => expect(said(later)).toBe('Saved to mine.drill.json.'));
  expect([asked, await textIn()]).toEqual([1, formatProgram({ ...program, about: 'Else.' })]);

  // another program does not get this file
  later.program = builtInPrograms[1]!;
  await later.updateComplete;
  expect(later.renderRoot.textContent).not.toContain('Save again');

  // a file that is gone is reported and forgotten
  later.program = program;
  await vi.waitFor(() => expect(later.renderRoot.textContent).toContain('Save again'));
  await remove();
  await press(later, 'Save again');
  await vi.waitFor(() => expect(said(later)).toBe('mine.drill.json could not be written. Save to another file.'));
  expect(later.renderRoot.textContent).not.toContain('Save again');
});

test('an archer who does not allow the writing hears so, and may allow it later', async () => {
  let answer = 'denied';
  const written: string[] = [];
  scope.showSaveFilePicker = async () => ({
    name: 'mine.drill.json',
    requestPermission: async () => answer,
    createWritable: async () => ({ write: async (text: string) => void written.push(text), close: async () => {} }),
  });
  const { share } = await shareOf('Once more.');
  share.program = { ...program, id: undefined, title: 'Attic' };
  await share.updateComplete;
  await press(share, 'Save as a file');
  expect([said(share), written]).toEqual(['mine.drill.json could not be written. Save to another file.', []]);
  answer = 'granted';
  await press(share, 'Save as a file');
  expect([said(share), written.length]).toEqual(['Saved to mine.drill.json.', 1]);
});

test('an archer who chooses no file has saved nothing, and hears nothing', async () => {
  scope.showSaveFilePicker = async () => {
    throw new DOMException('', 'AbortError');
  };
  const { share, saved } = await shareOf('Else.');
  await press(share, 'Save as a file');
  expect([saved, said(share)]).toEqual([[], '']);
});

test('the system is given the file where it takes files, else the link', async () => {
  const given: ShareData[] = [];
  Object.defineProperty(navigator, 'share', { configurable: true, value: async (what: ShareData) => given.push(what) });
  Object.defineProperty(navigator, 'canShare', { configurable: true, value: () => true });
  const { share } = await shareOf();
  await press(share, 'Send');
  expect(await given[0]?.files?.[0]?.text()).toBe(formatProgram(program));
  Object.defineProperty(navigator, 'canShare', { configurable: true, value: () => false });
  await press(share, 'Send');
  expect(given[1]?.url).toMatch(/^https:\/\/example\.org\/app\/#\/open\//);
});

test('the link holds the program; a long one has no QR code and says so', async () => {
  const { share } = await shareOf();
  const link = share.renderRoot.querySelector('input')!.value;
  expect(parsePayload(payloadIn(link)!)).toEqual({ ok: true, program });
  expect(share.renderRoot.querySelector('svg')?.getAttribute('role')).toBe('img');
  expect((await axe.run(share)).violations.map(({ id }) => id)).toEqual([]);
  let seed = 1;
  const noise = Array.from({ length: 1900 }, () => {
    seed = (seed * 48_271) % 2_147_483_647; // no pattern that deflate could fold
    return String.fromCharCode(35 + (seed % 57));
  }).join('');
  const long = await shareOf(noise);
  expect(long.share.renderRoot.querySelector('svg')).toBeNull();
  expect(long.share.renderRoot.textContent).toContain('too long for a QR code');
});

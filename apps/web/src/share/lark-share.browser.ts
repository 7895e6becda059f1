import { builtInPrograms, formatProgram } from '@larkhold/engine';
import axe from 'axe-core';
import { afterEach, expect, test } from 'vitest';
import type { App } from '../app-context.ts';
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
  document.body.replaceChildren();
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

test('with a picker the same file is written again without asking', async () => {
  const written: string[] = [];
  let asked = 0;
  scope.showSaveFilePicker = async () => {
    asked += 1;
    const createWritable = async () => ({
      write: async (text: string) => void written.push(text),
      close: async () => {},
    });
    return { name: 'mine.drill.json', createWritable };
  };
  const { share } = await shareOf();
  await press(share, 'Save as a file');
  expect(said(share)).toBe('Saved to mine.drill.json.');
  await press(share, 'Save again to mine.drill.json');
  expect([asked, written]).toEqual([1, [formatProgram(program), formatProgram(program)]]);
});

test('an archer who chooses no file has saved nothing, and is told nothing', async () => {
  scope.showSaveFilePicker = async () => {
    throw new DOMException('', 'AbortError');
  };
  const { share, saved } = await shareOf('Else.');
  await press(share, 'Save to another');
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

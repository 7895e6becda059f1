// Every way a program comes into the rack: picked, dropped, pasted, or opened by the system.
import { builtInPrograms, formatProgram, type Program } from '@larkhold/engine';
import { beforeEach, expect, test } from 'vitest';
import type { LarkApp } from '../lark-app.ts';
import type { AppState } from '../shell/app-state.ts';
import { openTrialApp } from '../shell/trial-app.ts';
import { formatLink } from './share/program-link.ts';

const stranger: Program = { ...builtInPrograms[0]!, id: undefined, title: 'Attic mornings' };
const text = formatProgram(stranger);
const file = (body: BlobPart = text) => new File([body], 'attic.drill.json');

let state: AppState;
let page: LarkApp;

beforeEach(async () => {
  ({ state, page } = await openTrialApp('#/rack'));
  await expect.poll(() => rack()?.querySelector('h1')).toBeTruthy();
});

const rack = () => page.shadowRoot?.querySelector('lark-rack')?.shadowRoot;
const answer = () => rack()?.querySelector('lark-file-answer')?.shadowRoot;
const opened = () => state.app?.view.openedIds.size;
const said = () => rack()?.querySelector('.said')?.textContent;
const titles = () => state.app?.view.programs.map(({ title }) => title).filter((title) => /Attic/.test(title));

function transferOf(...parts: (File | string)[]): DataTransfer {
  const transfer = new DataTransfer();
  for (const part of parts) {
    if (typeof part === 'string') transfer.setData('text/plain', part);
    else transfer.items.add(part);
  }
  return transfer;
}
const drop = (...parts: (File | string)[]) =>
  rack()
    ?.querySelector('.drop')
    ?.dispatchEvent(
      new DragEvent('drop', { dataTransfer: transferOf(...parts), cancelable: true, bubbles: true, composed: true }),
    );
const paste = (on: EventTarget, ...parts: (File | string)[]) =>
  on.dispatchEvent(new ClipboardEvent('paste', { clipboardData: transferOf(...parts), bubbles: true, composed: true }));

async function press(words: string) {
  await expect.poll(() => answer()?.querySelector('dialog')?.open).toBe(true);
  [...(answer()?.querySelectorAll('button') ?? [])].find((one) => one.textContent?.trim() === words)?.click();
}

test('picked: several files, and the same one again asks', async () => {
  const input = rack()?.querySelector<HTMLInputElement>('input[type=file]');
  const pick = (...files: File[]) => {
    if (!input) throw new TypeError('the rack has no file field');
    input.files = transferOf(...files).files;
    input.dispatchEvent(new Event('change'));
  };
  pick(file(), file(formatProgram({ ...stranger, title: 'Attic evenings' })));
  await expect.poll(titles).toEqual(['Attic mornings', 'Attic evenings']);
  pick(file(), file('{'));
  await press('Leave it');
  await press('Close');
  await expect.poll(answer).toBeUndefined();
  pick(file());
  await press('Keep both');
  await expect.poll(titles).toEqual(['Attic mornings', 'Attic evenings', 'Attic mornings (2)']);
  pick(file(formatProgram({ ...stranger, about: 'Slower.' })));
  await press('Replace');
  await expect.poll(said).toBe('Replaced: Attic mornings.');
  expect(titles()).toEqual(['Attic mornings', 'Attic evenings', 'Attic mornings (2)']);
  expect(state.app?.view.programs.find(({ title }) => title === 'Attic mornings')?.about).toBe('Slower.');
});

test('dropped: a file, a text, a link', async () => {
  drop(file());
  await expect.poll(opened).toBe(1);
  drop(formatProgram({ ...stranger, title: 'Attic evenings' }));
  await expect.poll(opened).toBe(2);
  drop(formatLink('https://example.org/', stranger));
  await expect.poll(() => page.shadowRoot?.querySelector('lark-open-link')).toBeTruthy();
  expect(opened()).toBe(2);
});

test('dropped anywhere on the page: neither shown by the browser nor lost', async () => {
  const over = new DragEvent('dragover', { cancelable: true, dataTransfer: transferOf(file()) });
  window.dispatchEvent(over);
  expect(over.defaultPrevented).toBe(true); // else the browser goes to the file
  await expect.poll(() => rack()?.querySelector('.drop.over')).toBeTruthy();
  window.dispatchEvent(new DragEvent('drop', { cancelable: true, dataTransfer: transferOf(file()) }));
  await expect.poll(opened).toBe(1);
  expect(rack()?.querySelector('.drop.over')).toBeNull();
  expect(drop('bread, milk')).toBe(false);
  await expect.poll(said).toBe('That is neither a program nor a link to one.');
});

test('pasted: a file, a text; what is pasted into a field stays there', async () => {
  paste(window, file());
  await expect.poll(opened).toBe(1);
  paste(window, `\uFEFF\r\n${formatProgram({ ...stranger, title: 'Attic evenings' })}`);
  await expect.poll(opened).toBe(2);
  const field = document.createElement('input');
  document.body.append(field);
  paste(field, formatProgram({ ...stranger, title: 'Attic nights' }));
  paste(window, 'bread, milk');
  await expect.poll(said).toBe('That is neither a program nor a link to one.');
  expect(opened()).toBe(2);
  field.remove();
});

test('pasted: bytes of another encoding are reported, and half a character is not corrected silently', async () => {
  paste(window, file(new Uint8Array([0xff, 0xfe, 0x7b, 0])));
  await expect.poll(() => answer()?.textContent).toContain('UTF-16');
  await press('Close');
  await expect.poll(answer).toBeUndefined();
  paste(window, text.replace('Attic', '\ud800'));
  await expect.poll(() => answer()?.textContent).toContain('lone surrogate');
  await press('Close');
  await expect.poll(answer).toBeUndefined();
  expect(opened()).toBe(0);
});

test('opened by the system: from any place, and once only', async () => {
  location.hash = '#/kit';
  await expect.poll(() => page.shadowRoot?.querySelector('lark-kit')).toBeTruthy();
  page.incoming = [file()];
  await expect.poll(opened).toBe(1);
  expect(location.hash).toBe('#/rack');
  location.hash = '#/kit';
  await expect.poll(() => page.shadowRoot?.querySelector('lark-kit')).toBeTruthy();
  location.hash = '#/rack';
  await expect.poll(() => rack()?.querySelector('.programs')).toBeTruthy();
  page.incoming = [file('{')]; // the next file is answered; no earlier one is in its way
  await expect.poll(() => answer()?.textContent).toContain('not JSON');
});

test('opened by the system in the middle of a drill: the drill goes on, and the file waits', async () => {
  location.hash = '#/line';
  await expect.poll(() => page.shadowRoot?.querySelector('lark-line')).toBeTruthy();
  state.app?.act.setDrilling(true);
  page.incoming = [file()];
  await page.updateComplete;
  expect(location.hash).toBe('#/line');
  state.app?.act.setDrilling(false);
  const link = () => page.shadowRoot?.querySelector<HTMLAnchorElement>('.banner a');
  await expect.poll(link).toBeTruthy();
  expect(opened()).toBe(0);
  link()?.click();
  await expect.poll(opened).toBe(1);
  await expect.poll(link).toBeNull();
});

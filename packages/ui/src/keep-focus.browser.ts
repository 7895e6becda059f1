import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepFocus } from './keep-focus.ts';

let app: HTMLElement;
let rows: ShadowRoot;
let end: () => void;
const fallback = vi.fn();

beforeEach(() => {
  app = document.createElement('div');
  const page = document.createElement('div');
  app.attachShadow({ mode: 'open' }).append(page);
  rows = page.attachShadow({ mode: 'open' });
  for (const name of ['one', 'two', 'three']) {
    const button = document.createElement('button');
    button.textContent = name;
    rows.append(button);
  }
  document.body.append(app);
  fallback.mockClear();
  end = keepFocus(app, fallback);
});

afterEach(() => {
  end();
  app.remove();
});

const button = (name: string) => [...rows.querySelectorAll('button')].find((one) => one.textContent === name)!;
const focused = () => rows.activeElement?.textContent;

async function press(name: string, does: () => void) {
  button(name).addEventListener('click', does, { once: true });
  button(name).focus();
  button(name).click();
}

test('a row that takes itself away gives the focus to the next, the last to the one before', async () => {
  await press('two', () => button('two').remove());
  await expect.poll(focused).toBe('three');
  await press('three', () => button('three').remove());
  await expect.poll(focused).toBe('one');
});

test('a button that becomes another, or is switched off, later than the press', async () => {
  await press('two', () => {
    const other = document.createElement('button');
    other.textContent = 'other';
    setTimeout(() => button('two').replaceWith(other), 80);
  });
  await expect.poll(focused).toBe('other');
  await press('other', () => {
    button('other').disabled = true;
  });
  await expect.poll(focused).toBe('three');
});

test('a button that becomes another only after many seconds, as on a slow phone', async () => {
  const now = performance.now.bind(performance);
  let passedMs = 0;
  const clock = vi.spyOn(performance, 'now').mockImplementation(() => now() + passedMs);
  const other = document.createElement('button');
  other.textContent = 'other';
  await press('two', () => undefined);
  passedMs = 20_000;
  await new Promise((done) => setTimeout(done, 300));
  button('two').replaceWith(other);
  await expect.poll(focused).toBe('other');
  clock.mockRestore();
});

test('whoever has gone on by the tab key is not fetched back from past the last stop', async () => {
  await press('two', () => {
    button('two').remove();
    button('three').focus();
  });
  await new Promise((done) => setTimeout(done, 100));
  button('three').blur();
  await new Promise((done) => setTimeout(done, 100));
  expect(focused()).toBeUndefined();
});

test('a page that goes away as a whole leaves it to the app; what keeps or moves the focus itself is left alone', async () => {
  await press('one', () => button('three').focus());
  await new Promise((done) => setTimeout(done, 100));
  expect(focused()).toBe('three');
  await press('two', () => button('two').blur());
  await new Promise((done) => setTimeout(done, 100));
  expect(focused()).toBeUndefined();
  expect(fallback).not.toHaveBeenCalled();
  await press('one', () => rows.host.remove());
  await expect.poll(() => fallback.mock.calls.length).toBe(1);
});

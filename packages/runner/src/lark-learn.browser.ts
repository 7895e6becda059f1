import axe from 'axe-core';
import { expect, test } from 'vitest';
import './index.ts';

async function learnOf(codes: readonly string[] = []) {
  const learn = document.createElement('lark-learn');
  let pressSource: (code: string) => void = () => undefined;
  let tell: (message: string | undefined) => void = () => undefined;
  let isHeard = false;
  Object.assign(learn, {
    label: 'Let down now',
    codes,
    sources: [
      {
        listen(onPress: (code: string) => void, onTrouble: (message: string | undefined) => void) {
          pressSource = onPress;
          isHeard = true;
          tell = onTrouble;
          return () => {
            isHeard = false;
          };
        },
      },
    ],
  });
  document.body.append(learn);
  await learn.updateComplete;
  const learned: string[][] = [];
  learn.addEventListener('lark-learned', (event) => {
    if (event instanceof CustomEvent) learned.push(event.detail.codes);
  });
  const click = async (words: string) => {
    const found = [...learn.renderRoot.querySelectorAll('button')].find((one) => one.textContent?.includes(words));
    found!.click();
    await learn.updateComplete;
  };
  const status = async () => {
    await learn.updateComplete;
    return learn.renderRoot.querySelector('[role=status]')?.textContent?.trim();
  };
  return {
    learn,
    learned,
    click,
    status,
    pressSource: (code: string) => pressSource(code),
    tell: (message?: string) => tell(message),
    isHeard: () => isHeard,
  };
}

function press(code: string, more: KeyboardEventInit = {}) {
  const event = new KeyboardEvent('keydown', { code, cancelable: true, bubbles: true, ...more });
  window.dispatchEvent(event);
  return event;
}

test('it learns keys and presses, shows what it heard, and learns nothing before or after', async () => {
  const { learned, click, status, pressSource, isHeard } = await learnOf();
  press('KeyA');
  expect(learned).toEqual([]);
  await click('Learn');
  expect(await status()).toBe('Press the key or pedal now. Escape ends this.');
  expect(press('PageDown').defaultPrevented).toBe(true);
  expect(await status()).toBe('Heard: Page down.');
  press('PageDown');
  pressSource('Gamepad:1');
  expect(await status()).toBe('Heard: Gamepad button 2.');
  expect(learned).toEqual([['PageDown'], ['PageDown', 'Gamepad:1']]);
  await click('Done');
  expect(isHeard()).toBe(false);
  press('KeyB');
  expect(learned).toHaveLength(2);
});

test('keys that a page needs for itself are not learned', async () => {
  const { learned, click } = await learnOf();
  await click('Learn');
  for (const code of ['Tab', 'Escape', 'ShiftLeft']) expect(press(code).defaultPrevented).toBe(false);
  expect(learned).toEqual([]);
});

test('it tries presses without learning them, and counts what comes again', async () => {
  const { learned, click, status, pressSource, isHeard } = await learnOf(['Clap']);
  await click('Learn');
  await click('Try');
  pressSource('Clap');
  expect(await status()).toBe('Heard: Clap. Set for this.');
  // An echo within 300 ms is the same clap: the product's own rule.
  pressSource('Clap');
  expect(await status()).toBe('Heard: Clap. Set for this.');
  await new Promise((resolve) => setTimeout(resolve, 310));
  pressSource('Clap');
  expect(await status()).toBe('Heard: Clap, 2\u00a0times. Set for this.');
  press('KeyA');
  expect(await status()).toBe('Heard: Key A. Not set for this.');
  expect(learned).toEqual([]);
  await click('Done');
  expect(isHeard()).toBe(false);
});

test('a refused microphone is reported where the archer tries it', async () => {
  const { click, status, tell } = await learnOf(['Clap']);
  await click('Learn');
  await click('Try');
  tell('The microphone is not allowed.');
  expect(await status()).toBe('The microphone is not allowed.');
});

test('what was learned can be removed', async () => {
  const { learn, learned, click } = await learnOf(['Space', 'Clap']);
  // One line and one button until it is opened.
  expect(learn.renderRoot.querySelectorAll('button')).toHaveLength(1);
  expect(learn.renderRoot.querySelector('.set-now')?.textContent).toBe('Space bar, Clap');
  await click('Learn');
  await click('Done');
  await click('Clap');
  expect(learned).toEqual([['Space']]);
});

test.each(['dark', 'light', 'contrast'] as const)('axe finds nothing, theme %s', async (theme) => {
  const { learn, click } = await learnOf(['Space']);
  learn.theme = theme;
  await click('Learn');
  expect((await axe.run(learn, { resultTypes: ['violations'] })).violations).toEqual([]);
});

test('a keyboard alone can end it: Escape does, and is learned by nothing', async () => {
  const { learned, click, status, learn, isHeard } = await learnOf();
  await click('Learn');
  press('Escape');
  expect(await status()).toBe('');
  expect(isHeard()).toBe(false);
  expect(learned).toEqual([]);
  expect([...learn.renderRoot.querySelectorAll('button')].map(({ ariaPressed }) => ariaPressed)).toEqual([
    'false',
    'false',
  ]);
});

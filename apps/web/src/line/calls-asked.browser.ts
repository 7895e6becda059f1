import { builtInPrograms, type Program } from '@larkhold/engine';
import { beforeEach, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { openTrialApp, type TrialApp, textOf } from '../shell/trial-app.ts';

const id = '3f1c5a52-1f0a-4c8e-9a31-0d2b6a7e7001';
const withCalls = (calls: string[]): Program => ({
  ...builtInPrograms[0]!,
  ...{ id, title: 'From a coach', blocks: [{ ...builtInPrograms[0]!.blocks[0]!, calls }] },
});
let trial: TrialApp;

const line = () => trial.page.shadowRoot?.querySelector('lark-line')?.shadowRoot;
const asked = () => line()?.querySelector('calls-asked')?.shadowRoot;
const question = () => asked()?.querySelector('section[aria-labelledby=asked]');
const button = (words: string) => [...(asked()?.querySelectorAll('button') ?? [])].find((one) => textOf(one) === words);
/** What the drill that begins now would be allowed to say. */
async function allowedInDrill(): Promise<readonly string[] | undefined> {
  line()?.querySelector<HTMLButtonElement>('.begin')?.click();
  await expect.poll(() => line()?.querySelector('lark-drill')).toBeTruthy();
  return line()?.querySelector('lark-drill')?.settings.allowedCalls;
}

beforeEach(async () => {
  trial = await openTrialApp('#/line');
  await trial.state.app?.act.putProgram(withCalls(['Reach to the gold', 'Stay tall']));
  await trial.state.app?.act.chooseProgram(id);
  await expect.poll(() => textOf(line()?.querySelector('h1'))).toBe('From a coach');
});

test('a program’s lines are shown in full before its first drill, and until they are allowed none is said', async () => {
  await expect
    .poll(() => textOf(question()?.querySelector('h2')))
    .toBe('This program says these lines while you are at full draw');
  expect([...question()!.querySelectorAll('li')].map(textOf)).toEqual(['“Reach to the gold”', '“Stay tall”']);
  for (const theme of ['dark', 'light', 'contrast']) {
    document.documentElement.dataset.theme = theme;
    expect(await trial.faults()).toEqual([]);
  }
  expect(await allowedInDrill()).toEqual([]);
});

test('allowed by keyboard they are said, and are asked about again when the text changes', async () => {
  await expect.poll(() => button('Say them')).toBeTruthy();
  button('Say them')!.focus();
  await userEvent.keyboard('{Enter}');
  await expect.poll(question).toBeFalsy();
  expect(trial.state.app?.view.isDrilling).toBe(false);
  expect(textOf(asked())).toContain('Lines at full draw: 2 said, 0 not');
  expect(await trial.faults()).toEqual([]);
  await trial.state.app?.act.putProgram(withCalls(['Reach to the gold', 'Stay taller']));
  await expect.poll(() => [...(question()?.querySelectorAll('li') ?? [])].map(textOf)).toEqual(['“Stay taller”']);
  expect(await allowedInDrill()).not.toContain('Stay taller');
});

test('refused they stay unsaid and are not asked about again, unless the archer wishes', async () => {
  await expect.poll(() => button('Don’t say them')).toBeTruthy();
  button('Don’t say them')!.click();
  await expect.poll(() => textOf(asked()?.querySelector('summary'))).toBe('Lines at full draw: 0 said, 2 not');
  expect(question()).toBeNull();
  button('Ask me again')!.click();
  await expect.poll(question).toBeTruthy();
});

test('an order to shoot can’t be allowed, and the archer reads why', async () => {
  await trial.state.app?.act.putProgram(withCalls(['Let go now', 'Stay t\u200ball', 'Shоulders']));
  await expect.poll(() => asked()?.querySelectorAll('li').length).toBe(3);
  expect(question()).toBeNull();
  expect(textOf(asked())).toContain('“Let go now” Not spoken: “let go” can be heard as an order to let the string go.');
  expect(textOf(asked())).toContain('Not spoken: it holds characters that nobody can see.');
  expect(textOf(asked())).toContain('mixes letters of two alphabets');
  expect(await trial.faults()).toEqual([]);
});

test('one program’s leave is not another’s, and the archer’s own steps are asked about too', async () => {
  await expect.poll(() => button('Say them')).toBeTruthy();
  button('Say them')!.click();
  await expect.poll(question).toBeFalsy();
  const other = '3f1c5a52-1f0a-4c8e-9a31-0d2b6a7e7002';
  const own = withCalls(['Stay tall']);
  await trial.state.app?.act.putProgram({ ...own, id: other, title: 'Another' });
  await trial.state.app?.act.chooseProgram(other);
  await expect.poll(() => [...(question()?.querySelectorAll('li') ?? [])].map(textOf)).toEqual(['“Stay tall”']);
  const steps = builtInPrograms.find(({ blocks }) => blocks[0]?.calls === 'shot-process')!;
  await trial.state.app?.act.changeKit({ shotProcess: ['Anchor', 'Look at the gold'] });
  await trial.state.app?.act.chooseProgram(steps.id!);
  await expect.poll(() => [...(question()?.querySelectorAll('li') ?? [])].map(textOf)).toEqual(['“Look at the gold”']);
});

import { builtInPrograms, createDemoJournal } from '@larkhold/engine';
import { loadWords, useWords } from '@larkhold/words';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { page as frame } from 'vitest/browser';
import '@larkhold/ui/tokens.css';
import { leaveTrial, openTrialApp, type TrialApp } from '../../shell/trial-app.ts';

let trial: TrialApp;
beforeEach(async () => {
  await frame.viewport(390, 844);
  trial = await openTrialApp('#/week');
});
afterEach(leaveTrial);

const week = () => trial.page.shadowRoot?.querySelector('week-page');
const inDay = (selector: string) => {
  const entry = week()?.renderRoot.querySelector('day-entry')?.renderRoot;
  return entry?.querySelector<HTMLElement>(selector);
};

test.each(['en-GB', 'de'])(
  'a week with today open is two screens of a phone at the most, and hides no caution, %s',
  async (language) => {
    useWords(await loadWords(language));
    const { days } = createDemoJournal({ endDay: '2026-11-25', programs: builtInPrograms });
    for (const day of days.slice(-7)) await trial.state.app?.act.putDay(day);
    await trial.state.app?.act.changeKit({ language: language === 'de' ? 'de' : 'en' });
    await expect.poll(() => inDay('range-check')?.getBoundingClientRect().height ?? 0).toBeGreaterThan(40);
    expect(document.documentElement.scrollHeight / innerHeight).toBeLessThanOrEqual(2);
    // Before shooting at home, and pain: in sight without opening anything.
    const rules = inDay('range-check')?.shadowRoot?.querySelector('summary');
    expect(rules?.checkVisibility()).toBe(true);
    expect(rules?.textContent).toMatch(/Local rules|Örtliche Regeln/);
    expect(inDay('.pain')?.checkVisibility()).toBe(true);
    inDay('.pain button:last-child')?.click();
    await expect.poll(() => inDay('.caution')?.textContent).toMatch(/physi/i);
  },
);

import { deflateRawSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { arrive, leaveAll } from './archer.ts';
import { takeProgram } from './drill-program.ts';
import { everyPage, goTo, unfold } from './every-page.ts';
import { putRows } from './stored-rows.ts';

afterAll(leaveAll);

/** Markup as a stranger's file would bring it; short enough for the tightest field. */
const markup = '<img src=x data-strange onerror=window.hit=1><b data-strange>x</b>';
const programId = '0b6c1d6e-5a43-4c1e-9a52-6f0f3c1f7a11';

const program = {
  ...{ format: 'larkhold/program', version: 1, id: programId, title: markup, author: markup, about: markup },
  ...{ source: markup, tool: 'band', warmUp: [markup], coolDown: [markup] },
  blocks: [
    {
      ...{ title: markup, drill: 'holding', sets: 1, reps: 2, draw: 0.5, hold: 2, letDown: 0.5, rest: { seconds: 1 } },
      ...{ calls: [markup], ladder: { rungs: [{ raise: 'hold', by: 1, until: 4 }] } },
    },
  ],
};

/** A journal with markup wherever it holds text. */
function strangeJournal(today: string, week: string): [string, string, unknown][] {
  const rep = { block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 2000, heldMs: 2000, outcome: 'held' };
  const at = `${today}T06:30:00.000Z`;
  const drill = {
    id: 'd1',
    program: markup,
    programId,
    date: today,
    startedAt: at,
    endedAt: at,
    reps: [rep],
    note: markup,
  };
  const texts = { goal: markup, focus: markup, wentRight: markup, needsWork: markup, carriedForward: markup };
  return [
    ['drills', 'd1', drill],
    ['days', today, { date: today, feelWords: markup, note: markup }],
    ['weeks', week, { week, ...texts, comment: markup }],
    ['notes', 'n1', { id: 'n1', madeAt: at, text: markup }],
    ['single', 'majorGoal', { text: markup, editedAt: at }],
    ['aside', 'x', { table: 'drills', key: markup, message: markup, value: markup }],
  ];
}

/** Text and strange elements of the page, through every shadow root. */
async function inspect(page: Page) {
  return page.evaluate(() => {
    let strange = 0;
    let text = '';
    const walk = (root: Document | ShadowRoot) => {
      for (const element of root.querySelectorAll('*')) {
        if (element.hasAttribute('data-strange')) strange += 1;
        if (element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement) text += element.value;
        if (element.shadowRoot) walk(element.shadowRoot);
      }
      text += root instanceof Document ? root.body.textContent : root.textContent;
    };
    walk(document);
    return { strange, shown: text.split('<img src=x data-strange').length - 1, hit: 'hit' in window };
  });
}

describe('what comes from strangers', () => {
  it('is shown as text on every page, never as markup', async () => {
    const { page, faults, leave } = await arrive('#/rack');
    await takeProgram(page, JSON.stringify(program), markup);
    const { today, week } = await page.evaluate(() => {
      const day = new Date();
      const thursday = new Date(Date.UTC(day.getFullYear(), day.getMonth(), day.getDate()));
      const local = new Date(thursday).toISOString().slice(0, 10);
      thursday.setUTCDate(thursday.getUTCDate() + 4 - (thursday.getUTCDay() || 7));
      const first = Date.UTC(thursday.getUTCFullYear(), 0, 1);
      const count = Math.ceil(((thursday.getTime() - first) / 86_400_000 + 1) / 7);
      return { today: local, week: `${thursday.getUTCFullYear()}-W${String(count).padStart(2, '0')}` };
    });
    await putRows(page, strangeJournal(today, week));
    await page.reload();
    const shownOn: string[] = [];
    for (const hash of everyPage) {
      await goTo(page, hash, { id: programId, drill: 'd1' });
      await unfold(page);
      const { strange, shown, hit } = await inspect(page);
      expect({ hash, strange, hit }).toEqual({ hash, strange: 0, hit: false });
      if (shown > 0) shownOn.push(hash);
    }
    // Pages that show a program or a diary do show the text, so the check above has seen it.
    expect(shownOn).toEqual(
      expect.arrayContaining(['#/line', '#/rack', '#/rack/{id}', '#/journal', '#/week', '#/bench/{id}']),
    );

    const link = deflateRawSync(JSON.stringify({ ...program, id: undefined })).toString('base64url');
    await goTo(page, `#/open/${link}`, { id: '', drill: '' });
    await page.getByText('<img src=x data-strange').first().waitFor();
    expect(await inspect(page)).toMatchObject({ strange: 0, hit: false });

    await goTo(page, '#/line', { id: '', drill: '' });
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.locator('lark-glance').waitFor();
    expect(await inspect(page)).toMatchObject({ strange: 0, hit: false });
    await page.getByText('How was it?').waitFor();
    expect(await inspect(page)).toMatchObject({ strange: 0, hit: false });
    expect(faults).toEqual([]);
    await leave();
  });

  it('meets a policy that lets nothing foreign run, in the header and in the page', async () => {
    const answer = await fetch(inject('address'));
    const header = answer.headers.get('content-security-policy') ?? '';
    const page = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(await answer.text())?.[1] ?? '';
    for (const policy of [header, page.replaceAll('&#39;', "'")]) {
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("script-src 'self'");
      expect(policy).toContain("require-trusted-types-for 'script'");
      expect(policy).not.toMatch(/unsafe|\*|https?:/);
    }
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
    expect(answer.headers.get('referrer-policy')).toBe('no-referrer');
    expect(answer.headers.get('cross-origin-opener-policy')).toBe('same-origin');
    expect(answer.headers.get('cross-origin-resource-policy')).toBe('same-origin');
    expect(header).toContain("frame-ancestors 'none'");
  });

  it('can make no script and no markup, not even with the means of the page itself', async () => {
    const { page, faults, leave } = await arrive('#/line');
    const tried = await page.evaluate(async () => {
      const errorOf = (work: () => unknown) => {
        try {
          work();
          return 'done';
        } catch (error) {
          return error instanceof Error ? error.name : 'thrown';
        }
      };
      const inline = document.createElement('p');
      return {
        markup: errorOf(() => {
          inline.innerHTML = '<img src=x onerror=alert(1)>';
        }),
        script: errorOf(() => {
          document.createElement('script').textContent = 'window.hit = 1';
        }),
        foreignWorker: errorOf(() => new Worker('https://elsewhere.example/worker.js')),
        foreignFetch: await fetch('https://elsewhere.example/').then(
          () => 'done',
          (error: Error) => error.name,
        ),
      };
    });
    expect(tried).toEqual({
      markup: 'TypeError',
      script: 'TypeError',
      foreignWorker: 'TypeError',
      foreignFetch: 'TypeError',
    });
    // Every other journey ends without a fault: this is what one would have looked like.
    await expect.poll(() => faults.filter((fault) => /Content Security Policy/.test(fault)).length).toBeGreaterThan(2);
    await leave();
  });
});

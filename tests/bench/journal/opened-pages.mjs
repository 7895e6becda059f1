// How long the pages take in a real Chromium, from the press to what is asked for being painted.

/** Runs in the page before anything else: finds elements through shadow roots, and tells when one is painted. */
function prepare() {
  const through = (path) => {
    let roots = [document];
    for (const step of path) {
      roots = roots.flatMap((root) => [...root.querySelectorAll(step)].map((one) => one.shadowRoot ?? one));
    }
    return roots;
  };
  const painted = (path, count) =>
    new Promise((resolve) => {
      const look = () => {
        // The frame that follows this one's callbacks is the one that shows it.
        if (through(path).length >= count) requestAnimationFrame(() => setTimeout(() => resolve(performance.now())));
        else requestAnimationFrame(look);
      };
      look();
    });
  globalThis.benchPainted = painted;
  globalThis.benchPress = async (press, path, count) => {
    const startMs = performance.now();
    through(press.path)[press.nth ?? 0].click();
    return (await painted(path, count)) - startMs;
  };
  globalThis.benchGo = async (hash, path, count) => {
    const startMs = performance.now();
    location.hash = hash;
    return (await painted(path, count)) - startMs;
  };
  // Files are counted from when the picker gave them.
  addEventListener('files-take', () => {
    globalThis.benchTakenMs = performance.now();
  });
}

const week = [['lark-app', 'week-page', '[aria-labelledby=totals] tbody tr'], 5];
const trends = [['lark-app', 'trends-page', 'trend-chart', 'canvas'], 8];
const squadTable = [['lark-app', 'coach-page', 'tbody tr'], 30];
const journalPage = [['lark-app', 'lark-journal', 'month-drills', 'lark-drill-entry'], 30];
const fileIn = ['lark-app', 'week-page', 'journal-exchange', 'file-in'];
const linePage = [['lark-app', 'lark-line'], 1];

const go = (page, hash, [path, count]) =>
  page.evaluate(([to, at, many]) => globalThis.benchGo(to, at, many), [hash, path, count]);
const painted = (page, [path, count]) =>
  page.evaluate(([at, many]) => globalThis.benchPainted(at, many), [path, count]);
const give = (page, words, paths) => page.locator(`input[type=file][aria-label="${words}"]`).setInputFiles(paths);
const sinceTaken = async (page, what) =>
  (await painted(page, what)) - (await page.evaluate(() => globalThis.benchTakenMs));

/**
 * Measures the pages over a journal of ten years.
 * @param browser a running one
 * @param address where the built app is served
 * @param files paths of both journals and of the squad's hand-overs
 * @param runs how often each is measured
 * @returns a list of { name, aimMs, tookMs, cpuMs }; the last two are lists of milliseconds
 */
export async function measurePages(browser, address, { phone, tablet, squad }, runs) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: 'en-GB' });
  await context.addInitScript(prepare);
  const page = await context.newPage();
  const results = [];
  const cdp = await context.newCDPSession(page);
  // The page's own thread.
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  const cpu = async () => {
    const { metrics } = await cdp.send('Performance.getMetrics');
    return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0);
  };
  const measure = async (name, aimMs, once, { before, isLoaded = false } = {}) => {
    const [tookMs, cpuMs] = [[], []];
    for (let run = 0; run < runs; run += 1) {
      await before?.(run);
      const startMs = await cpu();
      tookMs.push(await once());
      const endMs = await cpu();
      cpuMs.push(endMs - startMs);
    }
    // A page that is loaded again counts from nothing again.
    if (isLoaded) cpuMs.length = 0;
    results.push({ name, aimMs, tookMs, cpuMs });
  };
  const shown = [[...fileIn, '.notice button.main'], 1];
  const said = [[...fileIn, '.notice:not(:has(h3)) > p'], 1];
  const press = (button, what) =>
    page.evaluate(([path, [at, many]]) => globalThis.benchPress({ path }, at, many), [button, what]);
  const offer = async (path) => {
    await go(page, '#/week', week);
    await give(page, 'Open a backup, journal or answer', [path]);
    return sinceTaken(page, shown);
  };

  await page.goto(`${address}#/week`);
  await painted(page, week);
  await offer(phone);
  await press(shown[0], said);

  const load = async (hash, what) => {
    await page.goto('about:blank');
    await page.goto(`${address}${hash}`);
    return painted(page, what);
  };
  await measure('open the app on the line, from nothing', undefined, () => load('#/line', linePage), {
    isLoaded: true,
  });
  await measure('open the app on the week, from nothing', undefined, () => load('#/week', week), { isLoaded: true });
  await measure('open the app on the trends, from nothing', undefined, () => load('#/trends', trends), {
    isLoaded: true,
  });
  await load('#/journal', journalPage);
  // Once unmeasured: the page's code is fetched when it is first opened.
  const fromJournal = async (hash, what) => {
    await go(page, '#/journal', journalPage);
    return go(page, hash, what);
  };
  await measure('open the week page', 100, () => fromJournal('#/week', week));
  await measure('open the trends, twelve weeks', 300, () => fromJournal('#/trends', trends));
  await measure('the trends, everything', 300, async () => {
    await fromJournal('#/trends', trends);
    await page.evaluate(() => {
      globalThis.benchFirst = document
        .querySelector('lark-app')
        .shadowRoot.querySelector('trends-page')
        .shadowRoot.querySelector('trend-chart')
        .shadowRoot.querySelector('canvas');
    });
    return page.evaluate(async () => {
      const startMs = performance.now();
      const root = document.querySelector('lark-app').shadowRoot.querySelector('trends-page').shadowRoot;
      [...root.querySelectorAll('.row button')].at(-1).click();
      await new Promise((resolve) => {
        const look = () => (globalThis.benchFirst.isConnected ? requestAnimationFrame(look) : resolve());
        look();
      });
      return (await globalThis.benchPainted(['lark-app', 'trends-page', 'trend-chart', 'canvas'], 8)) - startMs;
    });
  });
  await measure('open the journal', undefined, async () => {
    await go(page, '#/line', linePage);
    return go(page, '#/journal', journalPage);
  });

  await measure('open 30 hand-overs of two years, to the table', 2000, async () => {
    await go(page, '#/journal', journalPage);
    await go(page, '#/coach', [['lark-app', 'coach-page', 'file-drop'], 1]);
    await give(page, 'Open hand-overs', squad);
    return sinceTaken(page, squadTable);
  });

  await measure('read another ten years, and show what is new', undefined, () => offer(tablet));
  const undo = async (run) => {
    if (run === 0) return;
    await press([...fileIn, '.notice:not(:has(h3)) button'], [[...fileIn, '.notice:not(:has(button)) > p'], 1]);
    await offer(tablet);
  };
  await measure('merge them and write them down', 1000, () => press(shown[0], said), { before: undo });
  await context.close();
  return results;
}

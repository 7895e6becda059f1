// Every screen at six sizes, in both themes and, in a drill, straight and flipped; in German, in high contrast, in colours that the system forces, and
// with text at 200 %: sheets to be looked at one by one, and each page's length in screens. `npm run pictures:grid -- FOLDER [PART]`; run `npm run build` first. Nothing of it is kept in the repository.
import { mkdirSync, writeFileSync } from 'node:fs';
import { openStudio } from './studio.mjs';

const phones = [
  [360, 640, 0.8],
  [390, 844, 0.8],
  [844, 390, 0.7],
];
const wides = [
  [820, 1180, 0.42],
  [1180, 820, 0.42],
  [1440, 900, 0.42],
];
const sizes = [...phones, ...wides];
const schemes = ['dark', 'light'];
const [, , folder, part] = process.argv;
if (!folder) throw new Error('expected a folder for the sheets: npm run pictures:grid -- FOLDER');
mkdirSync(folder, { recursive: true });

const pages = {
  line: '#/line',
  week: '#/week',
  journal: '#/journal',
  trends: '#/trends',
  coach: '#/coach',
  milestones: '#/milestones',
  rack: '#/rack',
  bench: '#/bench/new',
  season: '#/season',
  plan: '#/plan',
  kit: '#/kit',
  bow: '#/kit/bow',
  process: '#/kit/shot-process',
  sound: '#/kit/sound',
  display: '#/kit/display',
  controls: '#/kit/controls',
  camera: '#/kit/camera',
  backup: '#/kit/backup',
  stored: '#/kit/stored',
  safety: '#/kit/safety',
  known: '#/known',
  files: '#/files',
  box: '#/box',
  restore: '#/restore',
};
const studio = await openStudio();

/** All sizes of what is on the screen, as two sheets a name: phones, and what is wider; each size in both themes side by side. */
async function sheetOf(name, sitting, looks = [{}], [someSchemes, someSizes] = [schemes, sizes]) {
  const shots = [];
  for (const changes of looks) {
    if (Object.keys(changes).length > 0) await sitting.changeKit(changes);
    for (const [width, height, scale] of someSizes)
      for (const scheme of someSchemes) {
        await sitting.look({ width, height, scheme });
        shots.push({
          isWide: width > 844 || height > 844,
          width: width * scale,
          data: (await sitting.shoot()).toString('base64'),
        });
      }
  }
  for (const isWide of [false, true]) {
    const some = shots.filter((shot) => shot.isWide === isWide);
    if (some.length > 0) await writeSheet(isWide ? `${name}-wide` : name, some);
  }
}

async function writeSheet(name, shots) {
  const sheet = await studio.browser.newPage({ viewport: { width: 1256, height: 400 } });
  await sheet.setContent(
    `<body style="margin:8px;display:flex;flex-wrap:wrap;gap:6px;background:#888;align-items:flex-start">${shots
      .map(({ width, data }) => `<img width="${Math.round(width)}" src="data:image/png;base64,${data}">`)
      .join('')}</body>`,
  );
  await sheet.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
  await sheet.close();
}

/** How many screens of a phone a page is long. */
async function lengthOf(sitting) {
  await sitting.look({ width: 390, height: 844 });
  return sitting.page.evaluate(() => (document.documentElement.scrollHeight / innerHeight).toFixed(2));
}

// What follows runs in the page, and changes journal, kit and rack of the app there.
function lastDrillAgain(date) {
  const { app } = document.querySelector('lark-app');
  const last = app.view.journal.drills.reduce((a, b) => (a.date < b.date ? b : a));
  const times = { startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:20:00Z` };
  return app.act.putDrill({ ...last, id: crypto.randomUUID(), date, ...times });
}
function hurtsOn(date) {
  const { act } = document.querySelector('lark-app').app;
  return act.putDay({ date, pain: true, editedAt: act.instant() });
}
function isOfAge(ageBand) {
  return document.querySelector('lark-app').app.act.changeKit({ ageBand, drawWeightLbf: 24 });
}
function takesTest() {
  const { view, act } = document.querySelector('lark-app').app;
  const test = view.programs.find(({ kind }) => kind === 'test');
  return act.chooseProgram(test.id ?? test.title);
}
function removesLast() {
  const { app } = document.querySelector('lark-app');
  return app.act.removeDrills([app.view.journal.drills.reduce((a, b) => (a.date < b.date ? b : a)).id]);
}
function seesOtherwise(date) {
  const { app } = document.querySelector('lark-app');
  const last = app.view.journal.drills.reduce((a, b) => (a.date < b.date ? b : a));
  const times = { startedAt: `${date}T06:00:00Z`, endedAt: `${date}T06:20:00Z` };
  const [full, ...others] = last.reps;
  const { prescribedMs } = full;
  const late = { ...full, heldMs: prescribedMs, outcome: 'held', seen: { fromMs: 3000, toMs: prescribedMs + 200 } };
  const short = { ...full, heldMs: 40_000, outcome: 'short', why: 'form', seen: { fromMs: 0, toMs: 33_000 } };
  const unsure = { ...full, outcome: 'unsure' };
  return app.act.putDrill({
    ...last,
    id: 'apart',
    date,
    ...times,
    reps: [full, late, short, unsure, ...others.slice(3)],
  });
}

const parts = {
  async lengths() {
    const lines = [];
    const [english, german] = [
      await studio.sitting({ hasDemo: true }),
      await studio.sitting({ hasDemo: true, locale: 'de-DE' }),
    ];
    for (const [name, hash] of Object.entries(pages)) {
      const both = [];
      for (const sitting of [english, german]) {
        await sitting.go(hash);
        both.push(await lengthOf(sitting));
      }
      lines.push(`${name}: ${both.join(', ')}`);
    }
    writeFileSync(`${folder}/lengths.txt`, `${lines.join('\n')}\n`);
    console.log(lines.join('\n'));
  },
  async whole() {
    for (const locale of ['en-GB', 'de-DE']) {
      const sitting = await studio.sitting({ hasDemo: true, locale });
      for (const [name, hash] of Object.entries(pages)) {
        await sitting.go(hash);
        await sitting.look({ width: 390, height: 844, scheme: 'light' });
        await sitting.page.screenshot({ path: `${folder}/whole-${locale.slice(0, 2)}-${name}.png`, fullPage: true });
      }
    }
  },
  async pages() {
    const sitting = await studio.sitting({ hasDemo: true });
    for (const [name, hash] of Object.entries(pages)) {
      await sitting.go(hash);
      await sheetOf(name, sitting);
    }
  },
  async german() {
    const sitting = await studio.sitting({ hasDemo: true, locale: 'de-DE' });
    for (const [name, hash] of Object.entries(pages)) {
      await sitting.go(hash);
      await sheetOf(`german-${name}`, sitting, [{}], [['light'], sizes]);
    }
  },
  async contrast() {
    const sitting = await studio.sitting({ hasDemo: true });
    await sitting.changeKit({ theme: 'contrast' });
    for (const [name, hash] of Object.entries(pages)) {
      await sitting.go(hash);
      await sheetOf(`contrast-${name}`, sitting, [{}], [['dark'], sizes]);
    }
  },
  /** Colours of the system's own choice: each page in a dark and in a light one. */
  async forced() {
    const sitting = await studio.sitting({ hasDemo: true });
    await sitting.page.emulateMedia({ forcedColors: 'active' });
    for (const [name, hash] of Object.entries(pages)) {
      await sitting.go(hash);
      await sheetOf(`forced-${name}`, sitting, [{}], [schemes, [sizes[1], sizes[5]]]);
    }
  },
  async large() {
    const sitting = await studio.sitting({ hasDemo: true, locale: 'de-DE' });
    for (const [name, hash] of Object.entries(pages)) {
      await sitting.go(hash);
      await sitting.page.evaluate(() => {
        document.documentElement.style.fontSize = '200%';
      });
      await sheetOf(`large-${name}`, sitting, [{}], [['light'], [[320, 640, 0.9], ...sizes.slice(0, 3)]]);
    }
  },
  async empty() {
    const sitting = await studio.sitting();
    for (const name of [
      'line',
      'journal',
      'coach',
      'trends',
      'rack',
      'week',
      'known',
      'milestones',
      'season',
      'files',
    ]) {
      await sitting.go(pages[name]);
      await sheetOf(`empty-${name}`, sitting);
    }
  },
  /** The printed week as a page of A4 shows it, and the page about it all. */
  async paper() {
    const sitting = await studio.sitting({ hasDemo: true });
    const { page } = sitting;
    await sitting.go('#/week');
    await page.setViewportSize({ width: 794, height: 1123 });
    await page.emulateMedia({ media: 'print', colorScheme: 'light' });
    await page.waitForTimeout(200);
    await writeSheet('paper', [{ width: 794, data: (await sitting.shoot()).toString('base64') }]);
  },
  async about() {
    const sitting = await studio.sitting();
    for (const [name, page] of [
      ['about', 'about.html'],
      ['about-german', 'about.de.html'],
    ]) {
      await sitting.page.goto(
        `${sitting.page
          .url()
          .split('#')[0]
          .replace(/[^/]*$/, '')}${page}`,
      );
      await sitting.settle();
      await sheetOf(name, sitting);
    }
    const { page } = sitting;
    await page.setViewportSize({ width: 390, height: 844 });
    await page.screenshot({ path: `${folder}/about-whole.png`, fullPage: true });
  },
  async drill() {
    const sitting = await studio.sitting();
    const looks = [{ viewing: { flipped: false } }, { viewing: { flipped: true } }];
    const { page } = sitting;
    await sitting.go('#/line');
    await sitting.begin();
    await sitting.settle();
    // No time passes from one picture to the next.
    const still = {
      ...sitting,
      async look({ width, height, scheme }) {
        await page.setViewportSize({ width, height });
        await page.emulateMedia({ colorScheme: scheme });
        await page.waitForTimeout(90);
      },
    };
    for (const kind of ['ready', 'draw', 'hold', 'letDown', 'rest']) {
      await sitting.passTo((view) => view.kind === kind);
      await sheetOf(`drill-${kind}`, still, looks);
      if (kind === 'rest') {
        await page.keyboard.press('KeyP');
        await sitting.pass(300);
        await sheetOf('drill-paused', still, looks);
        await page.keyboard.press('KeyP');
        await sitting.pass(4000);
      }
    }
    await sitting.passTo((view) => view.state === 'done');
    await sitting.pass(300);
    await sheetOf('closing', still, looks);
    await sitting.changeKit({ viewing: { flipped: false } });
    await page.locator('lark-after').click();
    await sitting.pass(1500);
    await sheetOf('after', sitting);
  },
  /** The line as it is on other days, what was removed, what went wrong, and where clock and camera are apart. */
  async states() {
    const shown = [['light'], sizes];
    const state = async (name, hash, change, given) => {
      const sitting = await studio.sitting({ hasDemo: true });
      if (change) await sitting.page.evaluate(change, given);
      await sitting.go(hash);
      await sheetOf(`state-${name}`, sitting, [{}], shown);
      return sitting;
    };
    await state('rest-day', '#/line', lastDrillAgain, '2026-11-24');
    await state('done', '#/line', lastDrillAgain, '2026-11-25');
    await state('pain', '#/line', hurtsOn, '2026-11-25');
    await state('young', '#/line', isOfAge, '12 to 15');
    await state('test', '#/line', takesTest);
    await state('removed', '#/journal', removesLast);
    await state('apart', '#/journal/apart', seesOtherwise, '2026-11-25');
    const broken = await state('refused', '#/rack');
    const program = { format: 'larkhold/program', version: 1, title: '', blocks: [{ reps: -3 }] };
    await broken.page
      .locator('input[type=file]')
      .first()
      .setInputFiles({
        name: 'winter.drill.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify(program)),
      });
    await broken.settle();
    await sheetOf('state-refused', broken, [{}], shown);
    const away = await studio.sitting();
    await away.go('#/line');
    await away.begin();
    await away.passTo(({ kind }) => kind === 'rest');
    await away.page.reload();
    await away.settle();
    await away.go('#/line');
    await sheetOf('state-interrupted', away, [{}], shown);
  },
  /** A coach with thirty archers, and one of them opened. */
  async squad() {
    const { builtInPrograms, createDemoJournal, createHandOver, formatHandOver } = await import('@larkhold/engine');
    const names = 'Ines Mo Ada Kofi Lena Ravi Tomás Yui Bo Maximiliane-Charlotte'.split(' ');
    const files = Array.from({ length: 30 }, (_, at) => {
      const name = `${names[at % 10]}${at < 10 ? '' : ` ${'ABC'[Math.floor(at / 10)]}.`}`;
      const journal = createDemoJournal({
        endDay: `2026-11-${25 - (at % 7) * 2}`,
        programs: builtInPrograms,
        seed: at + 1,
      });
      const handOver = createHandOver({
        ...{ journal, archer: name, archerId: `a${at}`, from: '2026-10-29', to: '2026-11-25' },
        ...{ madeAt: '2026-11-25T05:00:00Z', includesNotes: true, includesPain: true, programs: [builtInPrograms[0]] },
      });
      return {
        name: `${at}.hand-over.json`,
        mimeType: 'application/json',
        buffer: Buffer.from(formatHandOver(handOver)),
      };
    });
    const sitting = await studio.sitting();
    await sitting.go('#/coach');
    await sitting.page.locator('input[type=file]').first().setInputFiles(files);
    const isRead = () =>
      sitting.page.evaluate(() => {
        const coach = document.querySelector('lark-app').shadowRoot.querySelector('coach-page');
        return coach.renderRoot.querySelectorAll('tbody tr').length >= 30;
      });
    while (!(await isRead())) await sitting.settle();
    await sheetOf('squad', sitting);
    await sitting.look({ width: 390, height: 844, scheme: 'light' });
    await sitting.page.screenshot({ path: `${folder}/whole-squad.png`, fullPage: true });
    await sitting.look({ width: 1440, height: 900, scheme: 'light' });
    await sitting.page.screenshot({ path: `${folder}/whole-squad-1440.png`, fullPage: true });
  },
};
try {
  for (const [name, take] of Object.entries(parts)) if (part === undefined || part === name) await take();
} finally {
  await studio.close();
}

// Makes the pictures of README and docs from the built app, all of them: `npm run pictures`. Run `npm run build` first. `docs/pictures/simulation.svg`
// alone is made elsewhere, by `simulate-archers.mjs`. Every screen at every size, to be looked at and not kept: `picture-grid.mjs`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { root } from './prepare.mjs';
import { openStudio, shootWebp } from './studio.mjs';

const folder = `${root}docs/pictures`;
const [phone, onItsSide, desk] = [
  { width: 390, height: 844 },
  { width: 844, height: 390 },
  { width: 1440, height: 900 },
];
mkdirSync(folder, { recursive: true });
const studio = await openStudio();

/** One picture, named after what it shows, its size and its colours. */
async function keep(sitting, name, size, scheme = 'dark') {
  await sitting.look({ ...size, scheme });
  await sitting.page.evaluate(() => scrollTo(0, 0));
  writeFileSync(`${folder}/${name}-${size.width}x${size.height}-${scheme}.webp`, await shootWebp(sitting.page));
}

/** The line, a hold and the journal beside each other. */
async function overview(shots) {
  const sheet = await studio.browser.newPage({ viewport: { width: 3 * phone.width + 80, height: phone.height + 40 } });
  const images = shots.map(
    (shot) =>
      `<img width="${phone.width}" height="${phone.height}" src="data:image/png;base64,${shot.toString('base64')}">`,
  );
  await sheet.setContent(`<body style="margin:20px;display:flex;gap:20px;background:#fff">${images.join('')}</body>`);
  await sheet.screenshot({ path: `${folder}/overview.png` });
  await sheet.close();
}

try {
  const first = await studio.sitting({ density: 2 });
  await first.look({ ...phone });
  await first.go('#/line');
  await keep(first, 'first', phone);
  const shots = [await first.shoot()];
  await first.begin();
  await first.passTo(({ kind }) => kind === 'hold');
  await first.pass(1500);
  await keep(first, 'hold', phone);
  shots.push(await first.shoot());
  await first.passTo(({ kind, rep }) => kind === 'rest' && rep === 3);
  await keep(first, 'rest', onItsSide);
  await first.context.close();

  const year = await studio.sitting({ hasDemo: true, density: 2 });
  await year.look({ ...phone });
  for (const [name, hash, size] of [
    ['week', '#/week', phone],
    ['rack', '#/rack', phone],
    ['trends', '#/trends', desk],
    ['kit-sound', '#/kit/sound', desk],
    ['bench', '#/bench/new', desk],
  ]) {
    await year.go(hash);
    await keep(year, name, size);
  }
  await year.go('#/journal');
  await year.look({ ...phone });
  shots.push(await year.shoot());
  await year.page.locator('year-strip').first().scrollIntoViewIfNeeded();
  await year.page.evaluate(() => {
    const month = document
      .querySelector('lark-app')
      .shadowRoot.querySelector('lark-journal')
      .shadowRoot.querySelector('year-strip');
    scrollTo(0, month.getBoundingClientRect().top + scrollY - 16);
  });
  await year.settle();
  writeFileSync(`${folder}/month-390x844-dark.webp`, await shootWebp(year.page));
  await overview(shots);
} finally {
  await studio.close();
}

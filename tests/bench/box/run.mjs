// Ten years through a box on a real nginx, an idle round, and the mornings of 1,000 archers with three devices each against one nginx on this machine.
// Prints numbers and ratios; never fails on a time.
// Usage: npm run bench:box [-- archers]
import { availableParallelism, loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';

const archers = Number(process.argv[2] ?? 1000);
const AT_ONCE = 64;
const RUNS = 5;
const sort = (numbers) => [...numbers].sort((a, b) => a - b);
const at = (numbers, share) => sort(numbers)[Math.min(numbers.length - 1, Math.floor(numbers.length * share))];
const ms = (number) => `${number.toFixed(1).padStart(9)} ms`;

const loader = await createServer({
  ...{ root: fileURLToPath(new URL('../../../apps/web', import.meta.url)), configFile: false, logLevel: 'error' },
  ...{ appType: 'custom', optimizeDeps: { noDiscovery: true } },
  server: { middlewareMode: true, hmr: false, ws: false },
  ssr: { noExternal: [/@larkhold/], resolve: { conditions: ['@larkhold/source', 'module', 'node', 'import'] } },
});
const load = (path) => loader.ssrLoadModule(fileURLToPath(new URL(path, import.meta.url)));
const { startNginx } = await load('../../box/nginx.ts');
const { createDevice, liveMorning, sizesOf, yearsOf } = await load('./parts.ts');
const nginx = await startNginx();
if (nginx === undefined) {
  console.log('There is no nginx here (apt-get install nginx-light): nothing was measured.');
  await loader.close();
  process.exit(0);
}

async function time(work) {
  const startMs = performance.now();
  await work();
  return performance.now() - startMs;
}

try {
  console.log(
    `${loadavg()[0]?.toFixed(1)} at work on ${availableParallelism()} processors; nginx and the devices share them\n`,
  );
  const journal = yearsOf(10);
  const { text, sealed } = await sizesOf(journal);
  console.log(
    `ten years: ${(text / 1e6).toFixed(1)} MB of journal, ${(sealed / 1e3).toFixed(0)} kB sealed, ratio ${(sealed / text).toFixed(3)}`,
  );
  const took = { push: [], pull: [], idle: [], fetch: [] };
  for (let run = 0; run < RUNS; run += 1) {
    const phone = await createDevice(nginx.address, 'Phone');
    await phone.store.replaceJournal(journal);
    took.push.push(await time(() => phone.meet()));
    const laptop = await createDevice(nginx.address, 'Laptop', phone.pairing);
    took.pull.push(await time(() => laptop.meet()));
    await phone.meet();
    await laptop.meet();
    took.idle.push(await time(() => phone.meet()));
    took.fetch.push(await time(async () => (await fetch(`${nginx.address}/`)).text()));
  }
  const bare = at(took.fetch, 0.5);
  for (const [name, words] of Object.entries({
    push: 'a device puts ten years',
    pull: 'a new device reads, merges and puts ten years',
    idle: 'an idle round',
    fetch: 'one bare request',
  })) {
    const median = at(took[name], 0.5);
    console.log(
      `${words.padEnd(48)} median ${ms(median)}  most ${ms(at(took[name], 1))}  ${(median / bare).toFixed(0).padStart(6)} bare requests`,
    );
  }

  const year = await sizesOf(yearsOf(1));
  const letters = 'abcdefghijklmnopqrstuvwxyz234567';
  const pathOf = (index) =>
    Array.from({ length: 32 }, (_, place) => letters[(index >> ((place % 4) * 5)) % 32]).join('');
  const tookMs = [];
  let next = 0;
  const worker = async () => {
    while (next < archers) {
      next += 1;
      await liveMorning(nginx.address, pathOf(next), year.sealed, tookMs);
    }
  };
  const wallMs = await time(() => Promise.all(Array.from({ length: AT_ONCE }, worker)));
  // Beside it, in the same run: the same number of bare requests, as quickly as this driver sends them.
  let left = Math.min(tookMs.length, 10_000);
  const count = left;
  const bareMs = await time(() =>
    Promise.all(
      Array.from({ length: AT_ONCE }, async () => {
        while (left > 0) {
          left -= 1;
          await (await fetch(`${nginx.address}/`)).text();
        }
      }),
    ),
  );
  const perSecond = tookMs.length / (wallMs / 1000);
  console.log(
    `\nthe mornings of ${archers} archers with three devices, files of ${(year.sealed / 1e3).toFixed(0)} kB, ${AT_ONCE} at once:`,
  );
  console.log(
    `${tookMs.length} requests in ${(wallMs / 1000).toFixed(1)} s: ${perSecond.toFixed(0)} a second; p50 ${at(tookMs, 0.5).toFixed(1)}, p99 ${at(tookMs, 0.99).toFixed(1)}, most ${at(tookMs, 1).toFixed(1)} ms`,
  );
  console.log(
    `${(tookMs.length / archers).toFixed(1)} requests an archer and morning; bare requests: ${(count / (bareMs / 1000)).toFixed(0)} a second, ratio ${(perSecond / (count / (bareMs / 1000))).toFixed(2)}`,
  );
} finally {
  await nginx.close();
  await loader.close();
}

import { readFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { launchWithTabs, openTab } from '../cues/raw-tabs.mjs';

const CUES = 40;
const ROUNDS = 2;
/** What a trial takes on a machine that is slow, milliseconds. */
const TRIAL_MS = 75_000;
const trials = [
  { title: 'As it is' },
  { title: 'Every process of the page slowed four times', slow: 4 },
  { title: 'Hidden page', isHidden: true },
];

/**
 * What the camera does to everything else: cues with and without it in the same page by turns, what a picture costs, and memory. Prints.
 * @param address where the bench's page is served
 * @param film the camera's, y4m
 * @param leftMs how much time there is, milliseconds: a trial that would not end within it is left out
 */
export async function measureBeside(address, film, leftMs) {
  const camera = [
    ...['--use-fake-ui-for-media-stream', '--use-fake-device-for-media-stream'],
    `--use-file-for-fake-video-capture=${film}`,
  ];
  for (const { title, slow = 1, isHidden = false } of trials) {
    if (leftMs() < TRIAL_MS) {
      console.log(`\n${title}: left out, no time is left for it`);
      continue;
    }
    const browser = await launchWithTabs(camera);
    try {
      const tab = await openTab(browser, address);
      await tab.evaluate(`new Promise((resolve) => {
        const look = () => (globalThis.runCues ? resolve() : setTimeout(look, 50));
        look();
      })`);
      const session = await browser.newBrowserCDPSession();
      const before = await memoryOf(session);
      const letGo = slow > 1 ? slowDown(await renderersOf(session), slow) : () => undefined;
      if (isHidden) await tab.hide();
      const running = tab.evaluate(`globalThis.runCues(${JSON.stringify({ count: CUES, rounds: ROUNDS })})`);
      let mostMb = 0;
      let isDone = false;
      const watching = (async () => {
        while (!isDone) {
          mostMb = Math.max(mostMb, await memoryOf(session));
          await new Promise((resolve) => setTimeout(resolve, 1_000));
        }
      })();
      const runs = await running.finally(() => {
        isDone = true;
        letGo();
      });
      await watching;
      print(title, runs, before, mostMb);
    } finally {
      await browser.close();
    }
  }
}

function print(title, runs, beforeMb, mostMb) {
  const [load = 0] = loadavg();
  const ms = (value = Number.NaN) => value.toFixed(value < 10 ? 2 : 0).padStart(8);
  console.log(
    `\n${title} (${runs[0].visibility}), load ${load.toFixed(1)}: ms from plan as heard, ${CUES} cues by turns`,
  );
  console.log(`${''.padEnd(18)}     p50     p95     p99     max  missed`);
  for (const { score, looked, asked, totalMs } of runs) {
    const at = (part) => totalMs[Math.min(totalMs.length - 1, Math.floor(totalMs.length * part))];
    const cost =
      totalMs.length > 0
        ? `   ${looked.toFixed(1)} pictures a second, the model asked ${asked.toFixed(1)} times; a picture takes p50 ${at(0.5).toFixed(0)}, p95 ${at(0.95).toFixed(0)} ms`
        : '';
    console.log(
      `${score.name.padEnd(18)}${[score.p50, score.p95, score.p99, score.max].map(ms).join('')}${String(score.missed).padStart(8)}${cost}`,
    );
  }
  console.log(
    `memory of the page's processes: ${beforeMb.toFixed(0)} MB before, ${mostMb.toFixed(0)} MB at most with the camera`,
  );
}

async function renderersOf(session) {
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  return processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
}

/** What the renderers have in memory, megabytes; NaN where the system does not say. */
async function memoryOf(session) {
  let sum = 0;
  for (const id of await renderersOf(session)) {
    try {
      sum += Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? Number.NaN) / 1024;
    } catch {
      sum += 0; // it ended between the two
    }
  }
  return sum;
}

/** Lets processes run for one part of each hundredth of a second: page and workers alike, where the browser's own brake slows the page alone. */
function slowDown(ids, times) {
  const send = (signal) => {
    for (const id of ids) {
      try {
        process.kill(id, signal);
      } catch {
        // it has ended
      }
    }
  };
  let isOver = false;
  const everyMs = 12;
  const turn = () => {
    if (isOver) return;
    send('SIGSTOP');
    setTimeout(
      () => {
        send('SIGCONT');
        setTimeout(turn, everyMs / times);
      },
      everyMs - everyMs / times,
    );
  };
  turn();
  return () => {
    isOver = true;
    setTimeout(() => send('SIGCONT'), everyMs);
    send('SIGCONT');
  };
}

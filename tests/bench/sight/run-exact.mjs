// Painted films shown to model and witness picture by picture, as slowly as it takes: the same on every machine, with no camera between.
// Usage: npm run bench:sight-exact -- [film ...] [--asked=2] [--keep]   (any1, other1, front1 ...: an archer drawn at random, with other speeds too, from the front; --keep writes what the model said to tests/fixtures/sight/series)
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';

const conditions = ['@larkhold/source', 'module', 'node', 'development|production'];
const server = await createServer({
  root: fileURLToPath(new URL('.', import.meta.url)),
  configFile: false,
  logLevel: 'error',
  appType: 'custom',
  server: { middlewareMode: true, hmr: false },
  resolve: { conditions },
  ssr: { resolve: { conditions, externalConditions: ['node'] }, noExternal: [/@larkhold/] },
});
const { loadHere, runExact } = await server.ssrLoadModule('./exact.ts');
const { loadPoseModel } = await server.ssrLoadModule('../../../packages/sight/src/in-worker.ts');
const { filmOf, films } = await server.ssrLoadModule('./films.ts');
const { keepSeries } = await server.ssrLoadModule('../../fixtures/sight/kept-series.ts');
const words = process.argv.slice(2);
const named = words.filter((word) => !word.startsWith('--'));
const askedEvery = Number(words.find((word) => word.startsWith('--asked='))?.slice(8) ?? 2);
const off = { start: [], end: [], known: [] };
const still = { holds: 0, moved: 0 };
const share = (values, part) =>
  [...values].sort((a, b) => a - b)[Math.max(0, Math.ceil(values.length * part) - 1)] ?? Number.NaN;
const three = (values) =>
  `p50 ${share(values, 0.5).toFixed(0)}, p95 ${share(values, 0.95).toFixed(0)}, worst ${share(values, 1).toFixed(0)} (${values.length})`;

try {
  const model = await loadHere(loadPoseModel);
  for (const name of named.length > 0 ? named : Object.keys(films)) {
    const run = runExact(model, filmOf(name), askedEvery);
    if (words.includes('--keep')) keepSeries(name, run.rows);
    report(name, run);
  }
  console.log(
    `\nms from the truth: start ${three(off.start)}; end ${three(off.end)}; let-down known after ${three(off.known)}; ` +
      `"moved" on ${still.moved} of ${still.holds} still holds`,
  );
} finally {
  await server.close();
}

/** Each true hold with what was seen of it, and what was seen of none. */
function report(name, { truth, seen, events, poseMs }) {
  const lines = truth.holds.map(({ fromMs, toMs, rep }) => {
    const hold = seen.find((one) => Math.min(one.toMs, toMs) - Math.max(one.fromMs, fromMs) > 0);
    if (!hold) return `  missed: ${JSON.stringify(rep)}`;
    const letDown = events.find((event) => event.type === 'letDown' && event.atMs === hold.toMs);
    const [start, end, known] = [hold.fromMs - fromMs, hold.toMs - toMs, (letDown?.knownAtMs ?? Number.NaN) - toMs];
    off.start.push(Math.abs(start));
    off.end.push(Math.abs(end));
    off.known.push(known);
    const isStill = !rep.creepM && !rep.elbowDropM && !rep.shoulderRiseM;
    if (isStill) still.holds++;
    if (isStill && hold.form.length > 0) still.moved++;
    const form = hold.form.map(({ part, cm }) => `${part} ${cm.toFixed(1)} cm`).join(', ') || 'nothing moved';
    return `  start ${start.toFixed(0)} ms, end ${end.toFixed(0)} ms, known after ${known.toFixed(0)} ms: ${form} (${JSON.stringify(rep)})`;
  });
  const falseHolds = seen.filter(
    (one) => !truth.holds.some((hold) => Math.min(one.toMs, hold.toMs) - Math.max(one.fromMs, hold.fromMs) > 0),
  );
  const refusals = events.filter(({ type }) => type === 'refused').map(({ reason }) => reason);
  console.log(
    [
      `${name}: model ${three(poseMs)} ms; ${falseHolds.length} false; refused: ${refusals.join(', ') || 'never'}`,
      ...lines,
    ].join('\n'),
  );
}

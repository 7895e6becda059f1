import { blocksOf, type Draft, listAt } from './draft.ts';
import { type Path, pointerOfPath, valueAt } from './json-path.ts';

/** What a rung can raise. */
export const levers = ['hold', 'reps', 'sets', 'addedWeight'] as const;

const fileKeys = ['title', 'author', 'about', 'source', 'tool', 'warmUp', 'coolDown', 'blocks'];
const blockKeys = [
  ...['title', 'drill', 'sets', 'reps', 'draw', 'hold', 'letDown', 'rest', 'setRest'],
  ...['countFrom', 'letDownTo', 'hand', 'addedWeight', 'calls', 'ladder'],
];
const ladderPaths: readonly Path[] = [
  ['rungs'],
  ['climbAfter', 'cleanSessions'],
  ['climbAfter', 'effortAtMost'],
  ['stepDownAfter', 'missedShare'],
  ['stepDownAfter', 'sessions'],
  ['deload', 'everyWeeks'],
  ['deload', 'keep'],
  ['layoff'],
  ['weeklyGrowth'],
];

/**
 * Every field that the bench shows for a draft.
 * @param draft any draft
 * @returns RFC 6901 pointers, in the order of the page
 */
export function fieldPointers(draft: Draft): string[] {
  const paths: Path[] = fileKeys.map((key) => [key]);
  for (const index of blocksOf(draft).keys()) {
    const at: Path = ['blocks', index];
    const rest = valueAt(draft.file, [...at, 'rest']);
    const restKey = typeof rest === 'object' && rest !== null && 'timesHold' in rest ? 'timesHold' : 'seconds';
    paths.push(
      at,
      ...blockKeys.map((key) => [...at, key]),
      [...at, 'rest', restKey],
      ...ladderFields(draft, [...at, 'ladder']),
    );
  }
  return paths.map(pointerOfPath);
}

function ladderFields(draft: Draft, at: Path): Path[] {
  if (valueAt(draft.file, at) === undefined) return [];
  const rungs = listAt(draft.file, [...at, 'rungs']).flatMap((_, index) => {
    const rung: Path = [...at, 'rungs', index];
    const resets = resettable(draft, at, index).map((lever): Path => [...rung, 'resets', lever]);
    return [[...rung, 'raise'], [...rung, 'by'], [...rung, 'until'], ...resets];
  });
  const layoff = listAt(draft.file, [...at, 'layoff']).flatMap((_, index) =>
    ['days', 'stepsDown'].map((key): Path => [...at, 'layoff', index, key]),
  );
  return [...ladderPaths.map((path) => [...at, ...path]), ...rungs, ...layoff];
}

/**
 * What a rung can set back: what an earlier rung raises, and whatever it says already, right or wrong.
 * @param draft any draft
 * @param at the ladder's path
 * @param index of the rung, 0-based
 * @returns levers
 */
export function resettable(draft: Draft, at: Path, index: number): (typeof levers)[number][] {
  const rungs = listAt(draft.file, [...at, 'rungs']);
  const own = valueAt(rungs[index], ['raise']);
  const earlier = rungs.slice(0, index).map((rung) => valueAt(rung, ['raise']));
  const resets = valueAt(rungs[index], ['resets']);
  const said = typeof resets === 'object' && resets !== null ? Object.keys(resets) : [];
  return levers.filter((lever) => said.includes(lever) || (lever !== own && earlier.includes(lever)));
}

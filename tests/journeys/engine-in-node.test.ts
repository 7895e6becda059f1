import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const engine = `${root}packages/engine`;

function runInNode(script: string): string {
  return execFileSync(process.execPath, ['--input-type=module', '-e', script], { cwd: engine, encoding: 'utf8' });
}

describe('the built engine', () => {
  it('has every name of its public face, imported by node without a bundler', () => {
    const names = JSON.parse(runInNode("console.log(JSON.stringify(Object.keys(await import('@larkhold/engine'))))"));
    expect(names).toEqual(
      expect.arrayContaining([
        'parseProgram',
        'formatProgram',
        'programSchema',
        'programJsonSchema',
        'builtInPrograms',
        'prescribe',
        'layOut',
        'createSession',
        'sessionLoad',
        'weekLoad',
        'workloadRatio',
        'holdTime',
        'drawImpulse',
        'enduranceTime',
        'simulateFatigue',
        'predictSession',
        'poundsForceToNewtons',
        'isoWeek',
        'mergeJournals',
      ]),
    );
  });

  it('runs the README snippet', () => {
    const snippet = readFileSync(`${root}README.md`, 'utf8').match(/```js\n([\s\S]*?)```/)?.[1];
    expect(snippet).toBeDefined();
    expect(runInNode(snippet ?? '')).toMatch(/^\d+ steps/);
  });
});

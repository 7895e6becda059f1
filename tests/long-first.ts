import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The journeys that take longest on two cores, the longest first. A long one that begins last is waited for alone. */
const longest = ['soak', 'time', 'storage', 'first-light', 'bench-and-share', 'offline', 'sight', 'accessibility'];

function rank({ moduleId }: TestSpecification): number {
  const at = longest.findIndex((name) => moduleId.endsWith(`/journeys/${name}.test.ts`));
  return at < 0 ? longest.length : at;
}

/** Vitest's own order, but the longest journeys first. */
export class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const usual = await super.sort(files);
    return usual.sort((a, b) => rank(a) - rank(b));
  }
}

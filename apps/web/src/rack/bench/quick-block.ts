import type { QuickBlock } from '@larkhold/engine';
import { say } from '@larkhold/words';
import type { Json } from './json-path.ts';

const titles = {
  holding: 'bench.titleHolding',
  power: 'bench.titlePower',
  flexibility: 'bench.titleFlexibility',
  structure: 'bench.titleStructure',
  free: 'bench.titleFree',
} as const satisfies Record<QuickBlock['drill'], string>;

/**
 * A block of a quick line as a file says it.
 * @param block what the line says
 * @returns the block with a plain title, for the archer to change
 */
export function quickBlock(block: QuickBlock): Json {
  return { title: say(titles[block.drill]), ...(JSON.parse(JSON.stringify(block)) as { [key: string]: Json }) };
}

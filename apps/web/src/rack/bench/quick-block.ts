import type { QuickBlock } from '@larkhold/engine';
import type { Json } from './json-path.ts';

const titles: Readonly<Record<QuickBlock['drill'], string>> = {
  holding: 'Holds',
  power: 'Power',
  flexibility: 'Flexibility',
  structure: 'Structure',
  free: 'Free drill',
};

/**
 * A block of a quick line as a file says it.
 * @param block what the line says
 * @returns the block with a plain title, for the archer to change
 */
export function quickBlock(block: QuickBlock): Json {
  return { title: titles[block.drill], ...(JSON.parse(JSON.stringify(block)) as { [key: string]: Json }) };
}

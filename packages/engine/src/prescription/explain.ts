import type { AskedNumber } from './asked-number.ts';
import type { Prescription } from './prescription.ts';
import { sayWhy } from './say-why.ts';
import { english } from './sayer.ts';

/**
 * Why a number of a prescription is what it is, in words.
 * @param prescription today's prescription, as `prescribe` gave it
 * @param block the block's index in the program; of no matter for 'duration', which is the whole drill's
 * @param number which number
 * @returns one or more plain sentences
 * @throws RangeError when the program has no such block
 * @example explain(prescription, 0, 'hold') // 'Hold: 35 s. The program begins with 30 s; …'
 */
export function explain(prescription: Prescription, block: number, number: AskedNumber): string {
  const isThere = [...prescription.blocks, ...prescription.reasons].some((one) => one.block === block);
  if (number !== 'duration' && !isThere)
    throw new RangeError(`block is ${block}; expected the index of a block of the program`);
  return sayWhy(prescription, block, number, english).join(' ');
}

import { describe } from 'vitest';
import { createMemoryBox } from './memory-box.ts';
import { describeBox } from './trial/box-acceptance.ts';

describe('a box in memory', () => describeBox(async () => createMemoryBox()));

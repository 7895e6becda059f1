import { expectTypeOf, test } from 'vitest';
import type { MessageParameters } from './message-parameters.ts';

test('the type checker reads what a message needs', () => {
  expectTypeOf<MessageParameters<'Begin'>>().toEqualTypeOf<Record<never, never>>();
  expectTypeOf<MessageParameters<'{a} and {b}'>>().toEqualTypeOf<{ a: string; b: string }>();
  expectTypeOf<MessageParameters<'{ms, number, seconds}, {n, number}'>>().toEqualTypeOf<{ ms: number; n: number }>();
  expectTypeOf<MessageParameters<'{day, date, short} {at, time}'>>().toEqualTypeOf<{ day: string; at: string }>();
  expectTypeOf<MessageParameters<'{ms, number, secnds}'>>().toEqualTypeOf<{ ms: never }>();
  expectTypeOf<MessageParameters<'{n, plural, =0 {none} one {# rep of {title}} other {# reps}}, {x}'>>().toEqualTypeOf<{
    n: number;
    title: string;
    x: string;
  }>();
  expectTypeOf<
    MessageParameters<'{hand, select, usual {} opposite {, other hand} other {{n, plural, one {one} other {#}}}}.'>
  >().toEqualTypeOf<{ hand: 'usual' | 'opposite' | 'other'; n: number }>();
});

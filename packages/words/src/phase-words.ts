import type { SessionView } from '@larkhold/engine';
import type { Words } from './create-words.ts';
import { presentWords } from './present-words.ts';

/** What the archer does, or that nothing runs. */
export type Phase =
  | 'waiting'
  | 'ready'
  | 'draw'
  | 'hold'
  | 'letDown'
  | 'rest'
  | 'setRest'
  | 'paused'
  | 'done'
  | 'stopped';

/**
 * The phase that a screen tells.
 * @param view where the session is
 * @returns the step's kind while running, else the session's state
 */
export function phaseOf(view: Pick<SessionView, 'state' | 'step'>): Phase {
  if (view.state !== 'running') return view.state;
  return view.step?.kind ?? 'done';
}

/**
 * The phase in a word or two.
 * @param view where the session is
 * @param words the language
 * @returns as it is shown
 */
export function phaseWord(view: Pick<SessionView, 'state' | 'step'>, words: Words = presentWords()): string {
  const phase = phaseOf(view);
  return words.say(phase === 'letDown' && view.step?.to === 'set-up' ? 'phase.toSetUp' : `phase.${phase}`);
}

/**
 * What comes next, in a few words.
 * @param view where the session is
 * @param blockTitle a block's title by its number in the program
 * @param words the language
 * @returns for example 'Next: rest 60 s'; empty when nothing follows
 */
export function nextWords(
  view: SessionView,
  blockTitle: (block: number) => string | undefined = () => undefined,
  words: Words = presentWords(),
): string {
  const { step, next, progress } = view;
  if (next === undefined) return view.state === 'running' ? words.say('phase.lastOne') : '';
  const { kind, block, set, hand, durationMs: ms } = next;
  if (kind === 'hold') return words.say('phase.nextHold', { ms });
  if (kind === 'letDown') return words.say(next.to === 'set-up' ? 'phase.nextToSetUp' : 'phase.nextLetDown');
  if (kind !== 'draw') return words.say('phase.nextRest', { ms });
  const title = blockTitle(block);
  const isOther = step !== undefined && block !== step.block;
  const ofBlock = () =>
    title === undefined ? words.say('phase.nextBlockUnnamed') : words.say('phase.nextBlock', { title });
  const ofSet = () =>
    step?.kind === 'setRest'
      ? words.say('phase.nextSet', { set: set + 1, sets: progress.sets })
      : words.say('phase.nextDraw');
  const said = isOther ? ofBlock() : ofSet();
  return hand === 'opposite' && step?.hand !== 'opposite' ? words.say('phase.oppositeHand', { next: said }) : said;
}

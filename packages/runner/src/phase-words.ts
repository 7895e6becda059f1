import type { SessionView } from '@larkhold/engine';

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

const words: Readonly<Record<Phase, string>> = {
  waiting: 'Ready',
  ready: 'Get ready',
  draw: 'Draw',
  hold: 'Hold',
  letDown: 'Let down',
  rest: 'Rest',
  setRest: 'Rest',
  paused: 'Paused',
  done: 'Done',
  stopped: 'Stopped',
};

/**
 * The phase that a screen tells.
 * @param view where the session stands
 * @returns the step's kind while running, else the session's state
 */
export function phaseOf(view: Pick<SessionView, 'state' | 'step'>): Phase {
  if (view.state !== 'running') return view.state;
  return view.step?.kind ?? 'done';
}

/**
 * The phase in a word or two.
 * @param view where the session stands
 * @returns words as they stand on the screen
 */
export function phaseWord(view: Pick<SessionView, 'state' | 'step'>): string {
  const phase = phaseOf(view);
  return phase === 'letDown' && view.step?.to === 'set-up' ? 'To set-up' : words[phase];
}

/**
 * What comes next, in a few words.
 * @param view where the session stands
 * @param blockTitle a block's title by its number in the program
 * @returns for example 'Next: rest 60 s'; empty when nothing follows
 */
export function nextWords(
  view: SessionView,
  blockTitle: (block: number) => string | undefined = () => undefined,
): string {
  const { step, next, progress } = view;
  if (next === undefined) return view.state === 'running' ? 'Last one' : '';
  const seconds = `${new Intl.NumberFormat(undefined, { maximumFractionDigits: 1 }).format(next.durationMs / 1000)} s`;
  const hand = next.hand === 'opposite' && step?.hand !== 'opposite' ? ', opposite hand' : '';
  switch (next.kind) {
    case 'draw':
      if (step !== undefined && next.block !== step.block)
        return `Next: ${blockTitle(next.block) ?? 'next block'}${hand}`;
      if (step?.kind === 'setRest') return `Next: set ${next.set + 1} of ${progress.sets}${hand}`;
      return `Next: draw${hand}`;
    case 'hold':
      return `Next: hold ${seconds}`;
    case 'letDown':
      return next.to === 'set-up' ? 'Next: let down to set-up' : 'Next: let down';
    default:
      return `Next: rest ${seconds}`;
  }
}

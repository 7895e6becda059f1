import { say } from '@larkhold/words';
import type { App } from '../shell/app-context.ts';
import { localWhen } from '../shell/local-when.ts';

/**
 * One quiet line: when this device last met the others.
 * @param link this device's way to the box
 * @returns the line
 */
export function boxState({ lastRoundAt, isPaused }: NonNullable<NonNullable<App['act']['box']>['link']>): string {
  if (isPaused) return say('box.paused');
  return lastRoundAt ? say('box.quiet', localWhen(lastRoundAt)) : say('box.notMet');
}

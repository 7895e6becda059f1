import { say } from '@larkhold/words';
import { html } from 'lit';

/**
 * No and yes, of which neither may be pressed: a question about pain that was left open is not "no". A second press takes an answer back.
 * @param pain what was answered, if anything
 * @param answered hears of a press: the answer from now on, undefined where it was taken back
 * @returns two buttons, for a group that says what is asked
 */
export function painAnswer(pain: boolean | undefined, answered: (pain: boolean | undefined) => void) {
  const button = (means: boolean, words: string) =>
    html`<button
      type="button"
      aria-pressed=${pain === means ? 'true' : 'false'}
      @click=${() => answered(pain === means ? undefined : means)}
    >
      ${words}
    </button>`;
  return html`${button(false, say('after.no'))} ${button(true, say('after.yes'))}`;
}

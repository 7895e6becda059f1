import { phrases } from '@larkhold/cues';
import type { RepRecord } from '@larkhold/engine';
import type { Said } from './press-sound.ts';

/**
 * A question of the page after a drill, as it is asked aloud.
 * @param about effort, pain, or a rep: how it ended where that is unsure, else why it was short
 * @param saysHow whether it is said how to answer
 * @returns the question
 */
export function spokenQuestion(about: 'effort' | 'pain' | RepRecord, saysHow = false): Said {
  const how = saysHow ? `. ${phrases.howToAnswer}` : '';
  return { kind: 'question', words: `${questionWords(about)}${how}` };
}

function questionWords(about: 'effort' | 'pain' | RepRecord): string {
  if (about === 'effort') return phrases.effortAsked;
  if (about === 'pain') return phrases.painAsked;
  const place = phrases.counts[about.rep + 1];
  const which = place === undefined ? '' : `${phrases.rep} ${place.toLowerCase()}. `;
  return `${which}${about.outcome === 'unsure' ? phrases.heldAsked : phrases.whyAsked}`;
}

/**
 * An effort that was chosen, as it is said back.
 * @param effort 0 to 10
 * @returns 'Seven. Hard'
 */
export function spokenEffort(effort: number): Said {
  return { kind: 'answer', words: `${phrases.counts[effort]}. ${phrases.efforts[effort]}` };
}

/**
 * The answer about pain, as it is said back.
 * @param pain whether there is any
 * @returns 'No', or what to do about it
 */
export function spokenPain(pain: boolean): Said {
  return { kind: 'answer', words: pain ? phrases.pain : phrases.noPain };
}

/**
 * How a rep ended, or why it was short, as it is said back.
 * @param rep as it was corrected
 * @returns one word
 */
export function spokenRep({ outcome, why }: RepRecord): Said {
  return {
    kind: 'answer',
    words: outcome === 'short' && why !== undefined ? phrases.reasons[why] : phrases.outcomes[outcome],
  };
}

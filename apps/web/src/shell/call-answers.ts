import type { DrillCalls } from '@larkhold/engine';
import { type Kit, MOST_CALL_ANSWERS } from '@larkhold/store';

type Answers = Pick<Kit, 'callAnswers'>;

/**
 * The lines that the archer allowed one program to say at full draw.
 * @param kit where the answers are kept
 * @param programId the program, as `idOf` names it
 * @returns lines, in the exact text that was allowed
 */
export function allowedCallsOf({ callAnswers }: Answers, programId: string): readonly string[] {
  return callAnswers.find((one) => one.programId === programId)?.allowed ?? [];
}

/**
 * The lines that the archer has not been asked about, or that read otherwise since.
 * @param kit where the answers are kept
 * @param programId the program, as `idOf` names it
 * @param calls what the drill would say
 * @returns lines in their order
 */
export function unaskedCalls({ callAnswers }: Answers, programId: string, calls: DrillCalls): readonly string[] {
  const silenced = callAnswers.find((one) => one.programId === programId)?.silenced ?? [];
  return calls.unsaid.filter((words) => !silenced.includes(words));
}

/**
 * The answers after one more.
 * @param kit where the answers are kept
 * @param programId the program, as `idOf` names it
 * @param answer the lines that may be said and those that may not; none of either asks again
 * @returns the kit's answers; those of the program longest unanswered are dropped where there are too many
 */
export function answerCalls(
  { callAnswers }: Answers,
  programId: string,
  answer: { allowed: readonly string[]; silenced: readonly string[] },
): Kit['callAnswers'] {
  const others = callAnswers.filter((one) => one.programId !== programId);
  const isEmpty = answer.allowed.length === 0 && answer.silenced.length === 0;
  const own = isEmpty ? [] : [{ programId, allowed: [...answer.allowed], silenced: [...answer.silenced] }];
  return [...others, ...own].slice(-MOST_CALL_ANSWERS);
}

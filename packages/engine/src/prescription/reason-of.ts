import type { AskedNumber } from './asked-number.ts';
import type { Reason, Rule, RuleFacts } from './reason.ts';
import { sayReason } from './say-reason.ts';
import { english } from './sayer.ts';

/**
 * A reason, with its sentence made from its facts.
 * @param rule which rule acted
 * @param facts what it read and changed
 * @param where the block it acted on, and which numbers; nothing where it acted on all
 * @returns the reason
 */
export function reasonOf<R extends Rule>(
  rule: R,
  facts: RuleFacts[R],
  where: { block?: number; acts?: readonly AskedNumber[] } = {},
): Reason {
  const { block, acts } = where;
  const reason: { rule: R; block?: number; acts?: readonly AskedNumber[]; facts?: RuleFacts[R]; change?: string } = {
    rule,
  };
  if (block !== undefined) reason.block = block;
  if (acts !== undefined) reason.acts = acts;
  reason.facts = facts;
  reason.change = sayReason({ rule, facts }, english);
  return reason as Reason;
}

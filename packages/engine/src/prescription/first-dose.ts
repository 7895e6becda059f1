import { CAPACITY_DAYS, capacityOf } from '../archer/capacity.ts';
import type { Tool } from '../archer/capacity-state.ts';
import { repeatableHoldSeconds } from '../archer/careful-reserve.ts';
import { mostAddedLbf } from './added-weight.ts';
import { levers } from './asked-number.ts';
import type { BlockRules } from './block-rules.ts';
import { type BlockState, placeOf } from './block-state.ts';
import { halfSeconds } from './dose.ts';
import type { KnownToday } from './known-today.ts';
import { ladderFacts } from './ladder-reason.ts';
import type { Reason } from './reason.ts';
import { reasonOf } from './reason-of.ts';

/** Where only little was ever asked, a first hold is at least so much of the foot's: too little is no kindness either. Own: no source. */
const CAUTIOUS_SHARE = 0.5;

/**
 * Where a block begins for an archer who has never drilled it: at what they are known to hold.
 * @param rules the block's
 * @param state of a block that is not begun
 * @param known everything that is known today
 * @param tool what is drawn today
 * @returns the state to begin with, and why, where it is not the foot
 */
export function firstDose(
  rules: BlockRules,
  state: BlockState,
  known: KnownToday,
  tool: Tool,
): { state: BlockState; reason?: Reason } {
  const { program, body, archer, day } = known;
  const foot = rules.path[0]!;
  const capacity = capacityOf(body.capacity, tool, body.lastDay ?? day, archer);
  const held = knownHold(known, tool);
  const longest = capacity.likelySeconds;
  const fits = longest === undefined ? undefined : fittingHold(rules, longest);
  let hold = fits ?? foot.hold;
  let from: 'test' | 'failures' | 'answer' | 'held' | 'cautious' = capacity.likelyFrom ?? 'held';
  if (held > hold) {
    hold = held;
    from = 'held';
  } else if (fits === undefined && held > 0 && held < foot.hold) {
    hold = Math.max(held, halfSeconds(CAUTIOUS_SHARE * foot.hold));
    from = 'cautious';
  }
  // Whatever is drawn: nobody begins with a longer hold than they say they have.
  if (archer.longestHoldSeconds !== undefined && archer.longestHoldSeconds < hold && held < hold) {
    hold = Math.max(held, halfSeconds(archer.longestHoldSeconds) || archer.longestHoldSeconds);
    from = 'answer';
  }
  if (hold === foot.hold) return { state };
  const level = placeOf(rules, hold, foot.reps * foot.sets, 0);
  const place = rules.path[level]!;
  if (level === 0 && hold >= foot.hold) return { state };
  const dose = { ...place, hold: Math.min(place.hold, hold), addedWeight: 0 };
  const begun = { ...state, level, dose, restHold: Math.max(foot.hold, place.hold) };
  const told = longest ?? (from === 'answer' ? archer.longestHoldSeconds : undefined);
  const facts = {
    ...ladderFacts(rules, begun, dose, { weight: false, isCut: false }, mostAddedLbf(program, archer)),
    ...{ from, knownHold: Math.round(held * 10) / 10 },
    ...(told === undefined ? {} : { longestHold: Math.round(told) }),
  };
  return { state: begun, reason: reasonOf('firstDose', facts, { block: rules.index, acts: levers }) };
}

/** The hold at which the block's reps and rests ask for no more than a longest hold, read with care. */
function fittingHold({ block, path }: BlockRules, longestSeconds: number): number {
  const foot = path[0]!;
  const mostSeconds = path.reduce(
    (most, { hold, addedWeight }) => (addedWeight <= foot.addedWeight ? Math.max(most, hold) : most),
    foot.hold,
  );
  const between = block.draw + block.letDown;
  return repeatableHoldSeconds(
    longestSeconds,
    (holdSeconds) => {
      const own =
        'seconds' in block.rest ? block.rest.seconds : block.rest.timesHold * Math.max(foot.hold, holdSeconds);
      const restSeconds = own + between;
      return {
        holdSeconds,
        reps: foot.reps,
        sets: foot.sets,
        restSeconds,
        setRestSeconds: (block.setRest ?? own) + between,
      };
    },
    mostSeconds,
  );
}

/** The longest hold of other drills with this tool that was held to its end, and has not failed since, seconds. */
function knownHold({ body, day }: KnownToday, tool: Tool): number {
  const held = body.capacity.filter((one) => one.kind === 'atLeast' && one.tool === tool && !one.isTest);
  const recent = held.filter((one) => one.day > (body.lastDay ?? day) - CAPACITY_DAYS);
  const { limit } = body;
  return recent.reduce((most, { holdMs, day: on }) => {
    const hasFailed = limit !== undefined && limit.day >= on && limit.askedMs <= holdMs;
    return hasFailed ? most : Math.max(most, halfSeconds(holdMs / 1000) || holdMs / 1000);
  }, 0);
}

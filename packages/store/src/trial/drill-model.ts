import type { Outcome } from '@larkhold/engine';

// What the session's rules (SPEC.md of the engine's session room) say, written down a second time and in another way: an archer who counts.

const READY_MS = 10_000;
const MORE_REST_MS = 30_000;

/** The lengths and counts of a drill; every length is more than nothing. Milliseconds. */
export interface Plan {
  sets: number;
  reps: number;
  drawMs: number;
  holdMs: number;
  letDownMs: number;
  restMs: number;
  setRestMs: number;
}

/** What is known of a rep. */
export interface KnownRep {
  outcome: Outcome;
  heldMs: number;
}

/** One drill as the archer counts it. Plain data: copy it to remember it. */
export interface DrillModel {
  plan: Plan;
  state: 'running' | 'paused' | 'lost' | 'over';
  phase: 'wait' | 'draw' | 'hold' | 'letDown';
  /** Which wait: standing to is never made into a set rest. */
  isStandingTo: boolean;
  /** The rep under way, or the one that is waited for. */
  rep: number;
  inMs: number;
  lengthMs: number;
  addedMs: number;
  reps: KnownRep[];
}

/** A drill that has just been begun. */
export function beginModel(plan: Plan): DrillModel {
  return { plan, state: 'running', reps: [], rep: 0, ...standTo() };
}

const standTo = () =>
  ({
    phase: 'wait',
    isStandingTo: true,
    inMs: 0,
    lengthMs: READY_MS,
    addedMs: 0,
  }) as const satisfies Partial<DrillModel>;

/** Time passes, and the archer sees all of it. */
export function passModel(drill: DrillModel, ms: number): void {
  let leftMs = ms;
  while (drill.state === 'running' && leftMs > 0) {
    const spentMs = Math.min(leftMs, drill.lengthMs - drill.inMs);
    drill.inMs += spentMs;
    leftMs -= spentMs;
    while (drill.state === 'running' && drill.inMs === drill.lengthMs) endPhase(drill);
  }
}

function endPhase(drill: DrillModel): void {
  const { plan } = drill;
  if (drill.phase === 'wait') enter(drill, 'draw', plan.drawMs);
  else if (drill.phase === 'draw') enter(drill, 'hold', plan.holdMs);
  else if (drill.phase === 'hold') endRep(drill, 'held');
  else if (!nextRep(drill)) drill.state = 'over';
  else {
    enter(drill, 'wait', beginsSet(drill) ? plan.setRestMs : plan.restMs);
    drill.isStandingTo = false;
  }
}

function enter(drill: DrillModel, phase: DrillModel['phase'], lengthMs: number): void {
  Object.assign(drill, { phase, lengthMs, inMs: 0, addedMs: 0 });
}

function endRep(drill: DrillModel, outcome: Outcome): void {
  drill.reps.push({ outcome, heldMs: drill.phase === 'hold' ? drill.inMs : 0 });
  enter(drill, 'letDown', drill.plan.letDownMs);
}

function nextRep(drill: DrillModel): boolean {
  drill.rep += 1;
  return drill.rep < drill.plan.sets * drill.plan.reps;
}

const beginsSet = ({ rep, plan }: DrillModel): boolean => rep % plan.reps === 0;
const isDrawn = ({ phase }: DrillModel): boolean => phase === 'draw' || phase === 'hold';

/** What the archer can ask for, and what lost time does. */
export const askModel = {
  letDownNow(drill: DrillModel): void {
    if (drill.state === 'running' && isDrawn(drill)) endRep(drill, 'short');
  },
  skipRep(drill: DrillModel): void {
    if (drill.state !== 'running' || drill.phase === 'letDown') return;
    if (isDrawn(drill)) {
      endRep(drill, 'skipped');
      return;
    }
    drill.reps.push({ outcome: 'skipped', heldMs: 0 });
    if (!nextRep(drill)) drill.state = 'over';
    else if (!drill.isStandingTo && beginsSet(drill)) {
      const leftMs = drill.lengthMs - drill.inMs;
      const wholeMs = drill.plan.setRestMs + drill.addedMs - drill.inMs;
      drill.lengthMs = drill.inMs + Math.max(wholeMs, Math.min(leftMs, READY_MS));
    }
  },
  moreRest(drill: DrillModel): void {
    if (drill.state !== 'running' || drill.phase !== 'wait') return;
    drill.lengthMs += MORE_REST_MS;
    drill.addedMs += MORE_REST_MS;
  },
  pause(drill: DrillModel): void {
    if (drill.state === 'running') drill.state = 'paused';
  },
  resume(drill: DrillModel): void {
    if (drill.state === 'lost' && drill.rep === drill.plan.sets * drill.plan.reps) drill.state = 'over';
    else if (drill.state === 'paused' || drill.state === 'lost') drill.state = 'running';
  },
  stop(drill: DrillModel): void {
    if (drill.state === 'over') return;
    if (drill.state !== 'lost' && isDrawn(drill)) endRep(drill, 'short');
    drill.state = 'over';
  },
  gap(drill: DrillModel): void {
    if (drill.state !== 'running') return;
    if (drill.phase === 'wait') {
      const missingMs = Math.max(0, READY_MS - (drill.lengthMs - drill.inMs));
      drill.lengthMs += missingMs;
      drill.addedMs += missingMs;
      drill.state = 'lost';
      return;
    }
    const wasDrawn = isDrawn(drill);
    if (wasDrawn) endRep(drill, 'unsure');
    const goesOn = nextRep(drill);
    if (goesOn) Object.assign(drill, standTo());
    drill.state = goesOn || wasDrawn ? 'lost' : 'over';
  },
};

/** Whether the app writes down where a drill is: a rep ended, or another step or state began. */
export function hasMoved(before: DrillModel, after: DrillModel): boolean {
  const keys = ['state', 'phase', 'rep'] as const;
  return before.reps.length !== after.reps.length || keys.some((key) => before[key] !== after[key]);
}

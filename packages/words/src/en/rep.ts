/** Reps as they were logged. */
export const rep = {
  'rep.early': 'Let down {early, number, seconds} early: logged as {held, number, seconds}.',
  'rep.skipped': 'Skipped: logged as no hold.',
  'rep.unsure': 'Time was lost here: logged as unsure. You can correct it in the journal.',
  'rep.drill':
    '{held, number} of {reps, plural, one {# rep} other {# reps}} held. {ms, number, duration} at full draw.',
  'rep.drillSeen':
    '{held, number} of {reps, plural, one {# rep} other {# reps}} held. {ms, number, duration} at full draw, by the camera where it saw the hold.',
  'rep.place': 'Rep {rep, number}',
  'rep.placeInSet': 'Set {set, number}, rep {rep, number}',
  'rep.placeInBlock': 'Block {block, number}, rep {rep, number}',
  'rep.placeInBlockAndSet': 'Block {block, number}, set {set, number}, rep {rep, number}',
  'rep.otherHand': '{place}, other hand',
} as const;

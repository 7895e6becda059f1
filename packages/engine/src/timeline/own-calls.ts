/**
 * Larkhold's own phrases: they may be said at full draw unasked, in exactly this spelling. The calls of the built-in programs, and the steps of a
 * shot process that the spoken pack has.
 * @source own; none of them can be heard as an order to let the string go
 */
export const ownCalls: ReadonlySet<string> = new Set([
  ...['Keep reaching', 'Shoulders low'],
  ...[
    'Stance',
    'Posture',
    'Hook',
    'Grip',
    'Hook and grip',
    'Bow hand',
    'Draw hand',
    'Bow shoulder',
    'Set up',
    'Anchor',
  ],
  ...['Full draw', 'Transfer', 'Alignment', 'Aim', 'Expand', 'Expansion', 'Breathe', 'Slow', 'Tall'],
]);

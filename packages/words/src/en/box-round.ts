/** What a round of the box brought and sent. */
export const boxRound = {
  'boxRound.cameIn': 'News of {title} came in.',
  'boxRound.wentOut': 'What is new here went out.',
  'boxRound.takenBack': 'What the last round brought was undone. This device waits until you let it meet again.',
} as const;

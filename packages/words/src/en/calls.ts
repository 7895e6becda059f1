/** What may be said at full draw. */
export const calls = {
  'calls.asks': 'This program says these lines while you are at full draw',
  'calls.readThem':
    'Read each line to its end. There is no arrow: no line may tell you to let the string go. None is said until you allow it.',
  'calls.allow': 'Say them',
  'calls.refuse': 'Don’t say them',
  'calls.count': 'Lines at full draw: {said, number} said, {unsaid, number} not',
  'calls.allowed': 'Said, because you allowed them:',
  'calls.refused': 'Not spoken, because you chose so:',
  'calls.askAgain': 'Ask me again',
  'calls.neverSaid': 'Lines that are never said',
  'calls.order': 'Not spoken: “{found}” can be heard as an order to let the string go.',
  'calls.unseen': 'Not spoken: it holds characters that nobody can see.',
  'calls.mixed': 'Not spoken: “{found}” mixes letters of two alphabets, so what you read may not be what you hear.',
} as const;

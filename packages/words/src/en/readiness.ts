/** The archer's own word for today. */
export const readiness = {
  'readiness.fresh': 'fresh',
  'readiness.usual': 'as usual',
  'readiness.heavy': 'heavy',
  'readiness.freshEffect':
    'Fresh: nothing changes. A good day adds nothing, because only clean sessions climb the ladder.',
  'readiness.usualEffect': 'As usual: nothing changes.',
  'readiness.heavyNoMore': 'Heavy: nothing more is cut. Cuts are not added up, and a deeper one applies already.',
  'readiness.ask': 'How are you today?',
  'readiness.today': 'Today I am',
} as const;

const program = `{
  "format": "larkhold/program",
  "version": 1,
  "title": "Five short holds",
  "tool": "bow",
  "blocks": [
    {
      "title": "Holds",
      "drill": "holding",
      "sets": 1,
      "reps": 5,
      "draw": 3,
      "hold": 5,
      "letDown": 3,
      "rest": { "seconds": 20 }
    }
  ]
}
`;

const journal = JSON.stringify({
  format: 'larkhold/journal',
  version: 1,
  weeks: [],
  days: [{ date: '2026-11-24', arrows: [{ kind: 'blank bale', count: 36 }], note: 'windy; =1+1' }],
  drills: [
    {
      id: 'one',
      program: 'Five short holds',
      date: '2026-11-24',
      startedAt: '2026-11-24T06:30:00+01:00',
      endedAt: '2026-11-24T06:33:00+01:00',
      reps: [{ block: 0, set: 0, rep: 0, hand: 'usual', prescribedMs: 5000, heldMs: 5000, outcome: 'held' }],
      prescribedReps: 5,
      durationMs: 145_000,
      pain: false,
    },
  ],
  notes: [],
  milestones: [],
});

/** Files for tests of the prompt: a program that is right, one that is wrong, and a journal of one drill. */
export const trialFiles = {
  'good.drill.json': program,
  'bad.drill.json': program.replace('"hold": 5', '"hold": 500'),
  'j.json': journal,
};

import type { WeekPage } from '../journal/journal.ts';

/** Said after a morning on which every hold was held. */
export const heldNotes = [
  'Steady. Shoulders low all the way.',
  'Easy today. Could have gone on.',
  'Good line in the mirror.',
  'Quiet morning, slow breath, no shaking.',
  'Back did the work. Hand stayed soft.',
] as const;

/** Said after a morning with holds let down early. */
export const shortNotes = [
  'Bow shoulder came up near the end. Let down.',
  'Shook in the last set. Let down in time.',
  'Slept badly. Cut the last holds.',
  'Draw elbow dropped, so I let down.',
  'Anchor crept away from the jaw. Let down and breathed.',
  'Strong start, tired end.',
] as const;

/** Said on the morning that hurt. */
export const hurtNote = 'Pinch in the front of the bow shoulder. Stopped. Will ask before I go on.';

/** Said on the first morning after the layoff. */
export const backNote = 'Back after the break. Shoulder looked at, all well. Starting lower.';

/** Words for each step of feel, 1 to 5. */
export const feelWords: Record<number, readonly [string, ...string[]]> = {
  1: ['worn out', 'poor sleep'],
  2: ['heavy arms', 'tired'],
  3: ['ordinary', 'as most days'],
  4: ['rested', 'good day'],
  5: ['wide awake', 'strong'],
};

/** Said of a day's shooting. */
export const shootingNotes = [
  'Groups tight while I took my time.',
  'Windy. Kept to the process.',
  'Last dozen went wide. Stopped there.',
  'Blank bale first, then the face. It helps.',
] as const;

/** Pages to take in turn. */
export const weekWords: readonly Omit<WeekPage, 'week'>[] = [
  {
    goal: 'Three mornings, all holds with low shoulders.',
    focus: 'Bow shoulder stays down',
    wentRight: 'Set-up feels the same each time.',
    needsWork: 'I rush the first draw of the day.',
    carriedForward: 'Count two before every draw.',
  },
  {
    goal: 'Hold the line from elbow to bow hand.',
    focus: 'Draw elbow behind the arrow',
    wentRight: 'Holds are quieter than last month.',
    needsWork: 'Elbow sinks when I tire.',
    carriedForward: 'Let down as soon as the elbow sinks.',
  },
  {
    goal: 'Keep expanding through the hold.',
    focus: 'Reach, then keep reaching',
    wentRight: 'The last five seconds are no longer steady.',
    needsWork: 'Breath stops half way.',
    carriedForward: 'Breathe out before anchor.',
  },
];

/** What all of it is for. */
export const majorGoalWords = 'Shoot a whole indoor round as steadily at the end as at the start.';

/**
 * What is said beside a timeline's own cues, in English as cues bring their words: keys of the spoken packs, which have them in each language.
 * They are put together with '. ' between.
 */
export const phrases = {
  paused: 'Paused',
  letDown: 'Let down',
  resumed: 'Resumed',
  skipped: 'Skipped',
  moreRest: 'More rest',
  restCut: 'Rest cut short',
  stopAsked: 'Stop? Press again to stop',
  stopped: 'Stopped',
  timeLost: 'Time was lost',
  warmUp: 'Warm up first',
  saved: 'Saved',
  noAnswer: 'No answer',
  effortAsked: 'How hard was it? Zero to ten',
  howToAnswer: 'Up or down to choose',
  painAsked: 'Any pain? In a joint, or a sharp pain',
  pain: 'Yes. Stop for today',
  noPain: 'No',
  heldAsked: 'Was it held?',
  whyAsked: 'Why was it short? Form, tired, or interrupted?',
  rep: 'Rep',
  steps: { ready: 'Get ready', draw: 'Draw', hold: 'Hold', letDown: 'Let down', rest: 'Rest', setRest: 'Rest' },
  outcomes: { held: 'Held', short: 'Short', skipped: 'Skipped', unsure: 'No answer' },
  reasons: { form: 'Form', tired: 'Tired', interrupted: 'Interrupted' },
  counts: ['Zero', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten'],
  efforts: [
    ...['No effort', 'Hardly any', 'Light', 'Easy to keep up', 'Some effort', 'Clear effort'],
    ...['Tiring', 'Hard', 'Very hard', 'Nearly all I had', 'All I had'],
  ],
} as const;

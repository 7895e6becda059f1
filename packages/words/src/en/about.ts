/** The page that says what Larkhold is. */
export const about = {
  'about.emptyHands': 'Empty hands',
  'about.done': 'Done. {held, number} of {reps, number} held. In the app this is in the journal by now.',
  'about.title': 'About Larkhold',
  'about.description': 'What Larkhold is, a drill to try, program files to take, and how to put a drill into a page.',
  'about.thisPage': 'This page in English',
  'about.what':
    'An archer trains at home before work: a strung bow, no arrow, a mirror, and draws that are held and let down. Both hands are on the bow. Larkhold says what to do today and why, runs it by ear and at a glance, and makes tomorrow’s numbers from what was really held.',
  'about.open': 'Open the app',
  'about.try': 'Try it: thirty seconds, with empty hands',
  'about.place':
    'Put the device where you would see it from the shooting position, press Begin, and do with empty hands what you hear.',
  'about.neverLetGo':
    'With a real bow never let go of a drawn string with no arrow on it. Let down slowly, every time.',
  'about.pain': 'Stop on pain.',
  'about.programs': 'Programs to take',
  'about.files':
    'Plain files. Each follows one published source and names it. Open one on the rack, or change it in any editor.',
  'about.embed': 'A drill in a page of your own',
  'about.element': 'The drill is an element. Serve the folder {folder} of {package} beside your page:',
  'about.formats': 'File formats',
  'about.schemas': 'Everything is plain JSON with a schema: {program}, {season}, {journal}, {handOver}, {backup}.',
  'about.program': 'program',
  'about.season': 'season',
  'about.journal': 'journal',
  'about.handOver': 'hand-over',
  'about.backup': 'backup',
  'about.builtOn': 'What Larkhold is built on, and its {licences} in their own words.',
  'about.licences': 'licences',
  'about.footer':
    'Everything stays on this device. A qualified coach, medical advice, and club and local rules come before anything here.',
  'about.noScript': 'The drill needs JavaScript. Everything stays on this device.',
} as const;

/** What is said where the browser has lost what was kept. */
export const lost = {
  'lost.title': 'The journal on this device was lost',
  'lost.about':
    '{drills, plural, one {# drill was} other {# drills were}} kept here, the last on {lastDay, date, year}. The browser now finds {found, number}. Its database was damaged or cleared. What you do now is kept beside what comes back.',
  'lost.box':
    'This device was “{device}” in your box: pair it again and the journal comes back from your other devices.',
  'lost.openBackup': 'Open a backup',
  'lost.toBox': 'Pair with the box',
  'lost.goOn': 'Go on with what is here',
  'lost.restoreTitle': 'Bring the journal back',
  'lost.restoreAbout':
    'Open the newest backup, or the journal file of another device. It is shown first, merged with what is here, and can be undone.',
} as const;

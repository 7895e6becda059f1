/** What surrounds every place: navigation, notices, titles. */
export const app = {
  'app.places': 'Places',
  'app.skipToPage': 'Skip to the page',
  'app.saveEverything': 'Save everything as a file',
  'app.readingOlder': 'Reading the older drills …',
  'app.newer': 'A newer version is ready.',
  'app.useNow': 'Use it now',
  'app.fileWaits': 'A file that you opened is waiting.',
  'app.openInRack': 'Open it in the rack',
  'app.line': 'Line',
  'app.rack': 'Rack',
  'app.journal': 'Journal',
  'app.kit': 'Kit',
  'app.pageMissing': 'This page could not be loaded',
  'app.pageMissingAbout':
    'Its part of Larkhold did not come from the host: the network is gone, or the app was updated there. Nothing is lost, and the drill works.',
  'app.fetching': 'Loading it again.',
  'app.loadAgain': 'Load the whole app again',
  'app.partMissing':
    'A part of Larkhold could not be loaded from its host. What you see works; load the app again when the network is back.',
  'app.fault':
    'Something in Larkhold failed ({reason}). The last change may not be on disk. Save everything as a file, then load the page again.',
  'app.offlineReady': 'Ready to work without a network.',
} as const;

/**  */
export const app = {
  'app.places': 'Places',
  'app.skipToPage': 'Skip to the page',
  'app.saveEverything': 'Save everything as a file',
  'app.newer': 'A newer version is ready.',
  'app.useNow': 'Use it now',
  'app.fileWaits': 'A file that you opened is waiting.',
  'app.openInRack': 'Open it in the rack',
  'app.line': 'Line',
  'app.rack': 'Rack',
  'app.journal': 'Journal',
  'app.kit': 'Kit',
} as const;

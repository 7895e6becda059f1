/** What is wrong with what is kept, and with the sound. */
export const trouble = {
  'trouble.refused':
    'This browser keeps nothing for this page. What you do now lasts until the page is closed. Save it as a file before you leave.',
  'trouble.full':
    'The device has no room left, so the last change is not on disk. It is kept while the page is open. Save it as a file, then make room.',
  'trouble.blocked':
    'Another tab holds the journal. Close the other tabs and load this page again. Until then, save what you do as a file.',
  'trouble.damaged':
    'The journal on this device could not be read or written. What you do now lasts until the page is closed. Save it as a file.',
  'trouble.newer':
    'A newer version of the app has been opened on this device. Load this page again. Until then, save what you do as a file.',
  'trouble.notKept':
    '{thing, select, program {This program} drill {This drill} day {This day in the diary} week {This week page} note {This note} milestone {This milestone} kit {This part of the kit} running {The drill under way} goal {The major goal} season {This season} other {This part of a newer app}} was not kept. {reason} Change it and try again.',
  'trouble.notKeptAt':
    '{thing, select, program {This program} drill {This drill} day {This day in the diary} week {This week page} note {This note} milestone {This milestone} kit {This part of the kit} running {The drill under way} goal {The major goal} season {This season} other {This part of a newer app}} was not kept ({where}). {reason} Change it and try again.',
  'trouble.tooLong': 'It has {length, number} characters, and at most {most, number} fit.',
  'trouble.nothingOnDisk': 'There is nothing on the disk.',
  'trouble.diskUnread': 'The browser does not let the disk be read.',
  'trouble.close': 'Close',
  'trouble.noSound': 'This device has no sound. Follow the screen.',
  'trouble.soundRefused':
    'The browser does not let sound begin yet. Press anything to start it; until then follow the screen.',
  'trouble.soundStalled': 'The sound has stopped. Follow the screen; it comes back by itself when it can.',
  'trouble.wordless': 'The spoken words did not load. Tones sound in their place.',
} as const;

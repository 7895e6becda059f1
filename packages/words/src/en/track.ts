/** Cues as a sound file. */
export const track = {
  'track.title': 'Cues as a sound file',
  'track.about':
    "Today's cues at their times, to be played with the screen locked or by another player. It can't be paused by a press, and logs nothing.",
  'track.kind': 'Kind',
  'track.webm': 'Opus in WebM, small',
  'track.wav': 'WAV, plays everywhere',
  'track.make': 'Make the file',
  'track.progress': 'Made so far',
  'track.cancel': 'Cancel',
  'track.saved': 'Saved: {file}, {size, number} MB.',
  'track.cancelled': 'Cancelled. Nothing was saved.',
  'track.cannotKind': 'Not made: this browser cannot write that kind. Choose WAV.',
  'track.failed': 'Not made: {reason}',
} as const;

/** The buttons and notices of a drill. */
export const drill = {
  'drill.begin': 'Begin',
  'drill.warmUp': 'Warm up first: {lines}.',
  'drill.stopAsked': 'Stop the drill? Press again to stop. What you did is kept.',
  'drill.keepGoing': 'Keep going',
  'drill.group': 'Drill',
  'drill.letDownNow': 'Let down now',
  'drill.skip': 'Skip',
  'drill.moreRest': 'More rest',
  'drill.lessRest': 'End rest',
  'drill.warmUpLine': 'Warm up: {line}',
  'drill.goOn': 'Go on',
  'drill.stop': 'Stop',
  'drill.resume': 'Resume',
  'drill.pause': 'Pause',
  'drill.otherHand': 'Other hand',
  'drill.gamepadGone': 'The gamepad is gone. The drill goes on; use a key or the screen.',
  'drill.screenMaySleep': 'This device may switch the screen off. Set it to stay on, or follow the sound.',
  'drill.soundMissing': 'The sound did not start. Follow the screen.',
  'drill.timeLost':
    'Time was lost: the device slept or the page stopped. A rep that was running is marked unsure. Press Resume to go on.',
  'drill.hidden':
    'The page was hidden and could not be heard. A rep that was running is marked unsure. Press Resume to go on.',
  'drill.noMicrophone': 'The microphone is not allowed or not there. Claps are not heard; use a key or the screen.',
  'drill.microphoneGone': 'The microphone is gone. Claps are not heard; use a key or the screen.',
  'drill.tooSmall': 'The digits are too small for {distance}. On this screen they read well up to {reach}.',
  'drill.tooSmallByMirror':
    'The digits are too small for {distance}. On this screen they read well up to {reach} in all, by the mirror.',
} as const;

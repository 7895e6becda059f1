/** What can be wrong with a box, in words for the archer. */
export const boxTrouble = {
  'boxTrouble.gone': 'The box could not be reached. Everything is kept here and goes there when it can.',
  'boxTrouble.slow': 'The box did not answer in time. It is tried again later; everything is kept here.',
  'boxTrouble.full':
    'The host of the box has no room left. Nothing is lost: everything is kept here. Ask whoever hosts the box to make room.',
  'boxTrouble.refused':
    'The host of the box asks for a password or does not let this app in. Everything is kept here. Ask whoever hosts the box.',
  'boxTrouble.fault': 'The host of the box has a fault of its own. It is tried again later; everything is kept here.',
  'boxTrouble.noBox':
    'The address answers with something that is not a box, such as a page that asks to sign in. Everything is kept here. Check the address with whoever hosts the box.',
  'boxTrouble.noLeave': 'The browser no longer lets this app use the folder. Press “Meet now” to allow it again.',
  'boxTrouble.missing':
    'A file of {title} was gone from the box before it could be read. It is looked for again later.',
  'boxTrouble.enormous': 'A file of {title} in the box is too big to be a journal. It was left alone.',
  'boxTrouble.damaged':
    'A file of {title} in the box is cut off or was changed. It was left alone; that device puts a whole one there when it next has news.',
  'boxTrouble.foreign':
    'A file of {title} in the box is sealed with another secret, or belongs to another box. It was left alone.',
  'boxTrouble.swapped':
    'A file in the box lies under the name of {title}, but that device did not write it. It was left alone.',
  'boxTrouble.replayed': 'Somebody put an old file of {title} back into the box. Nothing came back by it.',
  'boxTrouble.newer':
    'A newer version of the app runs on {title}. Update the app here to read what it wrote; nothing is lost until then.',
  'boxTrouble.nameTaken':
    "Another device wrote into the box under this device's name. What it wrote was read, and this device goes on under a new name.",
  'boxTrouble.aDevice': 'another device',
} as const;

/** What a person would have to write where a text stops being JSON. */
const wanted =
  '{wanted, select, start {an opening curly bracket} value {a value, such as 30, true or a text in quotes} valueOrEnd {a value or a closing square bracket} key {a key in quotes} keyOrEnd {a key in quotes or a closing curly bracket} colon {a colon} memberEnd {a comma or a closing curly bracket} entryEnd {a comma or a closing square bracket} quote {a closing quote} escape {one of the escapes of JSON, such as \\n or \\u00e9} hex {four hexadecimal digits} straight {a straight double quote} number {a number such as 30, 0.5 or -2} other {the end of the file}}' as const;

/**
 * Everything that can be wrong in a file, in English: the only place for it. Unicode (ICU) message format, as far as
 * `fillSentence` knows it. `packages/words` has the same keys in every other language.
 */
export const faultSentences = {
  // What is found, and where a key is lacking: said before and after the fault itself.
  'fault.missing': 'The key "{key}" is missing.',
  'fault.found': 'Found {found}.',
  'fault.foundList': 'Found a list of {count}.',
  'fault.foundObject': 'Found an object.',
  // The text of a file.
  'fault.empty':
    "The file is empty. A {thing, select, program {program} season {season} other {Larkhold}} file is JSON text that begins with '{'.",
  'fault.fileTooLarge':
    'The file is larger than 1 MiB and was not read. A {thing, select, program {program} season {season} other {Larkhold}} file is a page or two of text.',
  'fault.notJson': `This is not JSON: expected ${wanted}, found “{seen}”. Check for a comma, a quote or a bracket that is missing, or one too many, just before this place.`,
  'fault.jsonEnds': `This is not JSON: the file ends too early. Expected ${wanted}. The file may be cut off, or a quote or a bracket is missing before this place.`,
  'fault.keyTooLong': 'This key is {length} characters long; no key of such a file is. Remove it.',
  'fault.keyTwice': 'The key "{key}" is in the same object twice. Keep one.',
  'fault.halfCharacter': 'This text holds half of a character (a lone surrogate). Type it again.',
  'fault.control':
    'This text holds the control character {character}. Remove it; only tabs (\\t) and line breaks (\\n) may stay.',
  'fault.bareTab': 'This is not JSON: a text holds the bare control character {character}. Write it as \\t.',
  'fault.bareControl':
    'This is not JSON: a text holds the bare control character {character}. Write it as an escape, or remove it.',
  'fault.textBreaks':
    'This is not JSON: a text breaks off at the end of its line. Close it with a quote, or write a line break as \\n.',
  'fault.numberTooLarge': 'This number is too large to be used.',
  'fault.textTooLong':
    'This text is longer than {most} characters; no text of a {thing, select, program {program} season {season} other {Larkhold file}} is. The file was not read.',
  'fault.tooDeep':
    'The file nests more than {most} levels deep; a {thing, select, program {program} season {season} other {Larkhold file}} needs fewer.',
  'fault.tooManyValues':
    'The file holds more than {most} values; a {thing, select, program {program} season {season} other {Larkhold file}} holds fewer. It was not read.',
  // Whether a file is ours, and of a version that is known.
  'fault.notObject':
    "A {thing, select, program {program} season {season} other {Larkhold}} file is an object in '{ }'. This is something else.",
  'fault.noFormat':
    'Expected "format": "{expected}". This file has no "format": it is not a {thing, select, program {program} season {season} other {Larkhold file}}.',
  'fault.otherFormat':
    'Expected "format": "{expected}". This file says {found}: it is not a {thing, select, program {program} season {season} other {Larkhold file}}.',
  'fault.noVersion': 'Expected "version", a whole number from {least}.',
  'fault.newer':
    'This file is version {version}, newer than this Larkhold reads (up to version {newest}). Update Larkhold to open it.',
  'fault.moreProblems': 'There {count, plural, one {is # more problem} other {are # more problems}} from here on.',
  'fault.tooBig':
    'This file is too big to be {thing, select, journal {a journal} backup {a backup} handOver {a hand-over} other {a box file}}: {length} characters, at most {most}.',
  'fault.notThis':
    'This file is not {thing, select, journal {a journal} backup {a backup} handOver {a hand-over} other {a box file}}: expected "{expected}", found {found}.',
  'fault.notThisNothing':
    'This file is not {thing, select, journal {a journal} backup {a backup} handOver {a hand-over} other {a box file}}: expected "{expected}", found nothing.',
  'fault.foul': 'No file may have this: a key called "__proto__", or values nested without end.',
  'fault.notItsVersion': 'This file says it is version {version}, but it does not hold what that version holds.',
  // A file's bytes.
  'fault.unreadable': 'The file can’t be read. It may have been moved, or is a folder. Nothing was changed.',
  'fault.encoding': 'The file is written in {encoding}. Save it again as UTF-8 and open it.',
  'fault.notUtf8':
    'The file is not text in UTF-8: a character on this line can’t be read. Save it again as UTF-8 and open it.',
  // One value.
  'fault.unknownKey': 'The key "{key}" is not known here. Remove it or check its spelling.',
  'fault.type':
    'Expected {type, select, int {a whole number} number {a number} string {a text in quotes} array {a list in [ ]} object {an object} boolean {true or false} other {another kind of value}}.',
  'fault.atLeast': 'Expected at least {limit}.',
  'fault.moreThan': 'Expected more than {limit}.',
  'fault.atMost': 'Expected at most {limit}.',
  'fault.lessThan': 'Expected less than {limit}.',
  'fault.atLeastCharacters': 'Expected at least {limit, plural, one {# character} other {# characters}}.',
  'fault.atMostCharacters': 'Expected at most {limit, plural, one {# character} other {# characters}}.',
  'fault.atLeastEntries': 'Expected at least {limit, plural, one {# entry} other {# entries}}.',
  'fault.atMostEntries': 'Expected at most {limit, plural, one {# entry} other {# entries}}.',
  'fault.oneOf': 'Expected {choices}.',
  'fault.uuid': 'Expected a UUID, as 8-4-4-4-12 hexadecimal digits.',
  'fault.date': 'Expected a day that exists, such as 2026-11-25.',
  'fault.datetime': 'Expected a day and time with its offset, such as 2026-11-25T06:30:00Z.',
  'fault.form': 'Expected one of the forms in the program file page.',
  'fault.unfit': 'This value does not fit here.',
  'fault.instantYears':
    'Expected a date and time of the years 1900 to 2999 with an offset, such as 2026-11-25T06:30:00Z.',
  'fault.stamp': 'Expected the date and time of an edit with an offset, such as 2026-11-25T06:30:00Z.',
  'fault.dayYears': 'Expected a day of a year from 1900 to 2999.',
  'fault.weekYears': 'Expected a week of a year from 1900 to 2999, such as 2026-W48.',
  'fault.seenBackwards': 'Expected a hold that was seen to end after it began.',
  // The rules of a program.
  'fault.tooLong': 'The whole program may take 4 hours; this one can take {hours}. Take off sets, reps or rest.',
  'fault.testVersion':
    '"kind" and "measure" came with version 2 of the program file. Write "version": 2. Found {version}.',
  'fault.measureAlone': 'Only a test has a measure. Add "kind": "test", or remove this key.',
  'fault.measureMissing': 'The key "measure" is missing: a test says what it counts. Expected {choices}.',
  'fault.testBlocks': 'A test has one block. Remove this one.',
  'fault.testSets': 'A test has one set. Found {found}.',
  'fault.testReps': 'A test of the longest hold has one rep, for a second one is tired. Found {found}.',
  'fault.testHands':
    'A test is done with one hand, or nobody can say which of the two failed. Expected "usual" or "opposite".',
  'fault.testLadder': 'A test is the same each time, so its block has no ladder. Remove this key.',
  'fault.tenths': 'Give seconds to a tenth at the finest. Found {found}.',
  'fault.setRestMissing':
    'The key "setRest" is missing: it is needed because {why, select, sets {there is more than one set} follows {another block follows} other {the ladder raises the sets}}. Give seconds, 0 to 1800.',
  'fault.endlessLadder':
    'These set back a rung that sets {lever, select, hold {the hold} reps {the reps} sets {the sets} addedWeight {the added weight} other {it}} back in turn: the ladder would never end. Leave one of the two out.',
  'fault.layoffOrder': 'Expected more than {before}: days rise from entry to entry. Found {found}.',
  'fault.resetsItself': 'A rung cannot set back what it raises itself.',
  'fault.resetTooHigh':
    'Expected a value below the "until" of an earlier rung that raises {lever, select, hold {the hold} reps {the reps} sets {the sets} addedWeight {the added weight} other {it}}, or below the block\'s own, {own}. Found {found}.',
  'fault.untilOwn':
    "Expected more than the block's own {lever, select, hold {hold} reps {reps} sets {sets} addedWeight {added weight} other {value}}, {from}. Found {found}: this rung could never be climbed.",
  'fault.untilEarlier':
    "Expected more than an earlier rung's {lever, select, hold {hold} reps {reps} sets {sets} addedWeight {added weight} other {value}}, {from}. Found {found}: this rung could never be climbed.",
  // The rules of a season.
  'fault.endsBefore': 'Expected {first} or later. Found {found}: it would end before it begins.',
  'fault.weekBeyond': 'Expected at most {weeks}, for the block has no more weeks. Found {found}.',
  'fault.weekTwice': 'Week {week} is named twice. Keep one.',
  'fault.tooManyDays': 'Expected at most {most} days. Found {found}.',
  'fault.dayOutside': 'Expected a day from {from} to {to}. Found {found}.',
  'fault.dayTwice': '{day} is named twice. Write its programs in one session.',
  // A quick line.
  'fault.lineTooLong': 'Expected at most {most} characters. Found {length}.',
  'fault.lineLacks': 'Something is missing: say, for instance, {example}.',
  'fault.lineSetRest': 'More than one set needs a rest after each: say, for instance, set rest 2m.',
  'fault.notUnderstood': '"{text}" is not understood here. See the quick line page.',
  'fault.saidTwice': '"{text}" repeats what the line says already. Keep one.',
} as const;

/** What `larkhold` prints at a prompt. */
export const prompt = {
  'prompt.good':
    '{path}: {kind, select, program {a program file} season {a season file} journal {a journal file} backup {a backup file} other {a hand-over file}}, all right',
  'prompt.note': '{path}: note: {notice}',
  'prompt.unread': '{path}: can’t be read ({cause}). Check the name and try again.',
  'prompt.unwritten': '{path}: can’t be written ({cause}). Nothing was changed.',
  'prompt.otherKind':
    '{path}: this is {kind, select, program {a program file} season {a season file} journal {a journal file} backup {a backup file} other {a hand-over file}}. Expected: {kinds}.',
  'prompt.kind':
    '{kind, select, program {a program file} season {a season file} journal {a journal file} backup {a backup file} other {a hand-over file}}',
  'prompt.canonical': '{path}: in canonical form',
  'prompt.notCanonical': '{path}: not in canonical form. `larkhold format --write` writes it so.',
  'prompt.noDrill': 'There is no drill on {on, date, year}, so there are no cues.',
  'prompt.noProgram': 'There is no program “{name}”. The backup and the built-in ones have:',
  'prompt.drill': '{program}, {date}',
  'prompt.dose': '{title}: {dose}',
  'prompt.rest': 'Rest: {why}',
  'prompt.why': 'Why',
  'prompt.care': 'Take care',
  'prompt.held': '{ms, number, duration} at full draw',
  'prompt.meeting': 'Meeting the box …',
  'prompt.nothingNew': 'Nothing is new.',
  'prompt.noSecret':
    'The box’s secret is missing. Put the pairing link into a file and name it with --secret-file, or into {variable}.',
  'prompt.noFolder': 'This box is in a folder. Name it with --folder.',
  'prompt.noOrigin': 'This box is on the app’s own host. Name its address with --origin.',
  'prompt.otherBox': '{path}: this is not of this box, or is not whole. Remove it to meet the box as a new device.',
  'prompt.language': 'There is no language “{tag}”. Expected one of: {tags}.',
} as const;

import type { outlook as en } from '../en/outlook.ts';

/** What a drill will do to the archer, by the model. */
export const outlook: Readonly<Record<keyof typeof en, string>> = {
  'outlook.holds':
    'Du solltest alle {count, number} halten. Im schwersten Moment bleiben etwa {left, number, share} übrig (geschätzt).',
  'outlook.holdsAtLimit':
    'Nach der Schätzung kannst du alle {count, number} nur gerade noch halten: Die schwerste wird an deiner Grenze sein, fast nichts bleibt übrig. Setz ab, wenn die Form nachlässt.',
  'outlook.holdsOneAtLimit':
    'Nach der Schätzung schaffst du den Halt nur gerade noch: Das Ende wird an deiner Grenze sein, fast nichts bleibt übrig. Setz ab, wenn die Form nachlässt.',
  'outlook.holdsOne': 'Du solltest den Halt schaffen. Am Ende bleiben etwa {left, number, share} übrig (geschätzt).',
  'outlook.heldBefore': 'So viel wie heute hast du am {day, date, long} gehalten. Setz ab, wenn die Form nachlässt.',
  'outlook.fails': 'Nach der Schätzung könntest du in {place} nach {ms, number, seconds} nicht mehr halten.',
  'outlook.careful':
    'Vorsichtig gelesen, mit Kraft, die in 72 Sekunden zur Hälfte wiederkommt, ist bei {place} Schluss. Die Schätzung ist freundlicher: Nach ihr solltest du alle halten.',
  'outlook.nothing': 'Es gibt nichts zu halten.',
  'outlook.afterFirst': 'Nach dem ersten Halt sind {left, number, share} übrig.',
  'outlook.lowest': 'Der schwerste Moment ist in {place}.',
  'outlook.rangeHolds':
    'Bei einem längsten Halt von {longest, number, seconds} solltest du jede Wiederholung halten, mit etwa {left, number, share} im schwersten Moment (gepunktet).',
  'outlook.rangeAtLimit':
    'Bei einem längsten Halt von {longest, number, seconds} kannst du jede Wiederholung nur gerade noch halten, die schwerste an deiner Grenze (gepunktet).',
  'outlook.rangeFails':
    'Bei einem längsten Halt von {longest, number, seconds} könntest du in {place} nach {ms, number, seconds} nicht mehr halten (gepunktet).',
  'outlook.unknown': 'Noch nicht bekannt: zu wenige Daten.',
  'outlook.rep': 'Wiederholung {rep, number}',
  'outlook.repInSet': 'Wiederholung {rep, number} von Satz {set, number}',
  'outlook.repInBlock': 'Wiederholung {rep, number} von {title}',
  'outlook.repInSetOfBlock': 'Wiederholung {rep, number} von Satz {set, number} von {title}',
  'outlook.caution':
    'Das beschreibt ein Modell eines ermüdeten Muskels. Es wurde nicht an Bogenschützen geeicht und urteilt über leichte Übungen milde. Setz ab, wenn die Form nachlässt.',
  'outlook.top': 'Oben: frisch. Unten: leer.',
  'outlook.dashed': 'Gestrichelt: Hier könntest du nicht mehr halten',
  'outlook.noCurve': 'Noch keine Kurve.',
  'outlook.howHard': 'Wie schwer es wird',
  'outlook.otherTool':
    'Das nimmt an, dass {tool, select, light {der leichte Bogen} band {das Zugband} other {der Gurt}} so schwer zieht wie der Bogen deines längsten Halts. Mit weniger Zug bleibt mehr übrig.',
};

import type { clash as en } from '../en/clash.ts';

/** Fields that two devices changed, each in its own way. */
export const clash: Readonly<Record<keyof typeof en, string>> = {
  'clash.shootingEffort': 'Anstrengung beim Schießen {effort, number}',
  'clash.shootingMinutes': '{minutes, number} min Schießen',
  'clash.noPain': 'keine Schmerzen',
  'clash.plannedDay': 'geplanter Tag',
  'clash.weekOf': '{week} {year}',
  'clash.place': 'Ort: „{text}“',
  'clash.feel': 'Gefühl: „{text}“',
  'clash.note': 'Notiz: „{text}“',
  'clash.goal': 'Ziel: „{text}“',
  'clash.focus': 'Schwerpunkt: „{text}“',
  'clash.wentRight': 'was gut ging: „{text}“',
  'clash.needsWork': 'woran zu arbeiten ist: „{text}“',
  'clash.carriedForward': 'was in die nächste Woche mitgeht: „{text}“',
  'clash.comment': 'Kommentar: „{text}“',
  'clash.work':
    '{minutes, number} min {kind, select, strength {Kraft} mobility {Beweglichkeit} fitness {Ausdauer} other {anderes Training}}',
  'clash.readiness': 'Tagesform: {word}',
  'clash.pain': 'Schmerzen',
  'clash.sketch': 'eine Skizze',
  'clash.plannedDays': '{n, plural, one {# geplanter Tag} other {# geplante Tage}}',
  'clash.both':
    '{n, plural, one {# Tag oder Woche} other {# Tage oder Wochen}} auf beiden Seiten geschrieben: Die spätere Fassung bleibt',
  'clash.ours': '{day}: Was hier steht, bleibt. Weggelassen: {left}',
  'clash.theirs': '{day}: Was in der Datei steht, bleibt. Weggelassen: {left}',
  'clash.earlier': 'Und {n, plural, one {# früherer} other {# frühere}}.',
};

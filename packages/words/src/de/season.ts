import type { season as en } from '../en/season.ts';

/** The season: what is due and why, what a season says, and what of it does not come about. */
export const season: Readonly<Record<keyof typeof en, string>> = {
  'due.weekday': 'Woche {week, number} von {weeks, number} in „{block}“.',
  'due.sensible':
    'Zwei oder drei Morgen in der Woche, nie zwei Tage nacheinander, solange keine eigene Saison etwas anderes sagt.',
  'due.coach': '{by} hat diesen Tag für dich geschrieben.',
  'due.test': 'Heute steht ein Test an: {title}. Er wird so gemacht, wie er geschrieben ist.',
  'due.testLate':
    'Der Test vom {day, date, plain} steht noch aus: {title}. Er wird so gemacht, wie er geschrieben ist.',
  'due.lighterWeek': 'Eine leichtere Woche: {share, number, share} der Wiederholungen.',
  'due.taper': '„{title}“ ist am {day, date, plain}: bis dahin {share, number, share} der Wiederholungen.',
  'due.taken': 'Dieses Programm hast du für heute genommen.',
  'due.takenInstead': 'Dieses Programm hast du für heute genommen. In der Saison vorgesehen: {titles}.',
  'due.then': 'Danach: {title}',
  'due.doneToo': '{title}: heute geschafft.',
  'due.restPain': 'Schmerzen am {day, date, plain}: keine Übung.',
  'due.restCompetition': '„{title}“ läuft: keine Übung.',
  'due.restBefore': '„{title}“ ist morgen: Ruh dich heute aus.',
  'due.restDay': 'Ein Ruhetag bis zum {to, date, plain}.',
  'due.restDayWhy': 'Ein Ruhetag bis zum {to, date, plain}: {why}.',
  'due.restRow':
    '{days, plural, one {# Tag} other {# Tage}} nacheinander mit dem Bogen in der Hand: Ruh dich heute aus. Nie mehr als sechs nacheinander (bow-international.com, „Ask the experts“).',
  'due.restYoung':
    'Am {day, date, plain} war eine Übung. Unter 16 sind es zwei oder drei Tage in der Woche, nie zwei nacheinander: Ruh dich heute aus (internationaler Konsens 2014, Lloyd und andere).',
  'due.restNoSession': 'Heute ist nichts geplant. Die nächste Übung ist am {day, date, long}.',
  'due.restSensible':
    'Heute ist nichts geplant: zwei oder drei Morgen in der Woche, nie zwei Tage nacheinander. Der nächste ist {day, date, long}.',
  'due.restNothing': 'Heute ist nichts geplant, auch nicht in den nächsten vier Wochen.',
  'due.restCoach': '{by} hat für heute keine Übung geschrieben. Die nächste ist am {day, date, long}.',
  'due.restCoachLast': '{by} hat für heute keine Übung geschrieben.',
  'due.restMissing':
    'Heute vorgesehen: {titles}. Das fehlt in deinem Regal. Nichts tritt an die Stelle: Öffne die Programmdatei oder nimm ein anderes Programm.',
  'due.restOutside': 'Deine Saison sagt nichts über heute. Sie geht am {day, date, long} weiter.',
  'due.restOver':
    'Deine Saison ist vorbei. Schreib die nächste, oder geh zurück zu zwei oder drei Morgen in der Woche.',
  'notice.blocksOverlap':
    '„{title}“ und „{wins}“ überschneiden sich vom {from, date, year} bis zum {to, date, year}. Dort zählt der Block, der später beginnt, „{wins}“; zusammengezählt wird nicht.',
  'notice.answersOverlap':
    'Was {by} geschrieben hat, überschneidet sich vom {from, date, year} bis zum {to, date, year} mit einer späteren Antwort vom {wins, date, year}. Dort zählt die spätere; zusammengezählt wird nicht.',
  'notice.testNearCompetition':
    'Der Test „{title}“ am {day, date, year} liegt auf einem Wettkampf oder in den zwei Tagen davor. Er wartet bis danach, höchstens eine Woche.',
  'notice.testOnRestDay':
    'Der Test „{title}“ am {day, date, year} liegt auf einem Ruhetag. Er wartet bis danach, höchstens eine Woche.',
  'notice.notATest': '„{title}“ ist kein Test: Es misst nichts. Am {day, date, year} steht es als Übung an.',
  'notice.everyDay':
    '„{title}“ hat an allen sieben Tagen eine Übung. Nach sechs Tagen nacheinander ist trotzdem ein Ruhetag.',
  'notice.sessionOnRestDay':
    'Was {by} für den {day, date, year} geschrieben hat, liegt auf einem Ruhetag, auf einem Wettkampf oder am Tag davor. Dieser Tag bleibt ein Ruhetag.',
  'notice.programMissing':
    'Ein Programm „{title}“ gibt es hier nicht. An seinen Tagen fehlt es, bis es geöffnet wird; nichts tritt an seine Stelle.',
  'leads.title': 'Wofür heute zählt',
  'leads.clean': '{title}: Sauber geübt zählt es ganz. {next}',
  'leads.place': '{title}: Heute hält es die Stufe und steigt nicht, so sauber es auch ist.',
  'leads.fixed': '{title}: keine Stufen. Es bleibt, wie es ist.',
  'leads.next': '{title}: {next}',
  'next.title': 'Was nach {program} kommt',
  'next.about': 'Herausgewachsen? Von selbst ändert sich nichts.',
  'next.take': 'Heute {title} nehmen',
};

import type { reason as en } from '../en/reason.ts';

/** Why today's numbers are what they are: one message for every rule. */
export const reason: Readonly<Record<keyof typeof en, string>> = {
  'reason.dose':
    '{sets, plural, one {# Satz} other {# Sätze}} mit {reps, plural, one {# Wiederholung} other {# Wiederholungen}}, {hold, number, seconds} halten',
  'reason.doseAdded':
    '{sets, plural, one {# Satz} other {# Sätze}} mit {reps, plural, one {# Wiederholung} other {# Wiederholungen}}, {hold, number, seconds} halten, {weight} zusätzlich',
  'reason.lessHold': 'Haltezeit von {from, number, seconds} auf {to, number, seconds}',
  'reason.lessReps': 'Wiederholungen von {from, number} auf {to, number}',
  'reason.lessSets': 'Sätze von {from, number} auf {to, number}',
  'reason.lessWeight': 'Zusatzgewicht von {from} auf {to}',
  'reason.nextMost': 'Als Nächstes käme mehr Gewicht, aber {most} zusätzlich ist das Höchste.',
  'reason.nextWaits': 'Als Nächstes kommt mehr Gewicht, aber nicht vor Ablauf der zwei Wochen.',
  'reason.nextCut': 'Die Stufen gehen weiter, aber nur die ersten {most, number} zählen.',
  'reason.nextTop': 'Das ist die oberste Stufe.',
  'reason.next':
    'Noch {days, plural, one {ein sauberer Tag} other {# saubere Tage}} bis zum nächsten Schritt: {change}.',
  'reason.fixed': '{title}: {dose}, wie das Programm es sagt. Es hat keine Stufen.',
  'reason.start': '{title}: {dose}, so beginnt das Programm. {next}',
  'reason.climb':
    '{title}: {change}, nach {days, plural, one {# sauberen Tag} other {# sauberen Tagen}} in Folge, zuletzt am {on, date, plain}. {next}',
  'reason.recover':
    '{title}: {change}, nach {days, plural, one {# sauberen Tag} other {# sauberen Tagen}}, zuletzt am {on, date, plain}; es geht in kleinen Schritten wieder hinauf. {next}',
  'reason.stepDown':
    '{title}: {change}, weil am {on, date, plain} zu viele Halte zu früh abgesetzt oder ausgelassen wurden. {next}',
  'reason.strain':
    '{title}: {change}, weil die Anstrengung immer wieder bei neun oder zehn lag, zuletzt am {on, date, plain}. {next}',
  'reason.layoff': '{title}: {change}, nach {days, plural, one {# Tag} other {# Tagen}} ohne Bogen und Zugband. {next}',
  'reason.sore': '{title}: {change}, weil du am {on, date, plain} Schmerzen hattest. {next}',
  'reason.firstTest': '{title}: {dose} zum Anfang, weil ein Test {longest, number, seconds} ergab. {next}',
  'reason.firstFailures':
    '{title}: {dose} zum Anfang, weil dein längster Halt etwa {longest, number, seconds} dauert. {next}',
  'reason.firstAnswer':
    '{title}: {dose} zum Anfang, weil du gesagt hast, dass du {longest, number, seconds} halten kannst. {next}',
  'reason.firstHeld':
    '{title}: {dose} zum Anfang, weil du in anderen Übungen {known, number, seconds} gehalten hast. {next}',
  'reason.firstCautious':
    '{title}: {dose} zum Anfang, weil du bisher {known, number, seconds} gehalten hast und niemand weiß, wie viel mehr es sein kann. Ein Test oder deine eigene Angabe zum längsten Halt würde es zeigen. {next}',
  'reason.top':
    '{title}: Das ist die oberste Stufe. Wenn es leicht bleibt, mach einen Test und frag deine Trainerin oder deinen Trainer, was als Nächstes kommt.',
  'reason.topNext': '{title}: Das ist die oberste Stufe. Wenn es leicht bleibt, mach mit {program} weiter.',
  'reason.stuck':
    '{title}: Ein Halt von {hold, number, seconds} ist {times, plural, one {# Mal} other {# Mal}} nicht gelungen. Mach einen Test oder nimm ein Programm mit kürzeren Halten; deine Trainerin oder dein Trainer sieht vielleicht, woran es liegt.',
  'reason.away':
    '{title}: {change}, nach {days, plural, one {# Tag} other {# Tagen}} ohne Bogen und Zugband. Die Anteile sind unsere eigenen.',
  'reason.awayOlder':
    '{title}: {change}, nach {days, plural, one {# Tag} other {# Tagen}} ohne Bogen und Zugband. Über 45 geht es schneller verloren. Die Anteile sind unsere eigenen.',
  'reason.yearAway':
    'Nach {days, plural, one {# Tag} other {# Tagen}} Abstand beginn mit leichteren Wurfarmen oder einem Zugband und ohne Zusatzgewicht.',
  'reason.wayBack':
    '{title}: {change}, auf dem Weg zurück nach Schmerzen am {on, date, plain}: {stage, select, mimed {ohne etwas in der Hand} band {mit dem Zugband} light {mit einem leichten Bogen} other {mit deinem eigenen Bogen}}, noch {days, plural, one {# Tag} other {# Tage}} ohne Schmerzen.',
  'reason.elsewhere':
    '{title}: {change}, weil am {on, date, plain} die meisten Wiederholungen einer anderen Übung nur {held, number, seconds} von {asked, number, seconds} gehalten wurden.',
  'reason.deload':
    '{title}: {cut}, weil das Trainingswoche {week, number} ist und alle {every, number} Wochen eine leichtere kommt.',
  'reason.taper':
    '{title}: {cut}, weil am {on, date, plain} der Wettkampf ist: weniger Wiederholungen, die Haltezeit bleibt.',
  'reason.taperToday': '{title}: {cut}, weil heute der Wettkampf ist.',
  'reason.effort': '{title}: {cut}, weil die Anstrengung beim letzten Mal {effort, number} von 10 war.',
  'reason.heavy': '{title}: {cut}, weil du gesagt hast, dass du heute schlapp bist.',
  'reason.arrows':
    '{title}: {cut}, weil du {day, select, today {heute} other {gestern}} {arrows, number} Pfeile geschossen hast. Eine Faustregel: nach {many, number} Pfeilen etwas weniger.',
  'reason.cut': '{reps, plural, one {# Wiederholung} other {# Wiederholungen}} statt {from, number}',
  'reason.cutLeast': '{reps, plural, one {# Wiederholung} other {# Wiederholungen}}, weniger geht nicht',
  'reason.afterPain':
    '{title}: {change}, nach den Schmerzen am {on, date, plain}: Haltezeit und Zeit im Vollauszug wachsen höchstens um ein Fünftel, oder um eine Sekunde und eine Wiederholung, über das hinaus, was du seitdem getan hast. Der Schritt ist unser eigener.',
  'reason.cap':
    '{title}: {change}. Solange etwas erleichtert ist, steigt nichts über das Höchste der letzten {drills, plural, one {Übung} other {# Übungen}}.',
  'reason.pace':
    '{title}: {sets, number} × {reps, number} statt {fromSets, number} × {fromReps, number}, damit die Zeit im Vollauszug von Übung zu Übung höchstens um ein Fünftel wächst; bis zu dem, womit das Programm beginnt, darf sie sich verdreifachen. Diese Grenze ist unsere eigene.',
  'reason.weeklyGrowth':
    '{title}: {sets, number} × {reps, number} statt {fromSets, number} × {fromReps, number}, damit diese sieben Tage höchstens {growth, number, ratio}-mal die {mean, number, seconds} der letzten Trainingswochen enthalten; {done, number, seconds} sind getan. Das ist eine Gewohnheit, kein bewiesener Schutz: Buist und andere fanden 2008 mit einer solchen Grenze nicht weniger Verletzungen.',
  'reason.weeklyGrowthLeast':
    '{title}: {sets, number} × {reps, number}, weniger geht nicht, damit diese sieben Tage höchstens {growth, number, ratio}-mal die {mean, number, seconds} der letzten Trainingswochen enthalten; {done, number, seconds} sind getan. Das ist eine Gewohnheit, kein bewiesener Schutz: Buist und andere fanden 2008 mit einer solchen Grenze nicht weniger Verletzungen.',
  'reason.weightWaits':
    '{title}: {weight} zusätzlich, noch nicht {wished}. Gewicht wartet die ersten zwei Wochen ab und steigt höchstens alle zwei Wochen um {step}, über alle Programme.',
  'reason.weightMost':
    '{title}: {weight} zusätzlich, nicht {wished}. Das Höchste ist {most}, {limit} oder ein Fünftel des Bogens, wenn die Datei einer Trainerin oder eines Trainers nicht mehr sagt.',
  'reason.ageChild': 'Unter 12: Nimm ein Zugband, keinen Bogen.',
  'reason.ageYouth': 'Von 12 bis 15: Nimm einen leichten Bogen, nicht dein volles Zuggewicht.',
  'reason.ageWeight': '{title}: unter 16 kein Zusatzgewicht statt {weight}.',
  'reason.ageDoseChild':
    '{title}: {change}. Unter 12 nicht mehr als der Einstieg: 5 Halte von 5 s. Die Zahl ist unsere eigene.',
  'reason.ageDoseYouth':
    '{title}: {change}. Von 12 bis 15 höchstens die Hälfte der ersten Übung eines Erwachsenen. Die Zahl ist unsere eigene.',
  'reason.minutes':
    'In {minutes, plural, one {# Minute} other {# Minuten}} ist Platz für {share, number, share} der heutigen Zeit im Vollauszug. {counts}',
  'reason.minutesOver':
    'In {minutes, plural, one {# Minute} other {# Minuten}} ist Platz für {share, number, share} der heutigen Zeit im Vollauszug. Schon eine Wiederholung dauert länger. {counts}',
  'reason.halfHour':
    'Wenn du ihr nicht mehr gibst, wächst eine Übung bis {minutes, plural, one {# Minute} other {# Minuten}}: Das lässt {share, number, share} der Zeit im Vollauszug, die ihre Stufe verlangt. {counts}',
  'reason.countsFull': 'Sauber geübt zählt die Übung ganz.',
  'reason.countsPlace': 'Zu kurz zum Zählen: Die Übung hält die Stufe und steigt nicht.',
  'reason.shorterOut': '{title}: weggelassen, damit es in die Minuten passt.',
  'reason.shorterHold': '{title}: auf einen Halt von {hold, number, seconds} gekürzt, damit es in die Minuten passt.',
  'reason.shorter':
    '{title}: {sets, number} × {reps, number} statt {fromSets, number} × {fromReps, number}, damit es in die Minuten passt.',
  'reason.seen':
    '{title}: Am {on, date, plain} sah die Kamera {seen, number, seconds} im Vollauszug in {reps, plural, one {# Wiederholung} other {# Wiederholungen}}, die bei der Uhr {clock, number, seconds} sind. Die Zahlen gehen nach dem, was gesehen wurde.',
  'reason.holdsPlace': '{title}: Heute hält es die Stufe und steigt nicht, so sauber es auch ist.',
  'reason.small': '{title}: Die letzte Übung war zu kurz zum Zählen. Sie hält die Stufe und steigt nicht.',
  'reason.restLess':
    '{title}: {sets, number} × {reps, number}, {hold, number, seconds} halten, ist das Höchste, wenn du trotzdem übst.',
  'reason.clicker': '{title} fällt weg: Es braucht einen Klicker.',
  'reason.impossibleDate':
    '{records, plural, one {# Eintrag wurde} other {# Einträge wurden}} weggelassen, weil es den Tag nicht gibt: {dates}. Berichtige das Datum im Tagebuch.',
  'reason.future':
    '{records, plural, one {# Eintrag mit Datum nach heute wurde} other {# Einträge mit Datum nach heute wurden}} weggelassen. Prüf das Datum des Geräts.',
  'reason.test':
    '{title} ist ein Test: Er wird gemacht, wie er dasteht, und nie erleichtert oder gekürzt. Hör auf, wenn die Form nachlässt.',
  'reason.pain':
    'Schmerzen am {on, date, plain}: heute keine Übung. Gemeint sind Schmerzen in einem Gelenk oder stechende Schmerzen, nicht müde Muskeln. Wenn sie bleiben, geh zur Ärztin, zum Arzt oder in die Physiotherapie.',
  'reason.painAgain':
    '{drills, plural, one {# Übung} other {# Übungen}} mit Schmerzen in zwei Wochen, zuletzt am {on, date, plain}: keine Übung vor dem {until, date, plain}. Geh zuerst zur Ärztin, zum Arzt oder in die Physiotherapie.',
  'reason.painMimed':
    'Du hattest am {on, date, plain} Schmerzen. Heute ist Ruhetag: Geh den Ablauf mit leeren Händen durch und sag, ob es weh tut. Noch {days, plural, one {# Tag} other {# Tage}} ohne Schmerzen, dann geht es mit dem Zugband weiter.',
  'reason.painTool':
    'Der Weg zurück nach Schmerzen am {on, date, plain} geht {stage, select, mimed {ohne etwas in der Hand} band {mit dem Zugband} light {mit einem leichten Bogen} other {mit deinem eigenen Bogen}} weiter, und so etwas ist nicht in deiner Ausrüstung: Ruh dich aus und sag, ob es weh tut. Noch {days, plural, one {# Tag} other {# Tage}} ohne Schmerzen bis zum nächsten Abschnitt.',
  'reason.daysInRow':
    '{days, plural, one {# Tag} other {# Tage}} hintereinander mit dem Bogen in der Hand: Ruh dich heute aus. Nie mehr als {most, number} hintereinander (bow-international.com, „Ask the experts“).',
  'reason.youthDay':
    'Am {on, date, plain} war eine Übung. Von 8 bis 15 zwei oder drei Tage in der Woche und nie zwei hintereinander: Ruh dich heute aus (internationaler Konsens 2014, Lloyd und andere).',
  'reason.competitionToday': 'Heute ist der Wettkampf: keine Übung.',
  'reason.competitionTomorrow': 'Morgen ist der Wettkampf: Ruh dich heute aus.',
  'reason.seasonRest': 'Deine Saison hat heute keine Übung. Übst du trotzdem, dann höchstens die halbe Übung.',
  'reason.seasonRestUntil':
    'Deine Saison hat heute keine Übung; die nächste ist am {on, date, plain}. Übst du trotzdem, dann höchstens die halbe Übung.',
  'reason.noClicker': '{title} braucht einen Klicker, und dein Bogen hat keinen. Wähl ein anderes Programm.',
  'reason.testPain': '{title} wartet: kein Test auf dem Weg zurück nach Schmerzen am {on, date, plain}.',
  'reason.testCompetition':
    '{title} wartet: kein Test in den zwei Tagen vor einem Wettkampf, und der ist am {on, date, plain}.',
  'reason.testAge':
    '{title} dauert, bis die Form nachlässt: unter 16 nur mit Trainerin oder Trainer, nicht von hier aus.',
  'reason.testMinutes':
    '{title} braucht {needed, plural, one {# Minute} other {# Minuten}} und wird nie gekürzt: {minutes, plural, one {# Minute ist} other {# Minuten sind}} zu wenig.',
  'reason.lighterWeek':
    '{title}: {cut}, weil Woche {week, number} von {weeks, number} in „{block}“ eine leichtere ist.',
  'reason.steady': '{title}: {dose}, unverändert seit {on, date, plain}. {next}',
};

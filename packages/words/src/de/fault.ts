import type { faultSentences as en } from '@larkhold/engine';

/** What a person would have to write where a text stops being JSON. */
const wanted =
  '{wanted, select, start {eine öffnende geschweifte Klammer} value {ein Wert wie 30, true oder ein Text in Anführungszeichen} valueOrEnd {ein Wert oder eine schließende eckige Klammer} key {ein Schlüssel in Anführungszeichen} keyOrEnd {ein Schlüssel in Anführungszeichen oder eine schließende geschweifte Klammer} colon {ein Doppelpunkt} memberEnd {ein Komma oder eine schließende geschweifte Klammer} entryEnd {ein Komma oder eine schließende eckige Klammer} quote {ein schließendes Anführungszeichen} escape {eine Escape-Folge von JSON wie \\n oder \\u00e9} hex {vier Hexadezimalziffern} straight {ein gerades doppeltes Anführungszeichen} number {eine Zahl wie 30, 0.5 oder -2} other {das Ende der Datei}}' as const;

/** What is wrong in a file. */
export const fault: Readonly<Record<keyof typeof en, string>> = {
  'fault.missing': 'Der Schlüssel "{key}" fehlt.',
  'fault.found': 'Gefunden: {found}.',
  'fault.foundList': 'Gefunden: eine Liste der Länge {count}.',
  'fault.foundObject': 'Gefunden: ein Objekt.',
  'fault.empty':
    "Die Datei ist leer. Eine {thing, select, program {Programmdatei} season {Saisondatei} other {Larkhold-Datei}} ist JSON-Text und beginnt mit '{'.",
  'fault.fileTooLarge':
    'Die Datei ist größer als 1 MiB und wurde nicht gelesen. Eine {thing, select, program {Programmdatei} season {Saisondatei} other {Larkhold-Datei}} ist ein, zwei Seiten Text.',
  'fault.notJson': `Das ist kein JSON. Erwartet: ${wanted}. Gefunden: „{seen}“. Schau, ob kurz davor ein Komma, ein Anführungszeichen oder eine Klammer fehlt oder zu viel ist.`,
  'fault.jsonEnds': `Das ist kein JSON: Die Datei endet zu früh. Erwartet: ${wanted}. Vielleicht ist die Datei abgeschnitten, oder davor fehlt ein Anführungszeichen oder eine Klammer.`,
  'fault.keyTooLong': 'Dieser Schlüssel ist {length} Zeichen lang; so lang ist keiner in so einer Datei. Entferne ihn.',
  'fault.keyTwice': 'Der Schlüssel "{key}" steht zweimal im selben Objekt. Behalte einen.',
  'fault.halfCharacter': 'In diesem Text steht ein halbes Zeichen (ein einzelnes Surrogat). Tipp ihn neu.',
  'fault.control':
    'In diesem Text steht das Steuerzeichen {character}. Entferne es; nur Tabulatoren (\\t) und Zeilenumbrüche (\\n) dürfen bleiben.',
  'fault.bareTab': 'Das ist kein JSON: In einem Text steht das Steuerzeichen {character}. Schreib es als \\t.',
  'fault.bareControl':
    'Das ist kein JSON: In einem Text steht das Steuerzeichen {character}. Schreib es als Escape-Folge oder entferne es.',
  'fault.textBreaks':
    'Das ist kein JSON: Ein Text bricht am Zeilenende ab. Schließ ihn mit einem Anführungszeichen oder schreib den Zeilenumbruch als \\n.',
  'fault.numberTooLarge': 'Diese Zahl ist zu groß, um damit zu rechnen.',
  'fault.textTooLong':
    'Dieser Text ist länger als {most} Zeichen; so lang ist in {thing, select, program {einem Programm} season {einer Saison} other {einer Larkhold-Datei}} keiner. Die Datei wurde nicht gelesen.',
  'fault.tooDeep':
    'Die Datei ist mehr als {most} Ebenen tief verschachtelt; {thing, select, program {ein Programm} season {eine Saison} other {eine Larkhold-Datei}} braucht weniger.',
  'fault.tooManyValues':
    'Die Datei hat mehr als {most} Werte; {thing, select, program {ein Programm} season {eine Saison} other {eine Larkhold-Datei}} hat weniger. Sie wurde nicht gelesen.',
  'fault.notObject':
    "Eine {thing, select, program {Programmdatei} season {Saisondatei} other {Larkhold-Datei}} ist ein Objekt in '{ }'. Das hier ist etwas anderes.",
  'fault.noFormat':
    'Erwartet: "format": "{expected}". Diese Datei hat kein "format": Sie ist {thing, select, program {kein Programm} season {keine Saison} other {keine Larkhold-Datei}}.',
  'fault.otherFormat':
    'Erwartet: "format": "{expected}". In dieser Datei steht {found}: Sie ist {thing, select, program {kein Programm} season {keine Saison} other {keine Larkhold-Datei}}.',
  'fault.noVersion': 'Erwartet: "version", eine ganze Zahl ab {least}.',
  'fault.newer':
    'Diese Datei hat Version {version} und ist neuer, als dieses Larkhold liest (bis Version {newest}). Aktualisiere Larkhold, um sie zu öffnen.',
  'fault.moreProblems': 'Ab hier {count, plural, one {gibt es # weiteres Problem} other {gibt es # weitere Probleme}}.',
  'fault.tooBig':
    'Diese Datei ist zu groß für {thing, select, journal {ein Tagebuch} backup {eine Sicherung} handOver {eine Übergabe} other {eine Datei der Box}}: {length} Zeichen, höchstens {most}.',
  'fault.notThis':
    'Diese Datei ist {thing, select, journal {kein Tagebuch} backup {keine Sicherung} handOver {keine Übergabe} other {keine Datei der Box}}: erwartet "{expected}", gefunden {found}.',
  'fault.notThisNothing':
    'Diese Datei ist {thing, select, journal {kein Tagebuch} backup {keine Sicherung} handOver {keine Übergabe} other {keine Datei der Box}}: erwartet "{expected}", gefunden nichts.',
  'fault.foul': 'Das darf keine Datei haben: einen Schlüssel namens "__proto__" oder endlos verschachtelte Werte.',
  'fault.notItsVersion': 'Diese Datei nennt Version {version}, enthält aber nicht, was zu dieser Version gehört.',
  'fault.unreadable':
    'Die Datei lässt sich nicht lesen. Vielleicht wurde sie verschoben, oder sie ist ein Ordner. Nichts wurde geändert.',
  'fault.encoding': 'Die Datei ist in {encoding} geschrieben. Sichere sie noch einmal als UTF-8 und öffne sie.',
  'fault.notUtf8':
    'Die Datei ist kein Text in UTF-8: Ein Zeichen in dieser Zeile lässt sich nicht lesen. Sichere sie noch einmal als UTF-8 und öffne sie.',
  'fault.unknownKey': 'Der Schlüssel "{key}" ist hier nicht bekannt. Entferne ihn oder prüf die Schreibweise.',
  'fault.type':
    'Erwartet: {type, select, int {eine ganze Zahl} number {eine Zahl} string {ein Text in Anführungszeichen} array {eine Liste in [ ]} object {ein Objekt} boolean {true oder false} other {eine andere Art Wert}}.',
  'fault.atLeast': 'Erwartet: mindestens {limit}.',
  'fault.moreThan': 'Erwartet: mehr als {limit}.',
  'fault.atMost': 'Erwartet: höchstens {limit}.',
  'fault.lessThan': 'Erwartet: weniger als {limit}.',
  'fault.atLeastCharacters': 'Erwartet: mindestens {limit, plural, one {# Zeichen} other {# Zeichen}}.',
  'fault.atMostCharacters': 'Erwartet: höchstens {limit, plural, one {# Zeichen} other {# Zeichen}}.',
  'fault.atLeastEntries': 'Erwartet: mindestens {limit, plural, one {# Eintrag} other {# Einträge}}.',
  'fault.atMostEntries': 'Erwartet: höchstens {limit, plural, one {# Eintrag} other {# Einträge}}.',
  'fault.oneOf': 'Erwartet: {choices}.',
  'fault.uuid': 'Erwartet: eine UUID aus 8-4-4-4-12 hexadezimalen Ziffern.',
  'fault.date': 'Erwartet: ein Tag, den es gibt, zum Beispiel 2026-11-25.',
  'fault.datetime': 'Erwartet: Tag und Uhrzeit mit Zeitverschiebung, zum Beispiel 2026-11-25T06:30:00Z.',
  'fault.form': 'Erwartet: eine der Formen von der Seite über die Programmdatei.',
  'fault.unfit': 'Dieser Wert passt hier nicht.',
  'fault.instantYears':
    'Erwartet: Tag und Uhrzeit der Jahre 1900 bis 2999 mit Zeitverschiebung, zum Beispiel 2026-11-25T06:30:00Z.',
  'fault.stamp': 'Erwartet: Tag und Uhrzeit einer Änderung mit Zeitverschiebung, zum Beispiel 2026-11-25T06:30:00Z.',
  'fault.dayYears': 'Erwartet: ein Tag eines Jahres von 1900 bis 2999.',
  'fault.weekYears': 'Erwartet: eine Woche eines Jahres von 1900 bis 2999, zum Beispiel 2026-W48.',
  'fault.seenBackwards': 'Erwartet: ein gesehener Halt, der nach seinem Anfang endet.',
  'fault.tooLong':
    'Das ganze Programm darf 4 Stunden dauern; dieses kann {hours} dauern. Nimm Sätze, Wiederholungen oder Pausen weg.',
  'fault.testVersion':
    '"kind" und "measure" gibt es seit Version 2 der Programmdatei. Schreib "version": 2. Gefunden: {version}.',
  'fault.measureAlone': 'Nur ein Test hat ein Maß. Ergänze "kind": "test" oder entferne diesen Schlüssel.',
  'fault.measureMissing': 'Der Schlüssel "measure" fehlt: Ein Test sagt, was er zählt. Erwartet: {choices}.',
  'fault.testBlocks': 'Ein Test hat einen Block. Entferne diesen.',
  'fault.testSets': 'Ein Test hat einen Satz. Gefunden: {found}.',
  'fault.testReps': 'Ein Test des längsten Halts hat eine Wiederholung, denn eine zweite wäre müde. Gefunden: {found}.',
  'fault.testHands':
    'Ein Test wird mit einer Hand gemacht, sonst weiß niemand, welche versagt hat. Erwartet: "usual" oder "opposite".',
  'fault.testLadder': 'Ein Test ist jedes Mal gleich, deshalb hat sein Block keine Stufen. Entferne diesen Schlüssel.',
  'fault.tenths': 'Gib Sekunden höchstens auf Zehntel genau an. Gefunden: {found}.',
  'fault.setRestMissing':
    'Der Schlüssel "setRest" fehlt: Er wird gebraucht, weil {why, select, sets {es mehr als einen Satz gibt} follows {ein weiterer Block folgt} other {die Stufen die Sätze erhöhen}}. Gib Sekunden an, 0 bis 1800.',
  'fault.endlessLadder':
    'Das setzt eine Stufe zurück, die wiederum {lever, select, hold {die Haltezeit} reps {die Wiederholungen} sets {die Sätze} addedWeight {das Zusatzgewicht} other {es}} zurücksetzt: Die Stufen würden nie enden. Lass eines von beiden weg.',
  'fault.layoffOrder': 'Erwartet: mehr als {before}, denn die Tage steigen von Eintrag zu Eintrag. Gefunden: {found}.',
  'fault.resetsItself': 'Eine Stufe kann nicht zurücksetzen, was sie selbst erhöht.',
  'fault.resetTooHigh':
    'Erwartet: ein Wert unter dem "until" einer früheren Stufe, die {lever, select, hold {die Haltezeit} reps {die Wiederholungen} sets {die Sätze} addedWeight {das Zusatzgewicht} other {es}} erhöht, oder unter dem eigenen Wert des Blocks, {own}. Gefunden: {found}.',
  'fault.untilOwn':
    'Erwartet: mehr als {lever, select, hold {die eigene Haltezeit} reps {die eigenen Wiederholungen} sets {die eigenen Sätze} addedWeight {das eigene Zusatzgewicht} other {der eigene Wert}} des Blocks, {from}. Gefunden: {found}. Diese Stufe ließe sich nie erreichen.',
  'fault.untilEarlier':
    'Erwartet: mehr als {lever, select, hold {die Haltezeit} reps {die Wiederholungen} sets {die Sätze} addedWeight {das Zusatzgewicht} other {der Wert}} einer früheren Stufe, {from}. Gefunden: {found}. Diese Stufe ließe sich nie erreichen.',
  'fault.endsBefore': 'Erwartet: {first} oder später. Gefunden: {found}. Das würde enden, bevor es beginnt.',
  'fault.weekBeyond': 'Erwartet: höchstens {weeks}, denn mehr Wochen hat der Block nicht. Gefunden: {found}.',
  'fault.weekTwice': 'Woche {week} ist zweimal genannt. Behalte eine.',
  'fault.tooManyDays': 'Erwartet: höchstens {most} Tage. Gefunden: {found}.',
  'fault.dayOutside': 'Erwartet: ein Tag von {from} bis {to}. Gefunden: {found}.',
  'fault.dayTwice': '{day} ist zweimal genannt. Schreib die Programme dieses Tages in eine Einheit.',
  'fault.lineTooLong': 'Erwartet: höchstens {most} Zeichen. Gefunden: {length}.',
  'fault.lineLacks': 'Etwas fehlt: Schreib zum Beispiel {example}.',
  'fault.lineSetRest': 'Nach mehr als einem Satz braucht es eine Pause: Schreib zum Beispiel set rest 2m.',
  'fault.notUnderstood': '"{text}" ist hier nicht zu verstehen. Siehe die Seite über die kurze Zeile.',
  'fault.saidTwice': '"{text}" wiederholt, was die Zeile schon sagt. Behalte eines.',
};

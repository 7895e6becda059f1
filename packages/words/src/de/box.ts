import type { box as en } from '../en/box.ts';

/** Words of the box: one journal on all of an archer's devices. */
export const box: Readonly<Record<keyof typeof en, string>> = {
  'box.heading': 'Alle meine Geräte',
  'box.about':
    'Das Handy am Spiegel, der Laptop, das Tablet: ein Tagebuch auf allen. Jedes legt eine versiegelte Datei in eine Box und liest die der anderen. Wer die Box anbietet, kann nichts lesen.',
  'box.invited':
    'Dieser Link verbindet dieses Gerät mit deinen anderen. Ihr Tagebuch, ihre Programme, deine Saison und dein Bogen werden mit dem zusammengeführt, was hier ist, und was hier ist, geht zu ihnen. Nichts wird ersetzt, und es lässt sich zurücknehmen.',
  'box.nameField': 'Wie nennst du dieses Gerät?',
  'box.nameExample': 'Handy',
  'box.thisDevice': 'Dieses Gerät',
  'box.pair': 'Dieses Gerät verbinden',
  'box.makeHere': 'Box bei diesem Anbieter anlegen',
  'box.makeFolder': 'Box in einem Ordner anlegen',
  'box.joinAbout':
    'Sind deine Geräte schon verbunden? Dann öffne den Link oder den QR-Code, den eines von ihnen zeigt.',
  'box.made': 'Die Box ist angelegt.',
  'box.paused': 'Angehalten: Nichts geht hinein oder heraus.',
  'box.notMet': 'Die Box wurde noch nicht abgeglichen.',
  'box.lastMet': 'Zuletzt abgeglichen am {day, date, year} um {at, time}.',
  'box.quiet': 'Zuletzt mit den anderen Geräten abgeglichen: {day, date, short}, {at, time}.',
  'box.onDevice': 'Alles ist auf diesem Gerät und versiegelt in deiner Box.',
  'box.meetAgain': 'Wieder abgleichen',
  'box.meetNow': 'Jetzt abgleichen',
  'box.undo': 'Letzte Runde zurücknehmen',
  'box.pairAnother': 'Weiteres Gerät verbinden',
  'box.leave': 'Box verlassen',
  'box.devices': 'Geräte',
  'box.isThis': '{title} (dieses)',
  'box.newsOf': '{title}: Stand vom {day, date, year}, {at, time}',
  'box.forget': '{title} aus der Box nehmen',
  'box.forgotten':
    '{title} ist aus der Box. Was dort geschrieben wurde, bleibt hier. Gleicht das Gerät wieder ab, ist es wieder da.',
  'box.log': 'Letzte Runden',
  'box.logLine': '{day, date, short} {at, time}: {words}',
  'box.showLink':
    'Öffne das auf dem anderen Gerät, mit der Kamera oder als Link. Wer es hat, kann das Tagebuch lesen: Zeig es sonst niemandem. Verlierst du ein Gerät, brauchst du eine neue Box: Verlass diese auf jedem Gerät und leg eine neue an.',
  'box.qr': 'QR-Code des Links darunter',
  'box.restored': 'Verbunden. Das ist jetzt hier:',
  'box.restoredDrills': '{n, plural, =0 {keine Übung} one {# Übung} other {# Übungen}}',
  'box.restoredDays':
    '{n, plural, =0 {kein Tag} one {# Tag} other {# Tage}} im Tagebuch und {weeks, plural, =0 {keine Wochenseite} one {# Wochenseite} other {# Wochenseiten}}',
  'box.restoredPrograms':
    '{n, plural, =0 {kein geöffnetes Programm} one {# geöffnetes Programm:} other {# geöffnete Programme:}} {titles}',
  'box.restoredBow': 'dein Bogen: {bow}, {weight}',
  'box.restoredSeason': 'deine Saison',
  'box.takeControls': 'Die Bedienung des zuletzt benutzten Geräts übernehmen',
  'box.takeControlsAbout':
    'Tasten und Pedale, Klatschen, Headset und Gamepad, Ton, Sprache, Bildschirm und wie weit du davon weg stehst. Danach ändert jedes Gerät nur seine eigene. Kamera, Sicherung und welche Sätze im Vollauszug gesagt werden dürfen, fragt jedes Gerät selbst.',
  'box.restoredControls': 'die Bedienung von {title}: Tasten und Pedale, Ton, Bildschirm und Abstand',
  'box.restoredTaken':
    'Ab jetzt ändert jedes Gerät nur seine eigene Bedienung, in der Ausrüstung. Kamera und Sicherung stellst du auf jedem Gerät ein.',
  'box.noControls': 'keine Bedienung: Noch hat kein Gerät in der Box seine eigene dort abgelegt',
  'box.useControls': 'Die Bedienung von {title} hier benutzen',
  'box.usesControls':
    'Dieses Gerät hat jetzt die Bedienung von {title}: Tasten und Pedale, Ton, Bildschirm und Abstand.',
  'box.leaveControls': 'Zurück zur Bedienung von vorher',
  'box.controlsLeft': 'Die Bedienung ist wieder wie vorher.',
  'box.restoredOwn':
    'Ton, Bildschirm, Bedienung und Sicherung gehören zu jedem Gerät. Stell sie in der Ausrüstung ein.',
  'box.left': 'Verlassen. Was hier ist, bleibt hier, und die Dateien dieses Geräts sind aus der Box.',
  'box.back': 'Zurück zur Ausrüstung',
  'box.kitLink': 'Alle meine Geräte: ein Tagebuch auf Handy, Laptop und Tablet',
  'box.cutLink': 'Dieser Link ist abgeschnitten oder verändert. Kopier ihn noch einmal, ganz.',
};

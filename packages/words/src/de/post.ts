import type { post as en } from '../en/post.ts';

/** Words of hand-overs and answers that go by way of a coach's box. */
export const post: Readonly<Record<keyof typeof en, string>> = {
  'post.deskHeading': 'Deine Box für Übergaben',
  'post.deskAbout':
    'Übergaben können in eine Box von dir gelegt werden, statt als Datei zu kommen. Sie sind mit deinem Schlüssel versiegelt, nur dieses Gerät kann sie lesen; wer die Box anbietet, kann nichts lesen. Was kommt, bleibt hier gemerkt, bis du es vergisst.',
  'post.yourName': 'Wie nennen dich deine Schützen?',
  'post.open': 'Box öffnen',
  'post.inviteAbout': 'Gib diesen Link deinen Schützen oder lass sie den Code scannen. Es ist kein Geheimnis darin.',
  'post.qr': 'QR-Code der Einladung darunter',
  'post.look': 'In die Box schauen',
  'post.lastRead': 'Zuletzt hineingeschaut: {day, date, short}, {at, time}.',
  'post.close': 'Box schließen und ihre Schützen vergessen',
  'post.closed':
    'Die Box ist geschlossen, und was von ihren Schützen gemerkt war, ist hier weg. Ihre eigenen Tagebücher sind wie zuvor.',
  'post.sendAnswer': 'Antwort in die Box legen',
  'post.answerSent': 'Die Antwort liegt in der Box. {archer} sieht sie, sobald die App dort wieder hineinschaut.',
  'post.lastAnswer': 'Zuletzt geantwortet: {day, date, short}, {at, time}.',
  'post.forget': '{archer} vergessen',
  'post.inviteHeading': 'Übergabe an {coach}',
  'post.inviteText':
    '{coach} lädt dich ein, deine Übergaben in eine Box zu legen, statt sie als Datei zu schicken. Von selbst geht nichts dorthin: Du übergibst auf der Seite für Dateien, wählst die Tage und gibst Notizen nur dazu, wenn du willst. Es ist versiegelt, und nur {coach} kann es lesen. Du kannst jederzeit aussteigen; was du übergeben hast, ist dann aus der Box.',
  'post.accept': 'Einladung annehmen',
  'post.accepted': 'Angenommen. Du übergibst auf der Seite für Dateien.',
  'post.cut': 'Diese Einladung ist abgeschnitten oder verändert. Bitte noch einmal darum, ganz.',
  'post.leave': 'Bei {coach} aussteigen',
  'post.left': 'Ausgestiegen. Was du übergeben hast, ist aus der Box.',
  'post.put': 'In die Box von {coach} legen',
  'post.isPut': 'Es liegt in der Box von {coach}.',
  'post.lastPut': 'Zuletzt an {coach} übergeben: {day, date, short}, {at, time}.',
  'post.answerCame': '{coach} hat geantwortet.',
  'post.read': 'Antwort lesen',
};

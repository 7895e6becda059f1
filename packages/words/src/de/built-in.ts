import type { BuiltInWords } from '../built-in-words.ts';

/** What the built-in programs say in German, by their ids. */
export const builtIn: BuiltInWords = {
  lines: {
    'Shoulder circles, 10 each way': 'Schulterkreisen, 10 in jede Richtung',
    'Band pulls, 2 x 10': 'Bandziehen, 2 x 10',
    'Two slow half draws, let down each time': 'Zwei langsame halbe Auszüge, jedes Mal absetzen',
    'Easy band pulls, 10': 'Leichtes Bandziehen, 10',
    'Arms overhead, slow breaths, one minute': 'Arme über den Kopf, langsam atmen, eine Minute',
    'Chest stretch in a doorway, 30 s each side': 'Brustdehnung im Türrahmen, 30 s je Seite',
  },
  programs: {
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1001': {
      title: 'Vereinseinstieg',
      about:
        'Fünf kurze Halte mit langen Pausen: ein erstes Programm, das wenig verlangt. Setz ab, solange die Form noch gut ist.',
      source:
        'bannockburnbowmen.org, coaching corner: 5 s halten, 20 s Pause, 5 Wiederholungen. Die Stufen sind von uns: übliche Praxis, keine Quelle.',
      blocks: ['Kurze Halte'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1008': {
      title: 'Zwanzig Halte',
      about:
        'Zwanzig Halte von 15 Sekunden, später von 20, später von 30: etwa einen Monat lang, an Tagen ohne Schießen.',
      source:
        'archerygb.org news: 20 Wiederholungen von 15 s, dann 20 s, dann 30 s, an Tagen ohne Schießen, etwa einen Monat. Eine Pause nennt die Quelle nicht: doppelt so lang wie der Halt ist von uns, nach der vorsichtigsten der veröffentlichten. Vier saubere Einheiten je Stufe sind von uns, damit drei Stufen bei dreimal pro Woche einen Monat dauern.',
      blocks: ['Zwanzig Halte'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1009': {
      title: 'Halbe Stunde mit 15 Sekunden',
      about:
        '15 Sekunden halten und 15 Pause, immer wieder; bis zu einer halben Stunde, Ziehen und Absetzen mitgezählt.',
      source:
        'archerygb.org news: 15 s halten, 15 s Pause, 30 min lang, dreimal pro Woche. Fünfzig Wiederholungen sind die halbe Stunde, Ziehen und Absetzen mitgezählt. Mit zwanzig zu beginnen und um fünf zu steigern ist von uns.',
      blocks: ['Halte von 15 Sekunden'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e100a': {
      title: 'Ein Satz mit zehn',
      about: 'Zehn Halte von 30 Sekunden mit einer Minute Pause: eine Viertelstunde für einen kurzen Morgen.',
      source:
        'acearchers.com, home practice weeks, 2020: ein Satz mit 10 Halten von 30 s, 60 s Pause. Die Stufen bis 45 s mit doppelt so langer Pause sind von uns.',
      blocks: ['Ein Satz Halte'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e100b': {
      title: 'Halbe Stunde mit 30 Sekunden',
      about:
        '30 Sekunden halten und 30 Pause, immer wieder; bis zu einer halben Stunde, Ziehen und Absetzen mitgezählt.',
      source:
        'archerygb.org news: 30 s halten, 30 s Pause, 30 min lang, dreimal pro Woche. 27 Wiederholungen sind die halbe Stunde, Ziehen und Absetzen mitgezählt. Mit neun zu beginnen und um drei zu steigern ist von uns.',
      blocks: ['Halte von 30 Sekunden'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1002': {
      title: 'Halten',
      about:
        'Lange Halte im Vollauszug, auf jeder Stufe eine halbe Stunde Halten und Pause: je länger der Halt, desto weniger davon. Für alle, die schon 30 Sekunden in guter Form halten.',
      source:
        'K. Lee, SPT-Text, nachgedruckt auf usm-archery.blogspot.com (2008): 30-60 s halten, Pause doppelt so lang, 10 Wiederholungen, wiederholt bis 30 min, 120 s zwischen den Sätzen; über 45 s 2-3 lb dazu. Die Schritte von 5 s, eine Wiederholung weniger für jeden, damit es bei einer halben Stunde bleibt, und höchstens 4 lb sind von uns.',
      blocks: ['Halte im Vollauszug'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1003': {
      title: 'Halten in Stufen',
      about:
        'Halte, die um fünf Sekunden von 30 auf 60 wachsen, dann ein Band an den Bogen und zurück auf 30. Es wird lang: bis zu anderthalb Stunden.',
      source:
        'acearchers.com, "Archery Exercises": 30 s halten, +5 s bis 60, Pause doppelt so lang, 10 Wiederholungen, 3 Sätze, 300 s zwischen den Sätzen; bei 60 s in 3 Sätzen ein Band an den Bogen und neu bei 30. 2 lb für das Band und höchstens ein zweites sind von uns.',
      blocks: ['Halte in Stufen'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1004': {
      title: 'Kraft',
      about:
        'Vom Set-up in einen kurzen Halt und zurück ins Set-up, ohne Pause zwischen den Wiederholungen. Nach jedem Satz ganz ausruhen.',
      source:
        'K. Lee, SPT-Text, nachgedruckt auf usm-archery.blogspot.com (2008): 3-5 s halten, vom Set-up in den Halt und zurück, 5-12 Wiederholungen, 3-5 Sätze, 180-300 s zwischen den Sätzen, etwa 30 min. Die Reihenfolge ist von uns: Wiederholungen, dann Haltezeit, dann Sätze, danach jeweils acht Wiederholungen.',
      blocks: ['Vom Set-up in den Halt'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1005': {
      title: 'Beweglichkeit',
      about:
        'Zehn Sekunden Expansion, 1 bis 1,5 cm über den Klicker hinaus, mit Pfeil, nah an einer sicheren Scheibe. Braucht einen Klicker. Jedes Mal absetzen.',
      source:
        'K. Lee, kisiklee.com, Frage 46: 10 s Expansion über den Klicker hinaus, 30 s Pause, 6 Wiederholungen, 5 Sätze, 120 s zwischen den Sätzen.',
      blocks: ['Expansion über den Klicker hinaus'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e100c': {
      title: 'Band für unterwegs',
      about:
        'Kurze Halte am Zugband, für eine Reise oder eine Woche ohne Bogen. Es wächst Satz um Satz bis zum ganzen Bandabend.',
      source:
        'spigarellirevolution.blogspot.com, 2013: 10 s halten, 10 s Pause, 6 Wiederholungen, 10 Sätze, 20 s zwischen den Sätzen. Mit drei Sätzen zu beginnen und jeweils einen dazuzunehmen ist von uns.',
      blocks: ['Halte am Band'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1006': {
      title: 'Bandabend',
      about: 'Viele kurze Halte am Zugband. Leise und in jedem Zimmer möglich.',
      source:
        'spigarellirevolution.blogspot.com, 2013: 10 s halten, 10 s Pause, 6 Wiederholungen, 10 Sätze, 20 s zwischen den Sätzen.',
      blocks: ['Halte am Band'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e1007': {
      title: 'Ausgangstest',
      about:
        'Halte von 15 Sekunden mit 25 Sekunden Pause, bis die Form nachlässt. Hör bei dieser Wiederholung auf: Ihre Nummer ist dein Anfang. Alle 4 bis 8 Wochen wiederholen.',
      source:
        'ndarchery.co, "Developing an SPT protocol", 2025: 15 s halten, 25 s Pause, bis die Form nachlässt; die Wiederholung, bei der sie nachlässt, ist die Anfangszahl. Nach zwanzig Wiederholungen zu enden ist von uns.',
      blocks: ['Halte, bis die Form nachlässt'],
    },
    '5f0c1a52-1f0a-4c8e-9a31-0d2b6a7e100d': {
      title: 'Längster Halt',
      about:
        'Ein Halt, so lange die Form gut ist: Setz ab, wenn die Linie verloren geht, nicht erst, wenn nichts mehr übrig ist. Nicht an einem Tag mit Schmerzen. Alle 4 bis 8 Wochen wiederholen.',
      source:
        'Die Zeit bis zum Versagen unter gehaltener Last ist das Maß der Ausdauer: Frey Law & Avin 2010, Ergonomics 53:109. Es im Vollauszug zu tun, beim Nachlassen der Form abzusetzen und nach zwei Minuten zu enden ist von uns.',
      blocks: ['Ein Halt, bis die Form nachlässt'],
    },
  },
};

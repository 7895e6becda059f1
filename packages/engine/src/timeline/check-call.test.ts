// Words that order a shot: what judges, coaches and archers say for it in their languages, from memory; and ways to hide them that were tried
// from outside. Nobody can list all of them, which is why `allowedCalls` comes first (drill-calls.test.ts).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkCall } from './check-call.ts';
import { ownCalls } from './own-calls.ts';

const orders = [
  ...[
    'release',
    'Releasing now',
    'loose',
    'Loose!',
    'fire',
    'and fire',
    'Shoot',
    'shoot it',
    'Let go',
    'Let go now',
    'let it go',
    'GO!',
  ],
  ...[
    'Drop the string',
    'Open your fingers',
    'relax the hook',
    'open the draw hand',
    'let the string slip',
    'let it fly',
    'Send it',
  ],
  ...['Break the shot', 'slip the string', 'Unhook', 'Now!', 'Shot', 'Pull the trigger', 'execute'],
  ...['Los', 'Jetzt los!', 'Lass los', 'Loslassen', 'Schuss', 'schieß', 'Feuer', 'Löse', 'Öffne die Finger'],
  ...[
    'Lâche',
    'lache',
    'Lâchez',
    'décoche',
    'Tire',
    'feu',
    'Ouvre les doigts',
    'laisse partir',
    'Suelta',
    'Dispara',
    'Abre los dedos',
  ],
  ...[
    'Rilascia',
    'Scocca',
    'Solte',
    'Laat los',
    'Schiet',
    'Puść',
    'Strzelaj',
    'Släpp',
    'Стреляй',
    'отпусти',
    'Bırak',
    '放箭',
    '撒放',
    '離して',
    '쏴',
    '발사',
  ],
];
const harmless = [
  ...[
    'Keep reaching',
    'Shoulders low',
    'Keep going',
    'Do not lose the line',
    'Relax your bow hand',
    'Drop the shoulder',
    'Open the chest',
  ],
  ...[
    'Trust your shot',
    'Hold 3',
    'Feel the back, not the arm',
    'Breathe out',
    'Set the feet',
    'First, hook',
    'Firm wall',
    'Line of force',
  ],
  ...[
    'Baja los hombros',
    'Schultern tief',
    'Épaules basses',
    'плечи вниз',
    '肩を下げる',
    '放松肩膀',
    '어깨 낮게',
    'कंधे नीचे',
    '❤️ strong',
    'SPTの姿勢',
  ],
];

describe('checkCall', () => {
  it.each(orders)('finds an order in “%s”', (words) => {
    expect(checkCall(words)).toMatchObject({ kind: 'order' });
  });

  it.each([...harmless, ...ownCalls])('finds nothing in “%s”', (words) => {
    expect(checkCall(words)).toBeUndefined();
  });

  it.each([
    ['Rеlease', 'a Cyrillic e'],
    ['ѕһооt', 'all Cyrillic'],
    ['rele\u200base', 'a zero-width space'],
    ['re\u00adlease', 'a soft hyphen'],
    ['\u202eesaeler', 'read backwards'],
    ['ｒｅｌｅａｓｅ', 'full width'],
    ['𝓻𝓮𝓵𝓮𝓪𝓼𝓮', 'mathematical letters'],
    ['r\u0336e\u0336l\u0336e\u0336a\u0336s\u0336e\u0336', 'struck through'],
    ['ΓΟ GΟ!', 'a Greek O'],
    ['🅡🅔🅛🅔🅐🅢🅔', 'white on black discs'],
    ['🇬🇴', 'flags'],
    ['sh00t', 'digits'],
    ['f1re', 'a one'],
    ['f!re', 'a point of exclamation'],
    ['re-lease', 'a hyphen'],
    ['l e t  g o', 'letters apart'],
    ['s.h.o.o.t', 'points between'],
    ['re lease', 'two halves'],
    ['Loooooose', 'a long vowel'],
    ['ꮢelease', 'a Cherokee letter'],
    ['ɹelease', 'a phonetic letter'],
  ])('sees through %s: %s', (words) => {
    expect(checkCall(words)).toBeDefined();
  });

  it('says what it found, and what else is wrong with a line', () => {
    expect(checkCall('And now let go')).toEqual({ kind: 'order', found: 'let go' });
    expect(checkCall('Stay\u200b tall')).toEqual({ kind: 'unseen' });
    expect(checkCall('Stay tаll')).toEqual({ kind: 'mixed', found: 'tаll' });
  });

  it('finds an order however it is spelled and whatever is around it', () => {
    const hide = fc.record({
      order: fc.constantFrom('release', 'shoot', 'loose', 'fire', 'let go', 'lâche', 'loslassen', 'suelta', 'стреляй'),
      before: fc.constantFrom('', 'Reach and ', 'now, ', '« ', '… '),
      after: fc.constantFrom('', '!', ' now', '. Breathe', ' »'),
      unseen: fc.array(
        fc.constantFrom('\u200b', '\u200d', '\u2060', '\u00ad', '\ufeff', '\u200f', '\u034f', '\u{e0020}'),
        { maxLength: 4 },
      ),
      at: fc.nat(20),
      wide: fc.boolean(),
      upper: fc.boolean(),
      alike: fc.boolean(),
      mark: fc.constantFrom('', '\u0301', '\u0335', '\u20dd'),
    });
    fc.assert(
      fc.property(hide, ({ order, before, after, unseen, at, wide, upper, alike, mark }) => {
        let word = upper ? order.toUpperCase() : order;
        if (alike) word = word.replaceAll('e', 'е').replaceAll('o', 'ο').replaceAll('S', 'Ѕ');
        if (wide) word = word.replace(/[a-z]/gi, (letter) => String.fromCharCode(letter.charCodeAt(0) + 0xfee0));
        const cut = at % word.length;
        const hidden = `${word.slice(0, cut)}${unseen.join('')}${word.slice(cut)}${mark}`;
        expect(checkCall(`${before}${hidden}${after}`)).toBeDefined();
      }),
      { seed: 20261127, numRuns: 3000 },
    );
  });

  it('takes any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 80 }), fc.string({ maxLength: 80 })), (words) => {
        expect(['undefined', 'object']).toContain(typeof checkCall(words));
      }),
      { seed: 20261127, numRuns: 2000 },
    );
  });
});

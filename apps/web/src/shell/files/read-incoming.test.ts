import { createHandOver, createJournal, formatHandOver, formatJournal } from '@larkhold/engine';
import { createKit, formatBackup } from '@larkhold/store';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readIncoming } from './read-incoming.ts';

const madeAt = '2026-11-25T20:00:00Z';
const journal = { ...createJournal(), days: [{ date: '2026-11-25', note: 'Windy' }] };
const handOver = createHandOver({
  journal,
  archerId: 'a',
  archer: 'Ines',
  from: '2026-11-01',
  to: '2026-11-25',
  madeAt,
});
const files = {
  journal: formatJournal(journal, madeAt),
  backup: formatBackup({ format: 'larkhold/backup', version: 2, madeAt, kit: createKit(), ...journal }),
  'hand-over': formatHandOver(handOver),
};

test('each file is known by what it says it is', () => {
  expect(readIncoming(files.journal)).toMatchObject({ kind: 'journal', journal, madeAt });
  const { callAnswers: _, ...kit } = createKit();
  expect(readIncoming(files.backup)).toMatchObject({ kind: 'journal', journal, kit });
  expect(readIncoming(files['hand-over'])).toMatchObject({ kind: 'hand-over', handOver: { archer: 'Ines' } });
});

test('a file that is cut off anywhere, or is not ours, is refused with a reason', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...Object.values(files)),
      fc.double({ min: 0, max: 0.99, noNaN: true }),
      (text, share) => {
        const read = readIncoming(text.slice(0, Math.floor((text.length - 2) * share)));
        expect(read.kind).toBe('refused');
        if (read.kind === 'refused') expect(read.problems[0]?.message).not.toBe('');
      },
    ),
  );
  expect(readIncoming('date,arrows\r\n2026-11-25,60\r\n').kind).toBe('refused');
});

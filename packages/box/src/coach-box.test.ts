import { createHandOver, createJournal, formatHandOver, parseHandOver } from '@larkhold/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createArcherPost, leaveCoach, readAnswer, sendHandOver } from './archer-post.ts';
import { boxFileName, readBoxFileName } from './box-file-name.ts';
import { answerLetter, type CoachDesk, createCoachDesk, forgetArcher, inviteOf, readDesk } from './coach-desk.ts';
import { formatInvite, parseInvite } from './coach-invite.ts';
import { createMemoryBox } from './memory-box.ts';

const NOW = '2026-11-25T20:00:00.000Z';
const isHandOver = (text: string): boolean => parseHandOver(text).ok;
const handOver = (archer: string, note = 'Windy at the mill') =>
  formatHandOver(
    createHandOver({
      journal: { ...createJournal(), days: [{ date: '2026-11-24', note }] },
      ...{ archer, archerId: archer, from: '2026-11-01', to: '2026-11-25', madeAt: NOW, includesNotes: true },
    }),
  );
const ok = <T>(answer: { ok: true; value: T } | { ok: false }): T => {
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  return answer.value;
};
async function squad() {
  const box = createMemoryBox();
  const desk = await createCoachDesk('Ode', '/box');
  const invite = parseInvite(formatInvite(inviteOf(desk)));
  if (!invite) throw new Error('no invitation');
  const read = (at: CoachDesk) => readDesk(box, at, NOW, isHandOver);
  return { box, desk, invite, read };
}

describe('a coach’s box', () => {
  it('brings hand-overs of two archers to the coach and the answer to one of them; neither archer can read the other, nor the host', async () => {
    const { box, desk, invite, read } = await squad();
    const ines = ok(await sendHandOver(box, await createArcherPost(invite), handOver('Ines'), NOW));
    const mo = ok(await sendHandOver(box, await createArcherPost(invite), handOver('Mo'), NOW));
    const first = await read(desk);
    expect(first.troubles).toEqual([]);
    expect(Object.values(first.desk.archers).map(({ text }) => parseHandOver(text).ok)).toEqual([true, true]);
    const answered = ok(await answerLetter(box, first.desk, ines.owner, 'the answer', NOW));
    expect(await readAnswer(box, mo, NOW)).toMatchObject({ isNew: false });
    const came = await readAnswer(box, ines, NOW);
    expect(came).toMatchObject({ isNew: true, post: { answer: { text: 'the answer' } } });
    expect(await readAnswer(box, came.post, NOW)).toMatchObject({ isNew: false });
    expect((await read(answered)).fresh).toEqual([]);
    for (const [name, { content }] of box.files) {
      const text = name + Buffer.from(content).toString('latin1');
      for (const word of ['mill', 'Ines', 'Mo"', 'Ode', 'answer', 'hand-over']) expect(text).not.toContain(word);
    }
    // With the other archer's key the file stays shut.
    const other = { ...mo, replyOwner: ines.replyOwner, answerTurn: 0 };
    expect((await readAnswer(box, other, NOW)).trouble?.kind).toBe('foreign');
  });

  it('remembers its archers, and the later hand-over of each, until it is told to forget one', async () => {
    const { box, desk, invite, read } = await squad();
    let post = ok(await sendHandOver(box, await createArcherPost(invite), handOver('Ines'), NOW));
    let at = (await read(desk)).desk;
    post = ok(await sendHandOver(box, post, handOver('Ines', 'Still'), NOW));
    expect(box.files.size).toBe(1);
    const second = await read(at);
    expect(second.fresh).toEqual([post.owner]);
    expect(second.desk.archers[post.owner]?.text).toContain('Still');
    at = second.desk;
    box.files.clear(); // the host lost all of it
    expect(Object.keys((await read(at)).desk.archers)).toEqual([post.owner]);
    at = await forgetArcher(box, at, post.owner);
    expect((await read(at)).desk.archers).toEqual({});
  });

  it('leaves what is foreign, cut off, no hand-over or under a wrong name alone, tells of it once, and goes on', async () => {
    const { box, desk, invite, read } = await squad();
    const post = ok(await sendHandOver(box, await createArcherPost(invite), handOver('Ines'), NOW));
    const stranger = await createArcherPost({ ...invite, recipient: (await createCoachDesk('x', '/box')).recipient });
    await sendHandOver(box, stranger, handOver('Mo'), NOW);
    const cut = ok(await sendHandOver(box, await createArcherPost(invite), handOver('Cut'), NOW));
    const whole = box.files.get(cut.sent!.file)!;
    box.files.set(cut.sent!.file, { ...whole, content: whole.content.slice(0, 300) });
    await sendHandOver(box, await createArcherPost(invite), '{"format":"other"}', NOW);
    const copied = new Uint8Array(box.files.get(post.sent!.file)!.content);
    box.files.set(await boxFileName('imposter', 9, copied), { content: copied, mark: 'x' });
    const first = await read(desk);
    expect(first.troubles.map(({ kind }) => kind).sort()).toEqual(['damaged', 'damaged', 'foreign', 'swapped']);
    expect(Object.keys(first.desk.archers)).toEqual([post.owner]);
    expect((await read(first.desk)).troubles).toEqual([]);
  });

  it('an archer who leaves takes the hand-over out of the box; a bad answer changes nothing', async () => {
    const { box, desk, invite, read } = await squad();
    const post = ok(await sendHandOver(box, await createArcherPost(invite), handOver('Ines'), NOW));
    const at = (await read(desk)).desk;
    const answered = ok(await answerLetter(box, at, post.owner, 'the answer', NOW));
    const name = answered.archers[post.owner]!.answer!.file;
    box.files.set(name, { content: new Uint8Array(3), mark: 'cut' });
    expect(await readAnswer(box, post, NOW)).toEqual({ post, isNew: false, trouble: { kind: 'damaged', file: name } });
    await leaveCoach(box, post);
    expect([...box.files.keys()].map((file) => readBoxFileName(file)?.owner)).toEqual([post.replyOwner]);
  });
});

it('an invitation goes through a link and back; any other text is refused', async () => {
  const invite = inviteOf(await createCoachDesk('Ode “the” coach 🏹', 'https://club.invalid/box'));
  expect(parseInvite(formatInvite(invite))).toEqual(invite);
  expect(parseInvite(formatInvite(invite).slice(0, -9))).toBeUndefined();
  for (const address of ['javascript:alert(1)', '//elsewhere.invalid', 'https://user@club.invalid/box']) {
    expect(parseInvite(formatInvite({ ...invite, address }))).toBeUndefined();
  }
  fc.assert(
    fc.property(fc.string({ maxLength: 300 }), (text) => {
      expect(parseInvite(text)).toBeUndefined();
    }),
    { seed: 7 },
  );
});

import { builtInPrograms, createJournal, type NoteScrap } from '@larkhold/engine';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import type { App } from './app-context.ts';
import './lark-notes.ts';
import type { LarkSketchPad } from '@larkhold/ui';
import type { LarkNotes } from './lark-notes.ts';

const program = builtInPrograms[0]!;

/** A wall whose notes are kept in a list. */
async function wallOf(programId?: string) {
  const wall = document.createElement('lark-notes');
  const put: NoteScrap[] = [];
  const show = () => {
    const byId = new Map(put.map((note) => [note.id, note]));
    const view: Partial<App['view']> = {
      ...{ today: '2026-11-25', programs: builtInPrograms, removedToday: [] },
      journal: { ...createJournal(), notes: [...byId.values()].filter((note) => !note.removed) },
    };
    const act: Partial<App['act']> = {
      newId: () => `note-${put.length}`,
      instant: () => `2026-11-25T07:00:0${put.length}Z`,
      putNote: async (note) => {
        put.push(note);
        show();
        return true;
      },
    };
    wall.app = { view, act } as App;
  };
  wall.programId = programId;
  show();
  document.body.append(wall);
  await wall.updateComplete;
  return { wall, put };
}

async function press(wall: LarkNotes, words: string) {
  const found = [...wall.renderRoot.querySelectorAll('button')].find((one) =>
    (one.getAttribute('aria-label') ?? one.textContent ?? '').trim().startsWith(words),
  );
  found!.click();
  await wall.updateComplete;
  await wall.updateComplete;
}

function write(wall: LarkNotes, text: string) {
  const field = wall.renderRoot.querySelector('textarea')!;
  field.value = text;
  field.dispatchEvent(new InputEvent('input'));
}

/** A pointer on the pad; places are shares of its width. */
function pointerOn(pad: LarkSketchPad, pointerType = 'mouse') {
  const square = pad.renderRoot.querySelector('svg')!;
  square.setPointerCapture = () => {}; // there is no such pointer to capture
  const { left, top, width } = square.getBoundingClientRect();
  return (type: string, share: number) => {
    const at = { clientX: left + width * share, clientY: top + width * share };
    square.dispatchEvent(new PointerEvent(type, { pointerId: 7, pointerType, ...at }));
  };
}

/** Draws across the pad as one pointer does. */
async function draw(pad: LarkSketchPad, pointerType?: string) {
  const send = pointerOn(pad, pointerType);
  send('pointerdown', 0.25);
  for (let step = 1; step <= 10; step++) send('pointermove', 0.25 + step * 0.05);
  send('pointerup', 0.75);
  await pad.updateComplete;
}

test('words and a drawing go up on the wall, are changed and removed', async () => {
  const { wall, put } = await wallOf();
  await press(wall, 'New note');
  write(wall, '  Elbow round, early ');
  await draw(wall.renderRoot.querySelector('lark-sketch-pad')!);
  await press(wall, 'Put it up');
  expect(put[0]).toMatchObject({ id: 'note-0', text: 'Elbow round, early' });
  expect(put[0]?.strokes?.[0]?.slice(0, 2)).toEqual([0.25, 0.25]);
  expect(put[0]?.strokes?.[0]?.slice(-2)).toEqual([0.75, 0.75]);
  expect(wall.renderRoot.querySelectorAll('.wall > li')).toHaveLength(1);
  await press(wall, 'Change');
  write(wall, 'Elbow round');
  await press(wall, 'Put it up');
  expect(put[1]).toMatchObject({ id: 'note-0', madeAt: put[0]?.madeAt, text: 'Elbow round', strokes: put[0]?.strokes });
  await press(wall, 'Take down');
  expect(put[2]).toMatchObject({ id: 'note-0', removed: true });
  expect(wall.renderRoot.querySelectorAll('.wall > li')).toHaveLength(0);
});

test('an empty note stays off the wall', async () => {
  const { wall, put } = await wallOf();
  await press(wall, 'New note');
  await press(wall, 'Put it up');
  expect(put).toEqual([]);
  expect(wall.renderRoot.querySelector('[role=status]')?.textContent).toBe('Write or draw something first.');
});

test('a note is pinned to the program of its page, or to a week', async () => {
  const { wall, put } = await wallOf(program.id);
  await press(wall, 'New note');
  write(wall, 'Slow draw');
  await press(wall, 'Put it up');
  expect(put[0]?.programId).toBe(program.id);
  await press(wall, 'Change');
  const pins = wall.renderRoot.querySelector('select')!;
  pins.value = 'week 2026-W48'; // 25 November 2026 is in ISO week 48
  pins.dispatchEvent(new Event('change'));
  await press(wall, 'Put it up');
  expect(put[1]).toMatchObject({ week: '2026-W48', text: 'Slow draw' });
  expect(put[1]?.programId).toBeUndefined();
  expect(wall.renderRoot.querySelectorAll('.wall > li')).toHaveLength(0);
});

test('a stroke is taken back, and a second finger does not draw', async () => {
  const { wall } = await wallOf();
  await press(wall, 'New note');
  const pad = wall.renderRoot.querySelector('lark-sketch-pad')!;
  await draw(pad);
  await draw(pad);
  expect(pad.strokes).toHaveLength(2);
  const square = pad.renderRoot.querySelector('svg')!;
  square.dispatchEvent(new PointerEvent('pointerdown', { pointerId: 7, clientX: 10, clientY: 10 }));
  square.dispatchEvent(new PointerEvent('pointerdown', { pointerId: 8, clientX: 20, clientY: 20 }));
  square.dispatchEvent(new PointerEvent('pointerup', { pointerId: 7 }));
  expect(pad.strokes).toHaveLength(3);
  await pad.updateComplete;
  pad.renderRoot.querySelector('button')!.click();
  expect(pad.strokes).toHaveLength(2);
});

test('a stroke that is being drawn outlives a redraw of the wall', async () => {
  const { wall } = await wallOf();
  await press(wall, 'New note');
  const pad = wall.renderRoot.querySelector('lark-sketch-pad')!;
  const send = pointerOn(pad);
  send('pointerdown', 0.25);
  send('pointermove', 0.5);
  write(wall, 'Typed with the other hand');
  await wall.updateComplete;
  send('pointermove', 0.75);
  send('pointerup', 0.75);
  expect(pad.strokes).toHaveLength(1);
  expect(pad.strokes[0]?.slice(0, 2)).toEqual([0.25, 0.25]);
});

test.each(['touch', 'pen', 'mouse'])('a %s draws, and the page does not scroll under it', async (pointerType) => {
  const { wall } = await wallOf();
  await press(wall, 'New note');
  const pad = wall.renderRoot.querySelector('lark-sketch-pad')!;
  await draw(pad, pointerType);
  expect(pad.strokes[0]?.slice(-2)).toEqual([0.75, 0.75]);
  expect(pad.renderRoot.querySelectorAll('path')).toHaveLength(1);
  expect(getComputedStyle(pad.renderRoot.querySelector('svg')!).touchAction).toBe('none');
});

test('has no fault that axe knows', async () => {
  const { wall } = await wallOf();
  await press(wall, 'New note');
  write(wall, 'One');
  await draw(wall.renderRoot.querySelector('lark-sketch-pad')!);
  await press(wall, 'Put it up');
  await press(wall, 'Change');
  expect((await axe.run(wall)).violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
});

import { parseProgram, type ReadyLadder, readyLadders } from '@larkhold/engine';
import { ladderSentences, say } from '@larkhold/words';
import { html, type TemplateResult } from 'lit';
import type { BenchForm } from './bench-form.ts';
import { draftText, setValue } from './draft.ts';
import { type Json, type Path, valueAt } from './json-path.ts';

const names = { longer: 'bench.readyLonger', more: 'bench.readyMore', gentle: 'bench.readyGentle' } as const;

/**
 * The ladders that are ready for a block, each in words; only such as leave the program valid.
 * @param form the bench
 * @param at path of the block's ladder, which it does not have yet
 * @returns a button for each
 */
export function readyLadderTemplates(form: BenchForm, at: Path): TemplateResult[] {
  const block = valueAt(form.draft.file, at.slice(0, -1));
  const [hold, reps] = [valueAt(block, ['hold']), valueAt(block, ['reps'])];
  if (typeof hold !== 'number' || typeof reps !== 'number') return [];
  return readyLadders({ hold, reps }).flatMap((ready) => {
    const lines = wordsWith(form, at, ready);
    if (!lines) return [];
    const choose = ({ currentTarget }: Event) => {
      form.set(at, written(ready));
      // The buttons go; whoever works by keyboard or ear is at the fold, which now says what was chosen.
      if (currentTarget instanceof HTMLElement) currentTarget.closest('details')?.querySelector('summary')?.focus();
    };
    return [
      html`<button type="button" class="ready" @click=${choose}>
        <b>${say(names[ready.kind])}</b><span class="small">${lines.join(' ')}</span>
      </button>`,
    ];
  });
}

/** What the ladder does, as the program's page says it: when it climbs, and each rung. Undefined where the program could not have it. */
function wordsWith(form: BenchForm, at: Path, ready: ReadyLadder): string[] | undefined {
  const parsed = parseProgram(draftText(setValue(form.draft, at, written(ready))));
  const block = parsed.ok ? parsed.program.blocks[Number(at[1])] : undefined;
  return block && ladderSentences(block, form.units).slice(0, 1 + ready.ladder.rungs.length);
}

function written({ ladder }: ReadyLadder): Json {
  return JSON.parse(JSON.stringify(ladder)) as Json;
}

import { formatQuickLine } from '@larkhold/engine';
import { html, nothing, type TemplateResult } from 'lit';
import type { BenchForm } from './bench-form.ts';
import { blocksOf, duplicateBlock, moveBlock, removeBlock } from './draft.ts';
import { choiceField, field, fieldId, linesField, numberField, selectOf, textField } from './field-templates.ts';
import { type Path, pointerOfPath, valueAt } from './json-path.ts';
import { ladderTemplate } from './ladder-template.ts';

const drills = [
  ['holding', 'Holding'],
  ['power', 'Power'],
  ['flexibility', 'Flexibility'],
  ['structure', 'Structure'],
  ['free', 'Free'],
] as const;
const hands = [
  ['usual', 'Usual'],
  ['opposite', 'Opposite'],
  ['both', 'Both, rep by rep'],
] as const;

/**
 * One block's fields and what can be done with it.
 * @param form the bench
 * @param index 0-based
 * @returns what goes into the block's list entry
 */
export function blockTemplate(form: BenchForm, index: number): TemplateResult {
  const at: Path = ['blocks', index];
  const blocks = blocksOf(form.draft);
  const title = valueAt(blocks[index], ['title']);
  const name = typeof title === 'string' ? title : `Block ${index + 1}`;
  const { draft } = form;
  return html`<div class="block-head">
      <span class="grip" aria-hidden="true" title="Drag to move">⠿</span>
      <h3 tabindex="-1">${index + 1}. ${name}</h3>
    </div>
    <div class="row" role="group" aria-label="Block ${index + 1}">
      <button type="button" data-does="up" ?disabled=${index === 0} @click=${() => form.change(moveBlock(draft, index, index - 1))}>Up</button>
      <button type="button" data-does="down" ?disabled=${index === blocks.length - 1} @click=${() => form.change(moveBlock(draft, index, index + 1))}>Down</button>
      <button type="button" ?disabled=${blocks.length >= 20} @click=${() => form.change(duplicateBlock(draft, index))}>Duplicate</button>
      <button type="button" ?disabled=${blocks.length < 2} @click=${() => form.change(removeBlock(draft, index))}>Remove</button>
    </div>
    ${problems(form, at)}
    ${quickLine(form, index)}
    <div class="fields">
      ${textField(form, [...at, 'title'], { label: 'Block title' })}
      ${choiceField(form, [...at, 'drill'], { label: 'Drill' }, drills)}
      ${numberField(form, [...at, 'sets'], { label: 'Sets', unit: '1 to 20' })}
      ${numberField(form, [...at, 'reps'], { label: 'Reps', unit: '1 to 60' })}
      ${numberField(form, [...at, 'draw'], { label: 'Draw', unit: 's' })}
      ${numberField(form, [...at, 'hold'], { label: 'Hold', unit: 's' })}
      ${numberField(form, [...at, 'letDown'], { label: 'Let-down', unit: 's' })}
      ${restFields(form, [...at, 'rest'])}
      ${numberField(form, [...at, 'setRest'], { label: 'Set rest', unit: 's' })}
    </div>
    <details>
      <summary>Hand, weight and calls</summary>
      <div class="fields">
        ${choiceField(form, [...at, 'hand'], { label: 'Hand' }, hands)}
        ${choiceField(form, [...at, 'letDownTo'], { label: 'Lets down to' }, [
          ['rest', 'Rest'],
          ['set-up', 'Set-up'],
        ])}
        ${numberField(form, [...at, 'addedWeight'], { label: 'Added weight', unit: 'lb', hint: 'Over the bow’s own. Empty: none' })}
        ${callsFields(form, [...at, 'calls'])}
      </div>
    </details>
    <details>
      <summary>Ladder</summary>
      ${ladderTemplate(form, [...at, 'ladder'])}
    </details>`;
}

function restFields(form: BenchForm, at: Path): TemplateResult {
  const rest = valueAt(form.draft.file, at);
  const key = typeof rest === 'object' && rest !== null && 'timesHold' in rest ? 'timesHold' : 'seconds';
  const id = fieldId(at);
  return html`${field(
    form,
    at,
    { label: 'Rest given in' },
    selectOf({
      ...{ id, value: key, form, path: at },
      choices: [
        ['seconds', 'Seconds'],
        ['timesHold', 'Holds'],
      ],
      set: (chosen) => form.set(at, chosen === 'seconds' ? { seconds: 20 } : { timesHold: 2 }),
    }),
  )}
  ${numberField(form, [...at, key], { label: 'Rest', unit: key === 'seconds' ? 's' : '× hold' })}`;
}

function callsFields(form: BenchForm, at: Path): TemplateResult {
  const own = valueAt(form.draft.file, at) === 'shot-process';
  return html`<label class="tick wide"
      ><input
        type="checkbox"
        .checked=${own}
        @change=${() => form.set(at, own ? undefined : 'shot-process')}
      />Call the archer’s own shot process</label
    >
    ${own ? nothing : linesField(form, at, { label: 'Calls', hint: 'One a line, said during the hold.' })}`;
}

/** The block as the quick line says it, to be read, copied or learnt from. */
function quickLine({ program }: BenchForm, index: number): TemplateResult | typeof nothing {
  const block = program?.blocks[index];
  return block ? html`<p class="as-line small dim">As a line: <code>${formatQuickLine(block)}</code></p>` : nothing;
}

function problems(form: BenchForm, path: Path): TemplateResult[] {
  const words = form.problems.byField.get(pointerOfPath(path)) ?? [];
  return words.map((one) => html`<p class="problem small">${one}</p>`);
}

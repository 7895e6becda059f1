import { formatQuickLine } from '@larkhold/engine';
import { ladderSentences, pieces, say } from '@larkhold/words';
import { html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { BenchForm } from './bench-form.ts';
import { blocksOf, duplicateBlock, moveBlock, removeBlock } from './draft.ts';
import { choiceField, field, fieldId, linesField, numberField, selectOf, textField } from './field-templates.ts';
import { type Path, pointerOfPath, valueAt } from './json-path.ts';
import { ladderTemplate } from './ladder-template.ts';

const drills = ['holding', 'power', 'flexibility', 'structure', 'free'] as const;
const hands = ['usual', 'opposite', 'both'] as const;

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
  const name = typeof title === 'string' ? title : say('bench.block', { n: index + 1 });
  const { draft } = form;
  return html`<div class="block-head">
      <span class="grip" aria-hidden="true" title=${say('bench.drag')}>⠿</span>
      <h3 tabindex="-1">${say('bench.blockHead', { n: index + 1, title: name })}</h3>
    </div>
    <div class="row" role="group" aria-label=${say('bench.block', { n: index + 1 })}>
      <button type="button" data-does="up" ?disabled=${index === 0} @click=${() => form.change(moveBlock(draft, index, index - 1))}>${say('bench.up')}</button>
      <button type="button" data-does="down" ?disabled=${index === blocks.length - 1} @click=${() => form.change(moveBlock(draft, index, index + 1))}>${say('bench.down')}</button>
      <button type="button" ?disabled=${blocks.length >= 20} @click=${() => form.change(duplicateBlock(draft, index))}>${say('bench.duplicate')}</button>
      <button type="button" ?disabled=${blocks.length < 2} @click=${() => form.change(removeBlock(draft, index))}>${say('bench.remove')}</button>
    </div>
    ${problems(form, at)}
    ${quickLine(form, index)}
    <div class="fields">
      ${textField(form, [...at, 'title'], { label: say('bench.blockTitle') })}
      ${choiceField(
        form,
        [...at, 'drill'],
        { label: say('bench.drill') },
        drills.map((drill) => [drill, say(`bench.${drill}`)] as const),
      )}
      ${numberField(form, [...at, 'sets'], { label: say('bench.sets'), unit: say('bench.range', { least: 1, most: 20 }) })}
      ${numberField(form, [...at, 'reps'], { label: say('bench.reps'), unit: say('bench.range', { least: 1, most: 60 }) })}
      ${numberField(form, [...at, 'draw'], { label: say('bench.draw'), unit: say('bench.secondsUnit') })}
      ${numberField(form, [...at, 'hold'], { label: say('bench.hold'), unit: say('bench.secondsUnit') })}
      ${numberField(form, [...at, 'letDown'], { label: say('bench.letDown'), unit: say('bench.secondsUnit') })}
      ${restFields(form, [...at, 'rest'])}
      ${numberField(form, [...at, 'setRest'], { label: say('bench.setRest'), unit: say('bench.secondsUnit') })}
    </div>
    <details>
      <summary>${say('bench.handMore')}</summary>
      <div class="fields">
        ${choiceField(
          form,
          [...at, 'hand'],
          { label: say('bench.hand') },
          hands.map((hand) => [hand, say(`bench.${hand}`)] as const),
        )}
        ${choiceField(form, [...at, 'letDownTo'], { label: say('bench.letsDownTo') }, [
          ['rest', say('bench.toRest')],
          ['set-up', say('bench.toSetUp')],
        ])}
        ${countFromField(form, [...at, 'countFrom'])}
        ${numberField(form, [...at, 'addedWeight'], { label: say('bench.addedWeight'), unit: say('bench.pounds'), hint: say('bench.weightHint') })}
        ${callsFields(form, [...at, 'calls'])}
      </div>
    </details>
    <details ?open=${guard([], () => valueAt(form.draft.file, [...at, 'ladder']) === undefined)}>
      <summary><span>${say('bench.ladder')} ${ladderWords(form, index)}</span></summary>
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
    { label: say('bench.restIn') },
    selectOf({
      ...{ id, value: key, form, path: at },
      choices: [
        ['seconds', say('bench.seconds')],
        ['timesHold', say('bench.holds')],
      ],
      set: (chosen) => form.set(at, chosen === 'seconds' ? { seconds: 20 } : { timesHold: 2 }),
    }),
  )}
  ${numberField(form, [...at, key], { label: say('bench.rest'), unit: say(key === 'seconds' ? 'bench.secondsUnit' : 'bench.timesHold') })}`;
}

/** Only where a camera sees the archer: by the clock the hold counts from its call. */
function countFromField(form: BenchForm, at: Path): TemplateResult {
  const isFromAnchor = valueAt(form.draft.file, at) === 'anchor';
  return html`<label class="tick wide"
    ><input
      type="checkbox"
      id=${fieldId(at)}
      .checked=${isFromAnchor}
      @change=${() => form.set(at, isFromAnchor ? undefined : 'anchor')}
    />${say('program.countFromAnchor')}</label
  >`;
}

function callsFields(form: BenchForm, at: Path): TemplateResult {
  const own = valueAt(form.draft.file, at) === 'shot-process';
  return html`<label class="tick wide"
      ><input
        type="checkbox"
        .checked=${own}
        @change=${() => form.set(at, own ? undefined : 'shot-process')}
      />${say('bench.ownCalls')}</label
    >
    ${own ? nothing : linesField(form, at, { label: say('bench.calls'), hint: say('bench.callsHint') })}`;
}

/** How the block grows, short, so that a closed fold says it. */
function ladderWords({ program, units }: BenchForm, index: number): TemplateResult | typeof nothing {
  const block = program?.blocks[index];
  if (!block) return nothing;
  const lines = ladderSentences(block, units).slice(0, 1 + (block.ladder?.rungs.length ?? 0));
  return html`<span class="grows small dim">${lines.join(' ')}</span>`;
}

/** The block as the quick line says it, to be read, copied or learnt from. */
function quickLine({ program }: BenchForm, index: number): TemplateResult | typeof nothing {
  const block = program?.blocks[index];
  return block
    ? html`<p class="as-line small dim">${pieces('bench.asLine', { line: html`<code>${formatQuickLine(block)}</code>` })}</p>`
    : nothing;
}

function problems(form: BenchForm, path: Path): TemplateResult[] {
  const words = form.problems.byField.get(pointerOfPath(path)) ?? [];
  return words.map((one) => html`<p class="problem small">${one}</p>`);
}

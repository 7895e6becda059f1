import { say } from '@larkhold/words';
import { html, nothing, type TemplateResult } from 'lit';
import type { BenchForm } from './bench-form.ts';
import { listAt } from './draft.ts';
import { levers, resettable } from './draft-fields.ts';
import { choiceField, numberField } from './field-templates.ts';
import { type Json, type Path, pointerOfPath, valueAt } from './json-path.ts';
import { readyLadderTemplates } from './ready-ladder-template.ts';

/** What a rung can raise, in words. */
const leverKeys = {
  hold: 'bench.leverHold',
  reps: 'bench.leverReps',
  sets: 'bench.leverSets',
  addedWeight: 'bench.leverAddedWeight',
} as const;
const leverWords = () => levers.map((lever) => [lever, say(leverKeys[lever])] as const);

/** The unit of what a rung raises, where it has one. */
function unitOf(lever: unknown): { unit?: string } {
  if (lever === 'hold') return { unit: say('bench.secondsUnit') };
  return lever === 'addedWeight' ? { unit: say('bench.pounds') } : {};
}

const firstRung: Json = { raise: 'hold', by: 1, until: 10 };

/**
 * The fields of a block's ladder.
 * @param form the bench
 * @param at the ladder's path
 * @returns the fields; without a ladder, those that are ready
 */
export function ladderTemplate(form: BenchForm, at: Path): TemplateResult {
  const hold = valueAt(form.draft.file, [...at.slice(0, -1), 'hold']);
  if (valueAt(form.draft.file, at) === undefined) {
    // a first rung that can be climbed, whatever the hold is
    const rung = typeof hold === 'number' ? { raise: 'hold', by: 1, until: Math.min(180, hold + 5) } : firstRung;
    return html`<p class="dim">${say('bench.noLadder')}</p>
      <div class="readies">${readyLadderTemplates(form, at)}</div>
      <button type="button" class="quiet" @click=${() => form.set(at, { rungs: [rung] })}>${say('bench.addLadder')}</button>`;
  }
  const rungs = listAt(form.draft.file, [...at, 'rungs']);
  return html`<ol class="rungs">
      ${rungs.map((_, index) => rungTemplate(form, at, index))}
    </ol>
    ${problemsAt(form, [...at, 'rungs'])}
    <button type="button" @click=${() => form.set([...at, 'rungs'], [...rungs, firstRung])}>${say('bench.addRung')}</button>
    <div class="fields">
      ${numberField(form, [...at, 'climbAfter', 'cleanSessions'], { label: say('bench.climbAfter'), unit: say('bench.cleanSessions'), hint: say('bench.usually', { value: 2 }) })}
      ${numberField(form, [...at, 'climbAfter', 'effortAtMost'], { label: say('bench.effortAtMost'), unit: say('bench.range', { least: 0, most: 10 }), hint: say('bench.usually', { value: 7 }) })}
      ${numberField(form, [...at, 'stepDownAfter', 'missedShare'], { label: say('bench.stepDownMissed'), unit: say('bench.share', { least: 0, most: 1 }), hint: say('bench.usually', { value: 0.2 }) })}
      ${numberField(form, [...at, 'stepDownAfter', 'sessions'], { label: say('bench.inSessions'), unit: say('bench.running'), hint: say('bench.usually', { value: 1 }) })}
      ${numberField(form, [...at, 'weeklyGrowth'], { label: say('bench.growth'), unit: say('bench.times'), hint: say('bench.noLimit') })}
    </div>
    ${deload(form, [...at, 'deload'])} ${layoff(form, [...at, 'layoff'])}
    <button type="button" class="quiet" @click=${() => form.set(at, undefined)}>${say('bench.removeLadder')}</button>`;
}

function rungTemplate(form: BenchForm, at: Path, index: number): TemplateResult {
  const path: Path = [...at, 'rungs', index];
  const rungs = listAt(form.draft.file, [...at, 'rungs']);
  const unit = unitOf(valueAt(rungs[index], ['raise']));
  const take = () => form.set([...at, 'rungs'], rungs.toSpliced(index, 1));
  return html`<li>
    <div class="fields" role="group" aria-label=${say('bench.rung', { n: index + 1 })}>
      ${choiceField(form, [...path, 'raise'], { label: say('bench.rungRaises', { n: index + 1 }) }, leverWords())}
      ${numberField(form, [...path, 'by'], { label: say('bench.by'), ...unit })}
      ${numberField(form, [...path, 'until'], { label: say('bench.until'), ...unit })}
      ${resettable(form.draft, at, index).map((lever) =>
        numberField(form, [...path, 'resets', lever], {
          ...{ label: say('bench.setsBack', { lever: lever === 'addedWeight' ? 'other' : lever }), ...unitOf(lever) },
          hint: say('bench.leavesIt'),
        }),
      )}
    </div>
    ${rungs.length > 1 ? html`<button type="button" class="quiet" @click=${take}>${say('bench.removeRung', { n: index + 1 })}</button>` : nothing}
  </li>`;
}

function deload(form: BenchForm, at: Path): TemplateResult {
  if (valueAt(form.draft.file, at) === undefined) {
    const give = () => form.set(at, { everyWeeks: 4, keep: 0.6 });
    return html`<button type="button" @click=${give}>${say('bench.addLighter')}</button>`;
  }
  return html`<div class="fields" role="group" aria-label=${say('bench.lighterWeeks')}>
      ${numberField(form, [...at, 'everyWeeks'], { label: say('bench.lighterEvery'), unit: say('bench.weeks') })}
      ${numberField(form, [...at, 'keep'], { label: say('bench.repsKept'), unit: say('bench.share', { least: 0.2, most: 0.9 }) })}
    </div>
    <button type="button" class="quiet" @click=${() => form.set(at, undefined)}>${say('bench.removeLighter')}</button>`;
}

function layoff(form: BenchForm, at: Path): TemplateResult {
  const entries = listAt(form.draft.file, at);
  const days = valueAt(entries.at(-1), ['days']);
  const next = { days: typeof days === 'number' ? Math.min(365, days + 14) : 14, stepsDown: 1 };
  const put = (list: readonly Json[]) => form.set(at, list.length > 0 ? list : undefined);
  return html`${entries.map(
    (_, index) => html`<div class="fields" role="group" aria-label=${say('bench.timeOffN', { n: index + 1 })}>
          ${numberField(form, [...at, index, 'days'], { label: say('bench.timeOff'), unit: say('bench.daysOrMore') })}
          ${numberField(form, [...at, index, 'stepsDown'], { label: say('bench.goesDown'), unit: say('bench.steps') })}
        </div>
        <button type="button" class="quiet" @click=${() => put(entries.toSpliced(index, 1))}>${say('bench.removeTimeOff', { n: index + 1 })}</button>`,
  )}
    ${problemsAt(form, at)}
    <button type="button" @click=${() => put([...entries, next])}>${say('bench.addTimeOff')}</button>`;
}

function problemsAt(form: BenchForm, path: Path): TemplateResult[] {
  const words = form.problems.byField.get(pointerOfPath(path)) ?? [];
  return words.map((one) => html`<p class="problem small">${one}</p>`);
}

import { html, nothing, type TemplateResult } from 'lit';
import type { BenchForm } from './bench-form.ts';
import { listAt } from './draft.ts';
import { leverWords, resettable } from './draft-fields.ts';
import { choiceField, numberField } from './field-templates.ts';
import { type Json, type Path, pointerOfPath, valueAt } from './json-path.ts';

/** The unit of what a rung raises. */
const leverUnits: Readonly<Record<string, string>> = { hold: 's', addedWeight: 'lb' };
const firstRung: Json = { raise: 'hold', by: 1, until: 10 };

/**
 * The fields of a block's ladder.
 * @param form the bench
 * @param at the ladder's path
 * @returns the fields, or a button that gives the block a ladder
 */
export function ladderTemplate(form: BenchForm, at: Path): TemplateResult {
  const hold = valueAt(form.draft.file, [...at.slice(0, -1), 'hold']);
  if (valueAt(form.draft.file, at) === undefined) {
    // a first rung that can be climbed, whatever the hold is
    const rung = typeof hold === 'number' ? { raise: 'hold', by: 1, until: Math.min(180, hold + 5) } : firstRung;
    return html`<p class="dim">Without a ladder the block never changes.</p>
      <button type="button" @click=${() => form.set(at, { rungs: [rung] })}>Add a ladder</button>`;
  }
  const rungs = listAt(form.draft.file, [...at, 'rungs']);
  return html`<ol class="rungs">
      ${rungs.map((_, index) => rungTemplate(form, at, index))}
    </ol>
    ${problemsAt(form, [...at, 'rungs'])}
    <button type="button" @click=${() => form.set([...at, 'rungs'], [...rungs, firstRung])}>Add a rung</button>
    <div class="fields">
      ${numberField(form, [...at, 'climbAfter', 'cleanSessions'], { label: 'Climb after', unit: 'clean sessions', hint: 'Empty: 2' })}
      ${numberField(form, [...at, 'climbAfter', 'effortAtMost'], { label: 'With effort at most', unit: '0 to 10', hint: 'Empty: 7' })}
      ${numberField(form, [...at, 'stepDownAfter', 'missedShare'], { label: 'Step down when missed', unit: 'share, 0 to 1', hint: 'Empty: 0.2' })}
      ${numberField(form, [...at, 'stepDownAfter', 'sessions'], { label: 'In so many sessions', unit: 'running', hint: 'Empty: 1' })}
      ${numberField(form, [...at, 'weeklyGrowth'], { label: 'Growth a week at most', unit: 'times, 1 to 2', hint: 'Empty: no limit' })}
    </div>
    ${deload(form, [...at, 'deload'])} ${layoff(form, [...at, 'layoff'])}
    <button type="button" class="quiet" @click=${() => form.set(at, undefined)}>Remove the ladder</button>`;
}

function rungTemplate(form: BenchForm, at: Path, index: number): TemplateResult {
  const path: Path = [...at, 'rungs', index];
  const rungs = listAt(form.draft.file, [...at, 'rungs']);
  const unit = leverUnits[String(valueAt(rungs[index], ['raise']))];
  const take = () => form.set([...at, 'rungs'], rungs.toSpliced(index, 1));
  return html`<li>
    <div class="fields" role="group" aria-label="Rung ${index + 1}">
      ${choiceField(form, [...path, 'raise'], { label: `Rung ${index + 1} raises` }, leverWords)}
      ${numberField(form, [...path, 'by'], { label: 'By', unit })}
      ${numberField(form, [...path, 'until'], { label: 'Until', unit })}
      ${resettable(form.draft, at, index).map((lever) =>
        numberField(form, [...path, 'resets', lever], {
          ...{ label: `Sets ${lever === 'addedWeight' ? 'added weight' : lever} back to`, unit: leverUnits[lever] },
          hint: 'Empty: leaves it',
        }),
      )}
    </div>
    ${rungs.length > 1 ? html`<button type="button" class="quiet" @click=${take}>Remove rung ${index + 1}</button>` : nothing}
  </li>`;
}

function deload(form: BenchForm, at: Path): TemplateResult {
  if (valueAt(form.draft.file, at) === undefined) {
    const give = () => form.set(at, { everyWeeks: 4, keep: 0.6 });
    return html`<button type="button" @click=${give}>Add lighter weeks</button>`;
  }
  return html`<div class="fields" role="group" aria-label="Lighter weeks">
      ${numberField(form, [...at, 'everyWeeks'], { label: 'Lighter every', unit: 'weeks' })}
      ${numberField(form, [...at, 'keep'], { label: 'Reps kept', unit: 'share, 0.2 to 0.9' })}
    </div>
    <button type="button" class="quiet" @click=${() => form.set(at, undefined)}>Remove lighter weeks</button>`;
}

function layoff(form: BenchForm, at: Path): TemplateResult {
  const entries = listAt(form.draft.file, at);
  const days = valueAt(entries.at(-1), ['days']);
  const next = { days: typeof days === 'number' ? Math.min(365, days + 14) : 14, stepsDown: 1 };
  const put = (list: readonly Json[]) => form.set(at, list.length > 0 ? list : undefined);
  return html`${entries.map(
    (_, index) => html`<div class="fields" role="group" aria-label="Time off ${index + 1}">
          ${numberField(form, [...at, index, 'days'], { label: 'Time off', unit: 'days or more' })}
          ${numberField(form, [...at, index, 'stepsDown'], { label: 'Goes down', unit: 'steps' })}
        </div>
        <button type="button" class="quiet" @click=${() => put(entries.toSpliced(index, 1))}>Remove time off ${index + 1}</button>`,
  )}
    ${problemsAt(form, at)}
    <button type="button" @click=${() => put([...entries, next])}>Add a step down after time off</button>`;
}

function problemsAt(form: BenchForm, path: Path): TemplateResult[] {
  const words = form.problems.byField.get(pointerOfPath(path)) ?? [];
  return words.map((one) => html`<p class="problem small">${one}</p>`);
}

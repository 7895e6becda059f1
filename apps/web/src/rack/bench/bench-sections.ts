import type { DraftOutline, Program, WeekAhead } from '@larkhold/engine';
import { say, toolWord, type Units } from '@larkhold/words';
import { html, type TemplateResult } from 'lit';
import { hrefOf } from '../../shell/routing.ts';
import type { BenchForm } from './bench-form.ts';
import { areaField, choiceField, linesField, textField } from './field-templates.ts';
import { fatigueTemplate, weeksTemplate } from './outline-template.ts';

const tools = ['bow', 'light-bow', 'band', 'strap'] as const;

/** What the draft asks for, worked out once for each draft. */
export interface Worked {
  program: Program;
  outline: DraftOutline;
  weeks: readonly WeekAhead[];
}

/**
 * The fields of the whole program.
 * @param form the bench
 * @returns title, tool and words
 */
export function headFields(form: BenchForm): TemplateResult {
  return html`<div class="fields">
      ${textField(form, ['title'], { label: say('bench.fieldTitle') })}
      ${choiceField(
        form,
        ['tool'],
        { label: say('bench.drawnWith') },
        tools.map((tool) => [tool, toolWord(tool)] as const),
      )}
      ${areaField(form, ['about'], { label: say('bench.whatFor') })}
    </div>
    <details>
      <summary>${say('bench.more')}</summary>
      <div class="fields">
        ${textField(form, ['author'], { label: say('bench.author') })}
        ${areaField(form, ['source'], { label: say('bench.source') })}
        ${linesField(form, ['warmUp'], { label: say('bench.warmUp'), hint: say('bench.oneLineEach') })}
        ${linesField(form, ['coolDown'], { label: say('bench.coolDown'), hint: say('bench.oneLineEach') })}
      </div>
    </details>`;
}

/**
 * What the program will do to the archer.
 * @param worked what it asks for
 * @param units the archer's
 * @param sessions a week, and how to choose another number
 * @returns how tired one session makes, and the weeks ahead
 */
export function aheadTemplate(
  { program, outline, weeks }: Worked,
  units: Units,
  sessions: { count: number; choose(count: number): void },
): TemplateResult {
  const choose = ({ target }: Event) => {
    if (target instanceof HTMLSelectElement) sessions.choose(Number(target.value));
  };
  return html`<section aria-labelledby="fatigue-title">
      <h2 id="fatigue-title">${say('bench.tired')}</h2>
      ${fatigueTemplate(outline, hrefOf('kit'))}
    </section>
    <section aria-labelledby="weeks-title">
      <h2 id="weeks-title">${say('bench.nextWeeks')}</h2>
      <p class="dim">${say('bench.ifClean')}</p>
      <p class="sessions"><label for="sessions">${say('bench.sessionsAWeek')}</label>
        <select id="sessions" @change=${choose}>
          ${[1, 2, 3, 4, 5, 6, 7].map((count) => html`<option .selected=${count === sessions.count}>${count}</option>`)}
        </select></p>
      ${weeksTemplate(program, weeks, units)}
    </section>`;
}

import { html, nothing, type TemplateResult } from 'lit';
import { typedIn } from '../../shell/typed-in.ts';
import type { BenchForm } from './bench-form.ts';
import { type Json, type Path, pointerOfPath, valueAt } from './json-path.ts';
import { readNumber } from './read-number.ts';

/** How a field is named and drawn. */
export interface FieldLook {
  label: string;
  /** Said after the label, such as 's'. */
  unit?: string;
  /** A word on what to write. */
  hint?: string;
  /** Takes the whole width. */
  wide?: boolean;
}

/**
 * The id of a field's control.
 * @param path where its value is
 * @returns an id that is the same through every drawing
 */
export function fieldId(path: Path): string {
  return `field${pointerOfPath(path).replaceAll('/', '-')}`;
}

/** @param form the bench. @param path of a number. @param look its names. @returns a field for a number. */
export function numberField(form: BenchForm, path: Path, look: FieldLook): TemplateResult {
  const value = valueAt(form.draft.file, path);
  const text = textShown(form, path, value === undefined ? '' : String(value), readNumber);
  return field(
    form,
    path,
    look,
    html`<input
      id=${fieldId(path)}
      class="number"
      inputmode="decimal"
      autocomplete="off"
      .value=${text}
      aria-invalid=${isWrong(form, path)}
      aria-describedby=${describedBy(path)}
      @input=${(event: Event) => form.set(path, readNumber(typedIn(event)), typedIn(event))}
    />`,
  );
}

/** @param form the bench. @param path of a line of words. @param look its names. @returns a field for one line. */
export function textField(form: BenchForm, path: Path, look: FieldLook): TemplateResult {
  const value = valueAt(form.draft.file, path);
  return field(
    form,
    path,
    { wide: true, ...look },
    html`<input
      id=${fieldId(path)}
      autocomplete="off"
      .value=${typeof value === 'string' ? value : ''}
      aria-invalid=${isWrong(form, path)}
      aria-describedby=${describedBy(path)}
      @input=${(event: Event) => form.set(path, typedIn(event) || undefined)}
    />`,
  );
}

/** @param form the bench. @param path of words. @param look its names. @returns a field for many lines of one text. */
export function areaField(form: BenchForm, path: Path, look: FieldLook): TemplateResult {
  const value = valueAt(form.draft.file, path);
  return area(form, path, look, typeof value === 'string' ? value : '', (typed) => (typed === '' ? undefined : typed));
}

/** @param form the bench. @param path of a list of lines. @param look its names. @returns a field with one entry a line. */
export function linesField(form: BenchForm, path: Path, look: FieldLook): TemplateResult {
  const value = valueAt(form.draft.file, path);
  const read = (typed: string): Json | undefined => {
    const lines = typed.split('\n').map((line) => line.trim());
    return lines.some((line) => line !== '') ? lines.filter((line) => line !== '') : undefined;
  };
  return area(form, path, look, textShown(form, path, Array.isArray(value) ? value.join('\n') : '', read), read);
}

/**
 * A field for one of a few.
 * @param form the bench
 * @param path of the value
 * @param look its names
 * @param choices what is written to the file, and how it is called; the first is what an absent value means
 * @returns the field
 */
export function choiceField(
  form: BenchForm,
  path: Path,
  look: FieldLook,
  choices: readonly (readonly [value: string, words: string])[],
): TemplateResult {
  const value = valueAt(form.draft.file, path) ?? choices[0]?.[0];
  return field(
    form,
    path,
    look,
    selectOf({ id: fieldId(path), value, choices, form, path, set: (chosen) => form.set(path, chosen) }),
  );
}

/** @param input id, value, choices and what to do. @returns a bare list to choose from. */
export function selectOf(input: {
  id: string;
  value: Json | undefined;
  choices: readonly (readonly [value: string, words: string])[];
  form: BenchForm;
  path: Path;
  set(chosen: string): void;
}): TemplateResult {
  const { id, value, choices, form, path, set } = input;
  return html`<select
    id=${id}
    aria-invalid=${isWrong(form, path)}
    aria-describedby=${describedBy(path)}
    @change=${(event: Event) => set(typedIn(event))}
  >
    ${choices.map(([key, words]) => html`<option value=${key} .selected=${key === value}>${words}</option>`)}
  </select>`;
}

/** @param form the bench. @param path of a value. @param look its names. @param control what holds it. @returns label, control, problems. */
export function field(form: BenchForm, path: Path, look: FieldLook, control: TemplateResult): TemplateResult {
  const { label, unit, hint, wide } = look;
  return html`<div class="field ${wide ? 'wide' : ''}">
    <label for=${fieldId(path)}>${label}${unit === undefined ? nothing : html` <span class="dim small">${unit}</span>`}</label>
    ${control}
    <div class="small" id=${describedBy(path)}>${hint === undefined ? nothing : html`<span class="dim">${hint}</span>`}
      ${(form.problems.byField.get(pointerOfPath(path)) ?? []).map((words) => html`<p class="problem">${words}</p>`)}
    </div>
  </div>`;
}

function area(
  form: BenchForm,
  path: Path,
  look: FieldLook,
  text: string,
  read: (typed: string) => Json | undefined,
): TemplateResult {
  return field(
    form,
    path,
    { wide: true, ...look },
    html`<textarea
      id=${fieldId(path)}
      rows="3"
      .value=${text}
      aria-invalid=${isWrong(form, path)}
      aria-describedby=${describedBy(path)}
      @input=${(event: Event) => form.set(path, read(typedIn(event)), typedIn(event))}
    ></textarea>`,
  );
}

/** While '7.' is typed the draft says 7: what is being typed must not be tidied under the archer's hands. */
function textShown(form: BenchForm, path: Path, tidy: string, read: (text: string) => Json | undefined): string {
  const { typed } = form;
  if (typed?.pointer !== pointerOfPath(path)) return tidy;
  return JSON.stringify(read(typed.text)) === JSON.stringify(read(tidy)) ? typed.text : tidy;
}

function isWrong(form: BenchForm, path: Path): 'true' | 'false' {
  return form.problems.byField.has(pointerOfPath(path)) ? 'true' : 'false';
}

function describedBy(path: Path): string {
  return `${fieldId(path)}-words`;
}

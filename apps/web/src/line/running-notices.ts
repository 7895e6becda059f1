import type { DrillRecord, SessionSnapshot } from '@larkhold/engine';
import { cutOff, type RunningDrill } from '@larkhold/store';
import { pieces, say } from '@larkhold/words';
import { html, nothing, type TemplateResult } from 'lit';
import type { AppView } from '../shell/app-context.ts';

/**
 * A drill that another tab runs.
 * @param running what is known of it
 * @returns a notice
 */
export function elsewhereNotice(running: RunningDrill | undefined): TemplateResult {
  return html`<div class="notice elsewhere" role="status">
      <p>${pieces('line.elsewhere', { title: html`<strong>${running?.program ?? say('line.aDrill')}</strong>` })}</p>
    </div>`;
}

/**
 * A drill that was cut off: what is known of it, to go on with or to close.
 * @param view the app's
 * @param running the drill
 * @param act `goOn` with the snapshot to resume from; `close`
 * @returns a notice
 */
export function interruptedNotice(
  view: AppView,
  running: RunningDrill,
  act: { goOn(snapshot: SessionSnapshot): void; close(): void },
): TemplateResult {
  const stored = storedOf(view, running);
  const { resumeFrom: snapshot, record } = cutOff(running, stored);
  const count = stored?.reps.length ?? 0;
  const cut = record?.reps[count];
  return html`<div class="notice interrupted" role="group" aria-label=${say('line.interruptedDrill')}>
      <p>${pieces('line.interrupted', { title: html`<strong>${running.program}</strong>`, logged: count > 0 ? say('line.loggedTo', { rep: count }) : say('line.noRepEnded') })}</p>
      ${cut ? html`<p>${say('line.cutOffRep', { rep: count + 1, heldMs: cut.heldMs })}</p>` : nothing}
      <div class="row">
        ${snapshot ? html`<button @click=${() => act.goOn(snapshot)}>${say('line.goOn')}</button>` : nothing}
        <button class="quiet" @click=${() => act.close()}>${say('line.closeIt')}</button>
      </div>
    </div>`;
}

/**
 * What was written of the record of a drill that was cut off.
 * @param view the app's
 * @param running the drill
 * @returns its record so far
 */
export function storedOf({ journal }: AppView, { recordId }: RunningDrill): DrillRecord | undefined {
  return journal.drills.find(({ id }) => id === recordId);
}

import type { Prescription } from '@larkhold/engine';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import '@larkhold/ui';
import '../shell/fatigue-curve.ts';
import { outlookWords, presentWords, say } from '@larkhold/words';
import { outlookOf } from '../shell/outlook-of.ts';
import { lastBaseline, retestWords } from '../shell/own-hold.ts';

/**
 * How hard today's drill will be, in one line; timeline and curve when it is opened.
 *
 * @prop prescription today's drill
 */
@customElement('fatigue-fold')
export class FatigueFold extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      :host {
        margin-top: calc(var(--gap) * 1.2);
      }
      details {
        border-bottom: 1px solid var(--rule);
      }
      summary {
        padding: 0.5rem 0;
      }
      .inside {
        padding-bottom: var(--gap);
      }
      fatigue-curve {
        margin-top: 0.8rem;
      }
      small {
        font-size: var(--text-small);
        font-weight: 400;
        color: var(--dim);
      }
    `,
  ];

  @property({ attribute: false }) prescription: Prescription | undefined;

  override render() {
    const { app, prescription } = this;
    if (!app || !prescription) return nothing;
    const { timeline, prediction, ...known } = outlookOf(app.view, prescription);
    const outlook = prediction
      ? outlookWords(prediction, prescription, presentWords(), known)
      : known.heldOn === undefined
        ? say('outlook.unknown')
        : say('outlook.heldBefore', { day: known.heldOn });
    const due = retestWords(lastBaseline(app.view.journal.drills, app.view.programs), app.view.today);
    return html`<details>
      <summary><span>${say('outlook.howHard')}<br /><small>${outlook}${due ? html`<br />${due}` : nothing}</small></span></summary>
      <div class="inside">
        <lark-timeline-picture .timeline=${timeline}></lark-timeline-picture>
        <fatigue-curve .prescription=${prescription}></fatigue-curve>
      </div>
    </details>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'fatigue-fold': FatigueFold;
  }
}

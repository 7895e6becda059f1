import { pieces, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PlaceElement } from '../shell/place-element.ts';
import '@larkhold/ui';
import { nothingDrawn, type Strokes } from '@larkhold/ui';
import { typedIn } from '../shell/typed-in.ts';
import { readSteps } from './shot-steps.ts';

/** The archer's shot process: steps as lines, and a sketch. */
@customElement('lark-shot-process')
export class LarkShotProcess extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      label {
        margin-top: 0.9rem;
      }
      textarea {
        max-width: 36rem;
        min-height: 8rem;
        margin-top: 0.3rem;
      }
      [role='alert']:empty {
        display: none;
      }
      [role='alert'] {
        margin-top: 0.5rem;
        font-weight: 600;
      }
      details {
        margin-top: 0.8rem;
      }
    `,
  ];

  @state() private problem = '';

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { shotProcess, shotSketch } = app.view.kit;
    return html`<section aria-labelledby="process">
      <h2 id="process">${say('kit.shotProcess')}</h2>
      <p class="dim">
        ${say('kit.shotAbout')}
      </p>
      <label
        >${say('kit.oneLine')}
        <textarea placeholder=${say('kit.shotExample')} .value=${shotProcess.join('\n')} aria-describedby="problem" @change=${this.#write}></textarea>
      </label>
      <p id="problem" role="alert">${this.problem}</p>
      <details>
        <summary>${pieces('kit.shotSketch', { drawn: shotSketch ? html`<span class="dim">${say('kit.drawn')}</span>` : nothing })}</summary>
        <lark-sketch-pad
          words=${say('kit.sketchOfShot')}
          .strokes=${shotSketch ?? nothingDrawn}
          @sketch-change=${({ detail }: CustomEvent<Strokes>) =>
            app.act.changeKit({ shotSketch: detail.length > 0 ? detail.map((stroke) => [...stroke]) : undefined })}
        ></lark-sketch-pad>
      </details>
    </section>`;
  }

  readonly #write = (event: Event): void => {
    const read = readSteps(typedIn(event));
    this.problem = read.ok ? '' : read.message;
    if (read.ok) void this.app?.act.changeKit({ shotProcess: read.steps });
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-shot-process': LarkShotProcess;
  }
}

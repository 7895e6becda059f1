import type { CueTrackOptions } from '@larkhold/cues';
import { layOut, type Prescription } from '@larkhold/engine';
import { choiceOf } from '@larkhold/ui';
import { formatShare, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { allowedCallsOf } from './call-answers.ts';
import { PlaceElement } from './place-element.ts';
import { fileNameOf, saveBlob } from './save-file.ts';

type Format = NonNullable<CueTrackOptions['format']>;

/**
 * Today's cues as a sound file, to be played with the screen locked or by another player.
 *
 * @prop prescription today's numbers
 * @prop programTitle names the file
 * @prop programId the program, as `idOf` names it: its lines that may be said at full draw
 * @prop save takes the finished file; the browser's own saving where left out
 */
@customElement('lark-cue-track')
export class LarkCueTrack extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .row {
        margin: 0.4rem 0 1rem;
      }
      progress {
        flex: 1 1 10rem;
        height: 0.9rem;
        accent-color: var(--accent);
      }
    `,
  ];

  @property({ attribute: false }) prescription: Prescription | undefined;
  @property({ attribute: false }) programTitle = '';
  @property({ attribute: false }) programId = '';
  @property({ attribute: false }) save: (name: string, file: Blob) => void = saveBlob;
  @state() private format: Format = 'webm';
  @state() private doneRatio: number | undefined;
  @state() private said = '';
  #stop: AbortController | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.abort();
  }

  override render() {
    const { prescription, doneRatio } = this;
    if (!prescription || !this.app) return nothing;
    return html`<details>
      <summary>${say('track.title')}</summary>
      <p class="dim small">${say('track.about')}</p>
      <div class="row">
        ${choiceOf(say('track.kind'), this.format, { webm: say('track.webm'), wav: say('track.wav') }, (format) => {
          this.format = format;
        })}
        ${
          doneRatio === undefined
            ? html`<button @click=${() => this.#make(prescription)}>${say('track.make')}</button>`
            : html`<progress aria-label=${say('track.progress')} max="1" .value=${doneRatio}></progress>
                <span class="numbers">${formatShare(doneRatio)}</span>
                <button @click=${() => this.#stop?.abort()}>${say('track.cancel')}</button>`
        }
      </div>
      <p role="status">${this.said}</p>
    </details>`;
  }

  async #make(prescription: Prescription): Promise<void> {
    const kit = this.app?.view.kit;
    if (!kit) return;
    const { format } = this;
    const { shotProcess, spoken } = kit;
    const allowedCalls = allowedCallsOf(kit, this.programId);
    const stop = new AbortController();
    this.#stop = stop;
    this.doneRatio = 0;
    this.said = '';
    try {
      const { renderCueTrack } = await import('@larkhold/cues');
      const file = await renderCueTrack(layOut(prescription, { shotProcess, allowedCalls, spoken }), {
        ...{ format, voice: kit.voice, quiet: kit.quiet, signal: stop.signal },
        onProgress: (doneRatio) => {
          this.doneRatio = doneRatio;
        },
      });
      const name = `${fileNameOf(this.programTitle)}-${prescription.date}.${format}`;
      this.save(name, file);
      this.said = say('track.saved', { file: name, size: file.size / 1e6 });
    } catch (error) {
      this.said = stop.signal.aborted ? say('track.cancelled') : wordsOf(error);
    } finally {
      this.doneRatio = undefined;
    }
  }
}

/** An encoder that this browser lacks is the one fault an archer can do something about. */
function wordsOf(error: unknown): string {
  if (error instanceof RangeError) return say('track.cannotKind');
  return say('track.failed', { reason: error instanceof Error ? error.message : String(error) });
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-cue-track': LarkCueTrack;
  }
}

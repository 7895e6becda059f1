import type { BoxLink } from '@larkhold/box';
import { formatDay } from '@larkhold/words';
import { css, html, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { folderPicker } from '../shell/backup-folder.ts';
import type { BoxKeeper } from '../shell/box-keeper.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { qrOf } from '../shell/qr-modules.ts';
import { kitStyles } from './kit-styles.ts';

/** Where a host has its boxes, beside the app. */
const HOSTED_AT = '/box';

/**
 * One journal on all of an archer's devices: makes a box, pairs, shows when this device last met the others, and what can be undone.
 *
 * @prop payload the end of a pairing link, where one was opened
 */
@customElement('box-page')
export class BoxPage extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    kitStyles,
    css`
      svg {
        width: min(16rem, 100%);
        background: white;
      }
      .link {
        overflow-wrap: anywhere;
        user-select: all;
      }
    `,
  ];

  @property() payload = '';
  @state() private name = '';
  @state() private said = '';
  @state() private pairingLink = '';
  #stop: (() => void) | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.();
    this.#stop = undefined;
  }

  protected override willUpdate(): void {
    this.#stop ??= this.app?.act.box?.subscribe(() => this.requestUpdate());
  }

  override render() {
    const keeper = this.app?.act.box;
    if (!this.app || !keeper) return nothing;
    return html`<h1>All my devices</h1>
      ${keeper.link ? this.#inBox(keeper, keeper.link) : this.#outside(this.app, keeper)}
      <p role="status">${this.said}</p>
      <p><a href="#/kit">Back to the kit</a></p>`;
  }

  #outside(app: App, keeper: BoxKeeper) {
    const isInvited = this.payload !== '';
    return html`<p>
        ${
          isInvited
            ? 'This link pairs this device with your other ones. Their journal, programs and bow are merged into what is here, and what is here goes to them. Nothing is replaced, and it can be undone.'
            : 'The phone by the mirror, the laptop, the tablet: one journal on all of them. Each puts a sealed file into a box and reads the others’. Whoever hosts the box can read nothing.'
        }
      </p>
      <label>What do you call this device? <input type="text" maxlength="40" placeholder="Phone" .value=${this.name} @input=${(
        event: InputEvent,
      ) => {
        if (event.target instanceof HTMLInputElement) this.name = event.target.value;
      }} /></label>
      <div class="row">
        ${
          isInvited
            ? html`<button class="main" @click=${() => this.#join(app, keeper)}>Pair this device</button>`
            : html`<button class="main" @click=${() => this.#make(keeper, HOSTED_AT)}>Make a box on this host</button>
                ${folderPicker() ? html`<button @click=${() => this.#make(keeper)}>Make a box in a folder</button>` : nothing}`
        }
      </div>
      ${isInvited ? nothing : html`<p class="dim small">To join devices that are paired already, open the link or the QR code that one of them shows.</p>`}`;
  }

  #inBox(keeper: BoxKeeper, link: BoxLink) {
    const met = Object.entries(link.met);
    return html`<p class="state">
        ${
          link.isPaused
            ? 'Paused: nothing goes in or out.'
            : link.lastRoundAt
              ? `The box was last met on ${formatDay(link.lastRoundAt.slice(0, 10), 'year')} at ${link.lastRoundAt.slice(11, 16)} UTC.`
              : 'The box has not been met yet.'
        }
      </p>
      <div class="row">
        ${
          link.isPaused
            ? html`<button class="main" @click=${() => keeper.resume()}>Meet again</button>`
            : html`<button class="main" ?disabled=${keeper.isMeeting} @click=${() => keeper.meet(true)}>Meet now</button>`
        }
        ${keeper.canUndo ? html`<button @click=${() => keeper.undo()}>Undo the last round</button>` : nothing}
        <button @click=${() => this.#show(link)}>Pair another device</button>
        <button @click=${() => this.#leave(keeper)}>Leave the box</button>
      </div>
      ${this.pairingLink === '' ? nothing : this.#pairing()}
      <h2>Devices</h2>
      <ul>
        <li>${link.title || 'This device'} (this one)</li>
        ${met.map(([, { title, madeAt }]) => html`<li>${title || 'A device'}: its news of ${formatDay(madeAt.slice(0, 10), 'year')}, ${madeAt.slice(11, 16)} UTC</li>`)}
      </ul>
      ${
        link.log.length === 0
          ? nothing
          : html`<h2>Last rounds</h2>
              <ul class="log">
                ${link.log.map(({ at, lines }) => html`<li>${at.slice(0, 10)} ${at.slice(11, 16)} UTC: ${lines.join(' ')}</li>`)}
              </ul>`
      }`;
  }

  #pairing() {
    const qr = qrOf(this.pairingLink);
    return html`<p>
        Open this on the other device, by its camera or as a link. Whoever has it can read the journal: show it to nobody else. A device that you lose means a new
        box: leave this one on each device and make another.
      </p>
      ${qr ? svg`<svg viewBox="0 0 ${qr.size} ${qr.size}" role="img" aria-label="QR code of the link below" shape-rendering="crispEdges"><path d=${qr.path}></path></svg>` : nothing}
      <p class="link small">${this.pairingLink}</p>`;
  }

  async #make(keeper: BoxKeeper, address?: string): Promise<void> {
    const folder = address === undefined ? await folderPicker()?.() : undefined;
    if (address === undefined && !folder) return;
    const { createPairing } = await import('@larkhold/box');
    this.said =
      (await keeper.join(createPairing(address), this.name.trim() || 'This device', folder)) ?? 'The box is made.';
  }

  async #join(app: App, keeper: BoxKeeper): Promise<void> {
    const { parsePairing } = await import('@larkhold/box');
    const read = parsePairing(this.payload);
    if (!read.ok) {
      this.said = read.message;
      return;
    }
    const folder = read.pairing.address === undefined ? await folderPicker()?.() : undefined;
    const trouble = await keeper.join(read.pairing, this.name.trim() || 'This device', folder);
    const { drills, days, opened = [] } = await app.act.storedJournal();
    this.said =
      trouble ??
      `Paired. Here are now ${drills.length} drills, ${days.length} days of the diary and ${opened.length} opened programs, your bow and your season.`;
  }

  async #show({ secret, address }: BoxLink): Promise<void> {
    const { formatPairing } = await import('@larkhold/box');
    const end = formatPairing({ secret, ...(address === undefined ? {} : { address }) });
    this.pairingLink = `${location.href.replace(/#.*$/, '')}#/box/${end}`;
  }

  async #leave(keeper: BoxKeeper): Promise<void> {
    this.pairingLink = '';
    await keeper.leave();
    this.said = 'Left. What is here stays here, and this device’s file is out of the box.';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'box-page': BoxPage;
  }
}

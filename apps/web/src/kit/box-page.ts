import type { BoxLink, Pairing, RoundEntry } from '@larkhold/box';
import { presentWords, say } from '@larkhold/words';
import { css, html, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { folderPicker } from '../shell/backup-folder.ts';
import type { BoxKeeper } from '../shell/box-keeper.ts';
import { localWhen } from '../shell/local-when.ts';
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
  @state() private said: string | readonly string[] = '';
  @state() private pairingLink = '';
  /** What the box's own words are: loaded with it. */
  @state() private newsWords: typeof import('@larkhold/box').newsWords | undefined;
  #stop: (() => void) | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.();
    this.#stop = undefined;
  }

  protected override willUpdate(): void {
    if (this.#stop !== undefined) return;
    this.#stop = this.app?.act.box?.subscribe(() => this.requestUpdate());
    void import('@larkhold/box').then(({ newsWords }) => {
      this.newsWords = newsWords;
    });
  }

  override render() {
    const keeper = this.app?.act.box;
    if (!this.app || !keeper) return nothing;
    return html`<h1>${say('box.heading')}</h1>
      ${keeper.link ? this.#inBox(keeper, keeper.link) : this.#outside(this.app, keeper)}
      <div role="status">
        ${
          typeof this.said === 'string'
            ? html`<p>${this.said}</p>`
            : html`<p>${say('box.restored')}</p>
                <ul class="restored">${this.said.map((line) => html`<li>${line}</li>`)}</ul>
                <p>${say('box.restoredOwn')}</p>`
        }
      </div>
      <p><a href="#/kit">${say('box.back')}</a></p>`;
  }

  #outside(app: App, keeper: BoxKeeper) {
    const isInvited = this.payload !== '';
    return html`<p>${say(isInvited ? 'box.invited' : 'box.about')}</p>
      <label>${say('box.nameField')} <input type="text" maxlength="40" placeholder=${say('box.nameExample')} .value=${this.name} @input=${(
        event: InputEvent,
      ) => {
        if (event.target instanceof HTMLInputElement) this.name = event.target.value;
      }} /></label>
      <div class="row">
        ${
          isInvited
            ? html`<button class="main" @click=${() => this.#join(app, keeper)}>${say('box.pair')}</button>`
            : html`<button class="main" @click=${() => this.#make(keeper, HOSTED_AT)}>${say('box.makeHere')}</button>
                ${folderPicker() ? html`<button @click=${() => this.#make(keeper)}>${say('box.makeFolder')}</button>` : nothing}`
        }
      </div>
      ${isInvited ? nothing : html`<p class="dim small">${say('box.joinAbout')}</p>`}`;
  }

  #inBox(keeper: BoxKeeper, link: BoxLink) {
    const state = link.isPaused
      ? say('box.paused')
      : link.lastRoundAt
        ? say('box.lastMet', localWhen(link.lastRoundAt))
        : say('box.notMet');
    return html`<p class="state">${state}</p>
      <div class="row">
        ${
          link.isPaused
            ? html`<button class="main" @click=${() => keeper.resume()}>${say('box.meetAgain')}</button>`
            : html`<button class="main" ?disabled=${keeper.isMeeting} @click=${() => keeper.meet('press')}>${say('box.meetNow')}</button>`
        }
        ${keeper.canUndo ? html`<button @click=${() => keeper.undo()}>${say('box.undo')}</button>` : nothing}
        <button @click=${() => this.#show(link)}>${say('box.pairAnother')}</button>
        <button @click=${() => this.#leave(keeper)}>${say('box.leave')}</button>
      </div>
      ${this.pairingLink === '' ? nothing : this.#pairing()}
      <h2>${say('box.devices')}</h2>
      <ul class="devices">
        <li>${say('box.isThis', { title: link.title || say('box.thisDevice') })}</li>
        ${Object.entries(link.met).map(([device, { title, madeAt }]) => {
          return html`<li>
            ${say('box.newsOf', { title, ...localWhen(madeAt) })}
            <button class="quiet" @click=${() => this.#forget(keeper, device, title)}>${say('box.forget', { title })}</button>
          </li>`;
        })}
      </ul>
      ${link.log.length === 0 ? nothing : this.#log(link.log)}`;
  }

  #log(log: readonly RoundEntry[]) {
    const { newsWords } = this;
    if (newsWords === undefined) return nothing;
    return html`<h2>${say('box.log')}</h2>
      <ul class="log">
        ${log.map(({ at, news }) => {
          return html`<li>${say('box.logLine', { ...localWhen(at), words: news.map((one) => newsWords(one)).join(' ') })}</li>`;
        })}
      </ul>`;
  }

  #pairing() {
    const qr = qrOf(this.pairingLink);
    return html`<p>${say('box.showLink')}</p>
      ${qr ? svg`<svg viewBox="0 0 ${qr.size} ${qr.size}" role="img" aria-label=${say('box.qr')} shape-rendering="crispEdges"><path d=${qr.path}></path></svg>` : nothing}
      <p class="link small">${this.pairingLink}</p>`;
  }

  async #make(keeper: BoxKeeper, address?: string): Promise<void> {
    const folder = address === undefined ? await folderPicker()?.() : undefined;
    if (address === undefined && !folder) return;
    const { createPairing } = await import('@larkhold/box');
    const entry = await this.#enter(keeper, createPairing(address), folder);
    this.said = entry?.isGood ? say('box.made') : this.#words(entry);
  }

  #enter(
    keeper: BoxKeeper,
    pairing: Pairing,
    folder: Awaited<ReturnType<NonNullable<ReturnType<typeof folderPicker>>>>,
  ) {
    return keeper.join(pairing, this.name.trim() || say('box.thisDevice'), folder);
  }

  #words(entry: RoundEntry | undefined): string {
    return entry?.news.map((one) => this.newsWords?.(one) ?? '').join(' ') ?? '';
  }

  async #join(app: App, keeper: BoxKeeper): Promise<void> {
    const { parsePairing } = await import('@larkhold/box');
    const read = parsePairing(this.payload);
    if (!read.ok) {
      this.said = say('box.cutLink');
      return;
    }
    const folder = read.pairing.address === undefined ? await folderPicker()?.() : undefined;
    const entry = await this.#enter(keeper, read.pairing, folder);
    this.said = entry && !entry.isGood ? this.#words(entry) : await this.#restored(app);
  }

  /** What is here after pairing: on a new device, all that was restored. */
  async #restored({ act, view }: App): Promise<string[]> {
    const { drills, days, weeks, opened = [], season, ownKit } = await act.storedJournal();
    const { list, weight } = presentWords();
    const titles = opened.map(({ program }) => String(program.title ?? ''));
    // The kit as it is now, with what the round has just brought.
    const { bow, drawWeightLbf, units } = this.app?.view.kit ?? view.kit;
    return [
      say('box.restoredDrills', { n: drills.length }),
      say('box.restoredDays', { n: days.length, weeks: weeks.length }),
      say('box.restoredPrograms', { n: opened.length, titles: list(titles) }),
      ...(ownKit
        ? [say('box.restoredBow', { bow: say(`kit.${bow}`), weight: weight(drawWeightLbf ?? 0, units) })]
        : []),
      ...(season ? [say('box.restoredSeason')] : []),
    ];
  }

  async #show({ secret, address }: BoxLink): Promise<void> {
    const { formatPairing } = await import('@larkhold/box');
    const end = formatPairing({ secret, ...(address === undefined ? {} : { address }) });
    this.pairingLink = `${location.href.replace(/#.*$/, '')}#/box/${end}`;
  }

  async #forget(keeper: BoxKeeper, device: string, title: string): Promise<void> {
    await keeper.forget(device);
    this.said = say('box.forgotten', { title });
  }

  async #leave(keeper: BoxKeeper): Promise<void> {
    this.pairingLink = '';
    await keeper.leave();
    this.said = say('box.left');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'box-page': BoxPage;
  }
}

import type { BoxLink, Pairing, RoundEntry } from '@larkhold/box';
import { isAsNew } from '@larkhold/store';
import { tickOf } from '@larkhold/ui';
import { presentWords, say } from '@larkhold/words';
import { css, html, nothing, type PropertyValues, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from '../shell/app-context.ts';
import { folderPicker } from '../shell/backup-folder.ts';
import type { BoxKeeper, JoinOptions } from '../shell/box-keeper.ts';
import { localWhen } from '../shell/local-when.ts';
import { PlaceElement } from '../shell/place-element.ts';
import { qrOf } from '../shell/qr-modules.ts';
import { typedIn } from '../shell/typed-in.ts';
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
      p,
      label,
      ul {
        margin-block: 0.6rem;
      }
      .said {
        font-weight: 600;
      }
      .restored {
        padding-left: 1.1rem;
        list-style: disc;
      }
      .devices button {
        text-align: start;
      }
      .link {
        overflow-wrap: anywhere;
        user-select: all;
      }
    `,
  ];

  @property() payload = '';
  @state() private name = '';
  /** Whether the controls of another device are copied; undefined until the archer has said so. */
  @state() private takesControls: boolean | undefined;
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

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('payload') && this.payload !== '') this.said = ''; // it was about another link
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
      <div role="status">
        ${
          typeof this.said === 'string'
            ? this.said && html`<p class="said">${this.said}</p>`
            : html`<p class="said">${say('box.restored')}</p>
                <ul class="restored">${this.said.map((line) => html`<li>${line}</li>`)}</ul>
                <p>${say(keeper.controlsOf === undefined ? 'box.restoredOwn' : 'box.restoredTaken')}</p>`
        }
        ${keeper.controlsOf === undefined ? nothing : html`<button @click=${() => this.#leaveControls(keeper)}>${say('box.leaveControls')}</button>`}
      </div>
      ${keeper.link ? this.#inBox(keeper, keeper.link) : this.#outside(this.app, keeper)}
      <p><a href="#/kit">${say('box.back')}</a></p>`;
  }

  #outside(app: App, keeper: BoxKeeper) {
    const isInvited = this.payload !== '';
    return html`<p>${say(isInvited ? 'box.invited' : 'box.about')}</p>
      <label>${say('box.nameField')} <input type="text" maxlength="40" placeholder=${say('box.nameExample')} .value=${this.name} @input=${(
        event: InputEvent,
      ) => {
        this.name = typedIn(event);
      }} /></label>
      ${
        isInvited
          ? html`${tickOf(say('box.takeControls'), this.#takes(app), (takes) => {
              this.takesControls = takes;
            })}
              <p class="dim small">${say('box.takeControlsAbout')}</p>`
          : nothing
      }
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
            ? html`<button class="main" @click=${() => this.#meetAgain(keeper)}>${say('box.meetAgain')}</button>`
            : html`<button class="main" ?disabled=${keeper.isMeeting} @click=${() => keeper.meet('press')}>${say('box.meetNow')}</button>`
        }
        ${keeper.canUndo ? html`<button @click=${() => this.#undo(keeper)}>${say('box.undo')}</button>` : nothing}
        <button @click=${() => this.#show(link)}>${say('box.pairAnother')}</button>
        <button @click=${() => this.#leave(keeper)}>${say('box.leave')}</button>
      </div>
      ${this.pairingLink === '' ? nothing : this.#pairing()}
      <h2>${say('box.devices')}</h2>
      <ul class="devices">
        <li>${say('box.isThis', { title: link.title || say('box.thisDevice') })}</li>
        ${Object.entries(link.met).map(([device, { title, madeAt, kit }]) => {
          return html`<li>
            ${say('box.newsOf', { title, ...localWhen(madeAt) })}
            ${kit === undefined ? nothing : html`<button class="quiet" @click=${() => this.#useControls(keeper, device, title)}>${say('box.useControls', { title })}</button>`}
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
    const entry = await this.#enter(keeper, createPairing(address), folder ? { folder } : {});
    this.said = entry?.isGood ? say('box.made') : this.#words(entry);
  }

  #enter(keeper: BoxKeeper, pairing: Pairing, options: JoinOptions) {
    return keeper.join(pairing, this.name.trim() || say('box.thisDevice'), options);
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
    const takesControls = this.#takes(app);
    const entry = await this.#enter(keeper, read.pairing, { takesControls, ...(folder ? { folder } : {}) });
    // The secret stays no longer in the address than it has to.
    history.replaceState(history.state, '', '#/box');
    this.payload = '';
    this.said = entry && !entry.isGood ? this.#words(entry) : await this.#restored(app, keeper, takesControls);
  }

  /** What is here after pairing: on a new device, all that was restored. */
  async #restored({ act, view }: App, { controlsOf }: BoxKeeper, takesControls: boolean): Promise<string[]> {
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
      ...(controlsOf === undefined ? [] : [say('box.restoredControls', { title: controlsOf })]),
      ...(takesControls && controlsOf === undefined ? [say('box.noControls')] : []),
    ];
  }

  async #show({ secret, address }: BoxLink): Promise<void> {
    const { formatPairing } = await import('@larkhold/box');
    const end = formatPairing({ secret, ...(address === undefined ? {} : { address }) });
    this.pairingLink = `${location.href.replace(/#.*$/, '')}#/box/${end}`;
  }

  /** A new device takes them over unless the archer says otherwise; one that has its own does where the archer says so. */
  #takes({ view }: App): boolean {
    return this.takesControls ?? isAsNew(view.kit);
  }

  async #useControls(keeper: BoxKeeper, device: string, title: string): Promise<void> {
    if (await keeper.takeControls(device)) this.said = say('box.usesControls', { title });
  }

  async #leaveControls(keeper: BoxKeeper): Promise<void> {
    await keeper.leaveControls();
    this.said = say('box.controlsLeft');
  }

  async #undo(keeper: BoxKeeper): Promise<void> {
    this.said = ''; // what was said to be here is here no longer
    await keeper.undo();
  }

  async #meetAgain(keeper: BoxKeeper): Promise<void> {
    this.said = '';
    await keeper.resume();
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

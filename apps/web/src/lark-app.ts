import { presentWords, say } from '@larkhold/words';
import { ContextProvider } from '@lit/context';
import { html, LitElement, nothing, type PropertyValues, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import { type App, appContext } from './shell/app-context.ts';
import './kit/backup-notice.ts';
import './journal/lark-journal.ts';
import './kit/lark-kit.ts';
import './line/lark-line.ts';
import { controlStyles, keepFocus, pageStyles } from '@larkhold/ui';
import { appStyles } from './shell/app-styles.ts';
import './rack/lark-rack.ts';
import './shell/coach-answer.ts';
import './shell/lark-lost.ts';
import './shell/lark-missing-page.ts';
import './shell/lark-odd-entries.ts';
import './shell/lark-replaced.ts';
import './rack/lark-program.ts';
import { hrefOf, type Place, places, type Route, routeOf } from './shell/routing.ts';

/** Loaded when they are first opened. */
const pages = {
  week: () => import('./journal/week/week-page.ts'),
  trends: () => import('./journal/trends/trends-page.ts'),
  coach: () => import('./journal/coach/coach-page.ts'),
  milestones: () => import('./journal/milestones/milestones-page.ts'),
  bench: () => import('./rack/bench/bench-page.ts'),
  open: () => import('./rack/share/lark-open-link.ts'),
  plan: () => import('./rack/plan/plan-page.ts'),
  restore: () => import('./journal/restore-page.ts'),
  season: () => import('./rack/season/season-page.ts'),
  box: () => import('./kit/box-page.ts'),
  files: () => import('./kit/files-page.ts'),
  known: () => import('./kit/known/known-page.ts'),
};

type PageName = keyof typeof pages;

/** Own drawings, 24 units wide: a bow, programs on pegs, a written page, a finger tab. */
const icons: Readonly<Record<Place, ReturnType<typeof svg>>> = {
  line: svg`<path d="M9 3C5.5 6.5 5 9.500 5 12s.5 5.500 4 9M9 3l11 9-11 9"></path>`,
  rack: svg`<path d="M4 6h16M4 12h16M4 18h16M7 6v3M7 12v3M7 18v3"></path>`,
  journal: svg`<path d="M5 3h14v18H5zM9 3v18M12 8h4M12 12h4M12 16h2"></path>`,
  kit: svg`<path d="M6 4h7c4 0 6 3 6 8s-2 8-6 8H6zM10 9v6"></path>`,
};

/**
 * The app: four places and the way between them.
 *
 * @prop app view and actions; nothing is shown before they are there
 * @prop newer begins a newer version, where one is waiting
 * @prop incoming files that the app was opened with
 */
@customElement('lark-app')
export class LarkApp extends LitElement {
  static override styles = [pageStyles, controlStyles, appStyles];

  @property({ attribute: false }) app: App | undefined;
  @property({ attribute: false }) newer: (() => void) | undefined;
  @property({ attribute: false }) incoming: readonly File[] = [];
  @state() private route: Route = routeOf(location.hash);
  /** Files came in the middle of a drill, and the archer has not been to the rack since. */
  @state() private isWaiting = false;
  /** Pages whose part of the app could not be fetched. */
  @state() private missing: ReadonlySet<PageName> = new Set();
  /** Another part could not be fetched: a sound encoder, the way to the box. */
  @state() private isPartMissing = false;

  /** Files that were picked on another page, for the page of files. */
  @state() private picked: readonly File[] = [];

  readonly #provider = new ContextProvider(this, { context: appContext });

  #endKeeping: (() => void) | undefined;

  readonly #onHash = (): void => {
    const route = routeOf(location.hash);
    const isSame = JSON.stringify(route) === JSON.stringify(this.route);
    this.route = route;
    if (isSame) return;
    window.scrollTo(0, 0);
    // Before the place is drawn, so that a place may put the focus where it is needed.
    this.#toMain();
  };

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('hashchange', this.#onHash);
    window.addEventListener('vite:preloadError', this.#onMissing);
    this.#endKeeping = keepFocus(this, this.#toMain);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('hashchange', this.#onHash);
    window.removeEventListener('vite:preloadError', this.#onMissing);
    this.#endKeeping?.();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('app') && this.app) {
      this.#provider.setValue(this.app);
      this.replaceChildren(); // the page's own word is over
    }
    if (changed.has('incoming') && this.incoming.length > 0) {
      if (this.app?.view.isDrilling) this.isWaiting = true;
      else location.hash = hrefOf('rack');
    }
    if (this.isWaiting && this.#isAtRack) this.isWaiting = false;
  }

  protected override updated(): void {
    document.title = this.route.place === 'line' ? 'Larkhold' : `${say(`app.${this.route.place}`)} · Larkhold`;
  }

  override render() {
    const { app } = this;
    // The page's own word, until the journal is read: nothing is shown that could be wrong.
    if (!app) return html`<slot></slot>`;
    const { isDrilling } = app.view;
    // Every place is made again in another language.
    const page = html`<button class="skip" ?hidden=${isDrilling} @click=${this.#toMain}>${say('app.skipToPage')}</button>
      <nav aria-label=${say('app.places')} ?hidden=${isDrilling}>
        <p class="name" aria-hidden="true">Larkhold</p>
        <ul>
          ${places.map(
            (place) => html`<li>
              <a href=${hrefOf(place)} aria-current=${this.route.place === place ? 'page' : nothing}>
                <svg viewBox="0 0 24 24" aria-hidden="true">${icons[place]}</svg>${say(`app.${place}`)}
              </a>
            </li>`,
          )}
        </ul>
      </nav>
      <main
        id="main"
        tabindex="-1"
        @lark-pick-files=${this.#onPick}
        @lark-open-program=${this.#onProgram}
      >
        ${isDrilling ? nothing : this.#notices(app)}
        ${isDrilling ? nothing : html`<coach-answer></coach-answer><lark-lost></lark-lost><lark-replaced></lark-replaced><lark-odd-entries .route=${this.route}></lark-odd-entries>`} ${this.#place(app.view.past !== undefined)}
      </main>`;
    return keyed(presentWords().language, page);
  }

  #notices({ view, act }: App) {
    return html`${
      view.trouble
        ? html`<div class="notice banner" role="alert">
        <p>${view.trouble.message}</p>
        <button @click=${() => act.saveBackup()}>${say('app.saveEverything')}</button>
      </div>`
        : nothing
    }
      ${
        view.refusal
          ? html`<div class="notice banner refusal" role="alert">
        <p>${view.refusal.message}</p>
        <div class="row">
          ${view.refusal.thing === 'fault' ? html`<button @click=${() => act.saveBackup()}>${say('app.saveEverything')}</button>` : nothing}
          <button @click=${act.dismissRefusal}>${say('trouble.close')}</button>
        </div>
      </div>`
          : nothing
      }
      ${
        this.isPartMissing && this.missing.size === 0
          ? html`<div class="notice banner" role="status">
        <p>${say('app.partMissing')}</p>
        <button @click=${() => location.reload()}>${say('app.loadAgain')}</button>
      </div>`
          : nothing
      }
      ${
        this.newer
          ? html`<div class="notice banner" role="status">
        <p>${say('app.newer')}</p>
        <button @click=${this.newer}>${say('app.useNow')}</button>
      </div>`
          : nothing
      }
      ${
        this.isWaiting
          ? html`<div class="notice banner" role="status">
        <p>${say('app.fileWaits')}</p>
        <a class="button" href=${hrefOf('rack')}>${say('app.openInRack')}</a>
      </div>`
          : nothing
      }
      ${view.past ? nothing : html`<backup-notice></backup-notice>`}`;
  }

  #place(isPartRead: boolean) {
    const { place, id, page, day } = this.route;
    if (isPartRead && (page || place !== 'line'))
      return html`<p class="dim" role="status">${say('app.readingOlder')}</p>`;
    if (page) {
      void this.#fetch(page);
      if (this.missing.has(page)) {
        return html`<lark-missing-page .fetchAgain=${() => this.#fetch(page)}></lark-missing-page>`;
      }
      if (page === 'bench') return html`<bench-page .programId=${id ?? 'new'}></bench-page>`;
      if (page === 'plan') return html`<plan-page .programId=${id}></plan-page>`;
      if (page === 'open') return html`<lark-open-link .payload=${id ?? ''}></lark-open-link>`;
      if (page === 'season') return html`<season-page></season-page>`;
      if (page === 'known') return html`<known-page></known-page>`;
      if (page === 'box') return html`<box-page .payload=${id ?? ''}></box-page>`;
      if (page === 'restore') return html`<restore-page></restore-page>`;
      if (page === 'files') return html`<files-page .incoming=${this.picked}></files-page>`;
      if (page === 'week') return html`<week-page .week=${id} .day=${day}></week-page>`;
      if (page === 'milestones') return html`<milestones-page></milestones-page>`;
      return page === 'trends'
        ? html`<trends-page></trends-page>`
        : html`<coach-page .payload=${id ?? ''}></coach-page>`;
    }
    if (place === 'rack') {
      return id === undefined
        ? html`<lark-rack .incoming=${this.incoming}></lark-rack>`
        : html`<lark-program .programId=${id}></lark-program>`;
    }
    if (place === 'journal') return html`<lark-journal .openId=${id}></lark-journal>`;
    return place === 'kit' ? html`<lark-kit .page=${id}></lark-kit>` : html`<lark-line></lark-line>`;
  }

  /** @returns whether the page's part of the app is there */
  async #fetch(page: PageName): Promise<boolean> {
    const isThere = await pages[page]().then(
      () => true,
      () => false,
    );
    if (isThere === this.missing.has(page)) {
      const others = [...this.missing].filter((one) => one !== page);
      this.missing = new Set(isThere ? others : [...others, page]);
    }
    return isThere;
  }

  /** The builder's own event for a part that did not come. For a page's part, the page's place says so. */
  readonly #onMissing = (): void => {
    this.isPartMissing = true;
  };

  get #isAtRack(): boolean {
    const { place, id, page } = this.route;
    return place === 'rack' && id === undefined && page === undefined;
  }

  readonly #onPick = (event: CustomEvent<readonly File[]>): void => {
    this.picked = event.detail;
    location.hash = '#/files';
  };

  readonly #onProgram = (event: CustomEvent<readonly File[]>): void => {
    this.incoming = event.detail;
  };

  readonly #toMain = (): void => {
    this.renderRoot.querySelector<HTMLElement>('main')?.focus();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-app': LarkApp;
  }
}

import type { Milestone } from '@larkhold/engine';
import { milestonesShown, weekListing } from '@larkhold/engine';
import { larkMark } from '@larkhold/ui';
import { formatDay, pieces, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { App } from '../../shell/app-context.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { removedNotices } from '../../shell/removed-notices.ts';
import { typedIn } from '../../shell/typed-in.ts';

/** What was reached and what is still open, in the archer's own words, with dates. It counts nothing and gives nothing away. */
@customElement('milestones-page')
export class MilestonesPage extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .new {
        display: flex;
        flex-wrap: wrap;
        gap: 0.8rem;
        align-items: end;
        margin-top: 1rem;
      }
      .new label {
        flex: 1 1 16rem;
      }
      label > input,
      textarea {
        display: block;
        width: 100%;
      }
      .empty {
        margin: calc(var(--gap) * 1.5) 0;
      }
      .wall {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(17rem, 100%), 1fr));
        gap: 0.8rem;
        margin: 0.8rem 0;
        align-items: start;
      }
      .wall > li {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 0.5rem;
        padding: 0.9rem;
        border: 1.5px solid var(--faint);
        border-radius: var(--radius);
      }
      .reached > li {
        background: var(--raised);
      }
      .words {
        margin: 0;
        white-space: pre-line;
        overflow-wrap: anywhere;
      }
      .text {
        font-weight: 650;
      }
      form.edit {
        display: grid;
        gap: 0.7rem;
      }
      p {
        margin: 0.4rem 0;
      }
      .row {
        gap: 0.4rem 0.8rem;
      }
    `,
  ];

  @state() private text = '';
  /** The milestone that is being changed, as it is typed. */
  @state() private edited: Milestone | undefined;

  override render() {
    const { app } = this;
    if (!app) return nothing;
    const { open, reached } = milestonesShown(app.view.journal.milestones ?? []);
    return html`<h1>${say('milestone.milestones')}</h1>
      <p class="dim">${say('milestone.about')}</p>
      <form class="new" @submit=${(event: Event) => this.#add(event, app)}>
        <label
          >${say('milestone.what')}<input
            required
            maxlength="400"
            autocomplete="off"
            .value=${this.text}
            @input=${(event: Event) => {
              this.text = typedIn(event);
            }}
        /></label>
        <button>${say('milestone.write')}</button>
      </form>
      ${removedNotices(app, 'milestone')}
      ${open.length + reached.length === 0 ? html`<div class="empty">${larkMark()}<p class="dim">${say('milestone.none')}</p></div>` : nothing}
      ${open.length === 0 ? nothing : this.#wall(app, 'open', open)}
      ${reached.length === 0 ? nothing : this.#wall(app, 'reached', reached)}
      <p><a href="#/trends">${say('milestone.trends')}</a> · <a href="#/journal">${say('milestone.journal')}</a></p>`;
  }

  #wall(app: App, which: 'open' | 'reached', milestones: readonly Milestone[]) {
    return html`<section aria-labelledby=${which}>
      <h2 id=${which}>${say(`milestone.${which}`)}</h2>
      <ul class="wall ${which}">
        ${milestones.map((one) => html`<li>${this.#card(app, one)}</li>`)}
      </ul>
    </section>`;
  }

  #card(app: App, milestone: Milestone) {
    if (this.edited?.id === milestone.id) return this.#form(app, this.edited);
    const { text, words, setDay, reachedDay } = milestone;
    return html`<p class="words text">${text}</p>
      ${words ? html`<p class="words">${words}</p>` : nothing}
      <p class="small dim">
        ${
          reachedDay === undefined
            ? nothing
            : pieces('milestone.reachedDay', {
                link: html`<a href=${dayHref(reachedDay)}>${formatDay(reachedDay, 'year')}</a>`,
              })
        }
        ${say('milestone.writtenDown', { day: setDay })}
      </p>
      <div class="row">
        ${
          reachedDay === undefined
            ? html`<button aria-label=${say('milestone.reachedOf', { text })} @click=${() => this.#edit({ ...milestone, reachedDay: app.view.today })}>
                ${say('milestone.reached')}
              </button>`
            : nothing
        }
        <button class="quiet" aria-label=${say('milestone.changeOf', { text })} @click=${() => this.#edit(milestone)}>${say('milestone.change')}</button>
      </div>`;
  }

  #form(app: App, milestone: Milestone) {
    const { text, words = '', reachedDay } = milestone;
    const type = (changes: Partial<Milestone>): void => {
      this.edited = { ...milestone, ...changes };
    };
    return html`<form class="edit" @submit=${(event: Event) => this.#save(event, app, milestone)}>
      <label
        >${say('milestone.milestone')}<input
          required
          maxlength="400"
          autocomplete="off"
          .value=${text}
          @input=${(event: Event) => type({ text: typedIn(event) })}
      /></label>
      <label
        >${say('milestone.reachedOn')}<input
          type="date"
          max=${app.view.today}
          .value=${reachedDay ?? ''}
          @change=${(event: Event) => type({ reachedDay: typedIn(event) || undefined })}
      /></label>
      <label
        >${say('milestone.how')}<textarea
          rows="2"
          maxlength="1000"
          .value=${words}
          @input=${(event: Event) => type({ words: typedIn(event) })}
        ></textarea>
      </label>
      <p class="small dim">${say('milestone.withoutDay')}</p>
      <div class="row">
        <button class="main">${say('milestone.keep')}</button>
        <button
          type="button"
          @click=${() => {
            this.edited = undefined;
          }}
        >
          ${say('milestone.leave')}
        </button>
        <button type="button" class="quiet" @click=${() => this.#remove(app, milestone.id)}>${say('milestone.takeOff')}</button>
      </div>
    </form>`;
  }

  async #edit(milestone: Milestone): Promise<void> {
    this.edited = milestone;
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLInputElement>('form.edit input')?.focus();
  }

  async #add(event: Event, { act, view }: App): Promise<void> {
    event.preventDefault();
    const text = this.text.trim();
    if (text === '') return;
    const isKept = await act.putMilestone({ id: act.newId(), text, setDay: view.today, editedAt: act.instant() });
    if (isKept) this.text = '';
  }

  async #save(event: Event, { act }: App, { words, reachedDay, ...milestone }: Milestone): Promise<void> {
    event.preventDefault();
    const [text, how] = [milestone.text.trim(), words?.trim()];
    if (text === '') return;
    const isKept = await act.putMilestone({
      ...{ ...milestone, text, editedAt: act.instant() },
      ...(reachedDay ? { reachedDay } : {}),
      ...(how ? { words: how } : {}),
    });
    if (isKept) this.edited = undefined;
  }

  /** Removes the milestone as it is kept, not what was just typed into it. */
  async #remove({ act, view }: App, id: string): Promise<void> {
    const kept = view.journal.milestones?.find((one) => one.id === id);
    this.edited = undefined;
    if (!kept) return;
    await act.putMilestone({ ...kept, removed: true, editedAt: act.instant() });
  }
}

function dayHref(day: string): string {
  return `#/week/${weekListing(day, 'monday')}/${day}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'milestones-page': MilestonesPage;
  }
}

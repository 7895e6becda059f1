import { idOf, isoWeek, type NoteScrap } from '@larkhold/engine';
import { formatDayFrom, pieces, say } from '@larkhold/words';
import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { App } from './app-context.ts';
import { PlaceElement } from './place-element.ts';
import { removedNotices } from './removed-notices.ts';
import { hrefOf } from './routing.ts';
import '@larkhold/ui';
import { notesShown } from '@larkhold/engine';
import { nothingDrawn, type Strokes } from '@larkhold/ui';
import { typedIn } from './typed-in.ts';

/** A scrap that is being written: a new one, or one that is on the wall. */
type Writing = Pick<NoteScrap, 'text' | 'strokes' | 'programId' | 'week'> & { old?: NoteScrap };

/**
 * The notes wall: scraps of words and drawings that come while training.
 *
 * @prop week shows the scraps of one ISO week only, and pins new ones to it
 * @prop programId shows the scraps of one program only, and pins new ones to it
 */
@customElement('lark-notes')
export class LarkNotes extends PlaceElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      .wall {
        columns: 15rem;
        column-gap: 0.8rem;
        margin: 0.8rem 0;
      }
      .wall > li {
        break-inside: avoid;
        margin-bottom: 0.8rem;
        padding: 0.8rem;
        border: 1.5px solid var(--faint);
        border-radius: var(--radius);
        background: var(--raised);
      }
      .words {
        white-space: pre-line;
        overflow-wrap: anywhere;
      }
      form {
        display: grid;
        gap: 0.8rem;
        margin: 0.8rem 0;
      }
      select {
        display: block;
        width: 100%;
      }
      .wall lark-sketch-pad {
        max-width: 14rem;
        margin: 0.4rem 0;
      }
      .wall .row {
        margin-left: -0.5rem;
      }
      [role='status']:not(:empty) {
        margin-top: 0.4rem;
      }
    `,
  ];

  @property({ attribute: false }) programId: string | undefined;
  @property({ attribute: false }) week: string | undefined;
  @state() private writing: Writing | undefined;
  @state() private said = '';

  override render() {
    const { app, writing } = this;
    if (!app) return nothing;
    const notes = notesShown(app.view.journal.notes ?? [], { programId: this.programId, week: this.week });
    return html`${
      writing
        ? this.#form(app, writing)
        : html`<button class="new" @click=${() => this.#write({ programId: this.programId, week: this.week })}>${say('note.new')}</button>`
    }
      <p role="status" class="small dim">${this.said}</p>
      ${removedNotices(app, 'note')}
      <ul class="wall">
        ${notes.map((note) => html`<li>${this.#scrap(app, note)}</li>`)}
      </ul>`;
  }

  #scrap({ view }: App, note: NoteScrap) {
    const program = view.programs.find(({ id }) => id !== undefined && id === note.programId);
    const name = note.text?.split('\n')[0]?.slice(0, 40) || say('note.sketch');
    const day = formatDayFrom(note.madeAt.slice(0, 10), view.today);
    const made = note.week ? say('note.madeOnWeek', { day, week: note.week }) : day;
    return html`${note.text ? html`<p class="words">${note.text}</p>` : nothing}
      ${note.strokes?.length ? html`<lark-sketch-pad isFixed .strokes=${note.strokes} words=${name}></lark-sketch-pad>` : nothing}
      <p class="small dim">
        ${
          program && this.programId === undefined
            ? pieces('note.withProgram', {
                made,
                program: html`<a href=${hrefOf('rack', idOf(program))}>${program.title}</a>`,
              })
            : made
        }
      </p>
      <div class="row">
        <button class="quiet" aria-label=${say('note.changeOne', { name })} @click=${() => this.#write({ ...note, old: note })}>${say('note.change')}</button>
        <button class="quiet" aria-label=${say('note.takeDownOne', { name })} @click=${() => this.#takeDown(note)}>${say('note.takeDown')}</button>
      </div>`;
  }

  #form(app: App, writing: Writing) {
    // What is true now, not what was drawn: two changes may come before the next drawing.
    const change = (changes: Partial<Writing>) => {
      this.writing = { ...this.writing, ...changes };
    };
    return html`<form @submit=${(event: Event) => this.#save(event, app)}>
      <label
        >${say('note.words')}
        <textarea
          rows="3"
          maxlength="2000"
          .value=${writing.text ?? ''}
          @input=${(event: Event) => change({ text: typedIn(event) })}
        ></textarea>
      </label>
      <lark-sketch-pad
        .strokes=${writing.strokes ?? nothingDrawn}
        @sketch-change=${({ detail }: CustomEvent<Strokes>) => change({ strokes: detail.map((stroke) => [...stroke]) })}
      ></lark-sketch-pad>
      ${this.#pin(app, writing, change)}
      <div class="row">
        <button class="main">${say('note.putUp')}</button>
        <button type="button" class="quiet" @click=${() => this.#close('')}>${say('note.leave')}</button>
      </div>
    </form>`;
  }

  #pin({ view }: App, writing: Writing, change: (changes: Partial<Writing>) => void) {
    const thisWeek = isoWeek(view.today);
    const weeks = writing.week === undefined || writing.week === thisWeek ? [thisWeek] : [thisWeek, writing.week];
    const chosen = writing.programId ? `program ${writing.programId}` : writing.week ? `week ${writing.week}` : '';
    const choices = [
      ['', say('note.nothing')],
      ...weeks.map((week) => [`week ${week}`, week === thisWeek ? say('note.thisWeek', { week }) : week]),
      ...view.programs.flatMap(({ id, title }) => (id === undefined ? [] : [[`program ${id}`, title]])),
    ];
    return html`<label
      >${say('note.pinnedTo')}
      <select
        @change=${(event: Event) => {
          const [kind, name] = typedIn(event).split(' ');
          change({ programId: kind === 'program' ? name : undefined, week: kind === 'week' ? name : undefined });
        }}
      >
        ${choices.map(([key, words]) => html`<option value=${key ?? ''} .selected=${key === chosen}>${words}</option>`)}
      </select>
    </label>`;
  }

  async #write(writing: Writing): Promise<void> {
    this.writing = writing;
    this.said = '';
    await this.updateComplete;
    this.renderRoot.querySelector('textarea')?.focus();
  }

  async #save(event: Event, { act }: App): Promise<void> {
    event.preventDefault();
    const { old, text, strokes, programId, week } = this.writing ?? {};
    const words = text?.trim();
    if (!words && !strokes?.length) {
      this.said = say('note.writeFirst');
      return;
    }
    const at = act.instant();
    const isKept = await act.putNote({
      ...{ id: old?.id ?? act.newId(), madeAt: old?.madeAt ?? at, editedAt: at },
      ...(words ? { text: words } : {}),
      ...(strokes?.length ? { strokes } : {}),
      ...(programId ? { programId } : {}),
      ...(week ? { week } : {}),
    });
    if (isKept) await this.#close(say('note.isUp'));
  }

  /** It stays in the journal as a mark, so that another device takes it down too. */
  async #takeDown(note: NoteScrap): Promise<void> {
    const { app } = this;
    if (!app) return;
    if (await app.act.putNote({ ...note, removed: true, editedAt: app.act.instant() }))
      await this.#close(say('note.isDown'));
  }

  async #close(said: string): Promise<void> {
    this.writing = undefined;
    this.said = said;
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.new')?.focus();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lark-notes': LarkNotes;
  }
}

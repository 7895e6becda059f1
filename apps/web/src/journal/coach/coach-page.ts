import { type HandOver, parseHandOver } from '@larkhold/engine';
import { nextTask } from '@larkhold/store';
import { larkMark, tableStyles } from '@larkhold/ui';
import { formatDay, problemWords, say } from '@larkhold/words';
import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { LARGEST_BYTES } from '../../shell/files/read-incoming-file.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { PostElement } from '../../shell/post-element.ts';
import { removedNotices } from '../../shell/removed-notices.ts';
import './coach-box.ts';
import './coach-invite.ts';
import '@larkhold/ui';
import './archer-sheet.ts';
import {
  type ArcherLine,
  addHandOver,
  LOOK_BACK_DAYS,
  orderSquad,
  SILENT_DAYS,
  summarizeArcher,
} from '@larkhold/engine';

/**
 * Where a coach reads hand-overs: those that were opened as files and those that came by the coach's box. Both are kept on this device until the coach
 * removes an archer, which can be undone until the next day.
 *
 * @prop payload the end of a coach's invitation, where an archer has opened one
 */
@customElement('coach-page')
export class CoachPage extends PostElement {
  static override styles = [
    ...PlaceElement.styles,
    tableStyles,
    css`
      p {
        margin: 0.5rem 0 0.9rem;
      }
      th,
      td {
        padding: 0.5rem 0.9rem 0.5rem 0;
        vertical-align: middle;
      }
      thead th {
        color: var(--dim);
        font-size: var(--text-small);
      }
      tr.open {
        box-shadow: inset 3px 0 var(--accent);
      }
      tr.open th {
        padding-left: 0.7rem;
      }
      th button {
        min-width: 6.5rem;
        justify-content: flex-start;
        text-align: left;
      }
      td lark-day-strip {
        width: 11rem;
        max-width: 100%;
      }
      [role='status'] > * {
        margin-top: 0.8rem;
      }
      td.drill {
        max-width: 14rem;
      }
      .look {
        font-weight: 650;
      }
      @container (max-width: 34rem) {
        thead {
          position: absolute;
          clip-path: inset(50%);
        }
        /* Three low rows an archer: who and since when, the last drill and pain, the days. */
        tr {
          display: grid;
          grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
          gap: 0 0.8rem;
          align-items: center;
          padding: 0.4rem 0;
          border-bottom: 1px solid var(--rule);
        }
        th,
        td {
          display: block;
          padding: 0.1rem 0;
          border: 0;
          font-size: var(--text-small);
          line-height: 1.3;
        }
        th button {
          width: 100%;
          padding-inline: 0.7rem;
        }
        .written {
          grid-area: 1 / 2;
        }
        .pain {
          grid-area: 2 / 2;
        }
        .pain::before {
          content: attr(data-name) ': ';
          color: var(--dim);
        }
        .days {
          grid-area: 3 / 1 / auto / -1;
          display: flex;
          gap: 0.8rem;
          align-items: center;
        }
        .days lark-day-strip {
          flex: 1 1 50%;
        }
        .days span {
          flex: 1 1 50%;
        }
      }
      @container (max-width: 15rem) {
        tr {
          grid-template-columns: minmax(0, 1fr);
        }
        .written,
        .pain,
        .days {
          grid-area: auto;
        }
      }
      @container (max-width: 34rem) {
        tr.open {
          padding-left: 0.9rem;
        }
        tr.open th {
          padding-left: 0;
        }
      }
      .none {
        margin-top: calc(var(--gap) * 1.4);
      }
      .squad {
        container-type: inline-size;
        margin-top: 0.8rem;
      }
    `,
  ];

  @property() payload = '';
  @state() private open: readonly HandOver[] = [];
  @state() private chosenId: string | undefined;
  @state() private said: readonly string[] = [];
  @state() private unreadCount = 0;
  /** By the text of its file; each is read once. */
  #read = new Map<string, HandOver>();
  #stopShelf: (() => void) | undefined;
  #lines = new WeakMap<HandOver, { today: string; line: ArcherLine }>();

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stopShelf?.();
    this.#stopShelf = undefined;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    const squad = this.app?.act.squad;
    if (!squad || this.#stopShelf) return;
    this.#stopShelf = squad.subscribe((archerId, text) => this.#follow(archerId, text));
    void this.#readShelf(squad.read());
  }

  override render() {
    const { app } = this;
    if (!app) return nothing;
    if (this.payload !== '') return html`<coach-invite .payload=${this.payload}></coach-invite>`;
    const owners = this.#desk();
    const open = [...owners.keys()].reduce<readonly HandOver[]>((all, one) => addHandOver(all, one).open, this.open);
    const lines = orderSquad(open.map((handOver) => this.#lineOf(handOver, app.view.today)));
    const chosen = open.find(({ archerId }) => archerId === this.chosenId);
    return html`<h1>${say('coach.coach')}</h1>
      <p>${say('coach.about')}</p>
      <coach-box></coach-box>
      <file-drop words=${say('coach.openHandOvers')} .isMany=${true} @files-take=${this.#take}></file-drop>
      <div role="status">
        ${this.unreadCount > 0 ? html`<p class="dim">${say('coach.unread', { n: this.unreadCount })}</p>` : nothing}
        ${this.said.length > 0 ? html`<ul class="notice">${this.said.map((line) => html`<li>${line}</li>`)}</ul>` : nothing}
      </div>
      ${removedNotices(app, 'handOver')}
      ${lines.length > 0 ? this.#squad(lines) : html`<div class="none">${larkMark()}<p class="dim">${say('coach.noneOpen')}</p></div>`}
      ${chosen ? html`<archer-sheet .handOver=${chosen} .text=${this.#textOf(chosen)} .owner=${owners.get(chosen)}></archer-sheet>` : nothing}`;
  }

  /** Hand-overs that came by the box, each read once; whom an answer goes to. */
  #desk(): Map<HandOver, string> {
    const found = new Map<HandOver, string>();
    for (const [owner, { text }] of Object.entries(this.post?.desk?.archers ?? {})) {
      const read = this.#parse(text);
      if (read.ok) found.set(read.handOver, owner);
    }
    return found;
  }

  #parse(text: string): ReturnType<typeof parseHandOver> {
    const known = this.#read.get(text);
    if (known) return { ok: true, handOver: known };
    const read = parseHandOver(text);
    if (read.ok) this.#read.set(text, read.handOver);
    return read;
  }

  /** The file as it came: an archer who is brought back has the same one again. */
  #textOf(handOver: HandOver): string {
    return [...this.#read].find(([, one]) => one === handOver)?.[0] ?? '';
  }

  /** Hand-overs that were kept here before, one a task: they may be large. */
  async #readShelf(reading: Promise<readonly string[]>): Promise<void> {
    // Where nothing can be kept there is nothing to read; keeping the first file then says so.
    const texts = await reading.catch(() => []);
    this.unreadCount += texts.length;
    for (const text of texts) {
      await nextTask();
      const read = this.#parse(text);
      if (read.ok) this.open = addHandOver(this.open, read.handOver).open;
      this.unreadCount -= 1;
    }
  }

  /** A hand-over was kept, brought back or removed. */
  #follow(archerId: string, text: string | undefined): void {
    const read = text === undefined ? undefined : this.#parse(text);
    this.open = read?.ok
      ? addHandOver(this.open, read.handOver).open
      : this.open.filter((one) => one.archerId !== archerId);
  }

  #squad(lines: readonly ArcherLine[]) {
    return html`<div class="squad">
      <table>
        <caption class="visually-hidden">
          ${say('coach.lastDays', { days: LOOK_BACK_DAYS })}
        </caption>
        <thead>
          <tr>
            <th scope="col">${say('coach.archer')}</th>
            <th scope="col">${say('coach.lastDrill')}</th>
            <th scope="col">${say('coach.drilledDays', { days: LOOK_BACK_DAYS })}</th>
            <th scope="col">${say('coach.painHead')}</th>
            <th scope="col">${say('coach.lastWritten')}</th>
          </tr>
        </thead>
        <tbody>
          ${lines.map((line) => this.#line(line))}
        </tbody>
      </table>
    </div>`;
  }

  #line({ handOver, lastDrill, drilledDays, plannedCount, doneCount, painDays, lastDay, silentDays }: ArcherLine) {
    const isOpen = handOver.archerId === this.chosenId;
    const planned = say('coach.plannedOf', { done: doneCount, planned: plannedCount });
    const drilled = { drilled: drilledDays, days: LOOK_BACK_DAYS };
    const pain = painDays.at(-1);
    const last = lastDay === undefined ? say('coach.nothingIn') : formatDay(lastDay, 'short');
    return html`<tr class=${isOpen ? 'open' : ''}>
      <th scope="row">
        <button aria-pressed=${isOpen ? 'true' : 'false'} @click=${() => this.#choose(handOver.archerId)}>${handOver.archer}</button>
      </th>
      <td class="drill">
        ${lastDrill ? html`<lark-hold-ribbon .reps=${lastDrill.reps} .unit=${0.03}></lark-hold-ribbon>` : say('coach.nothing')}
      </td>
      <td class="days">
        <lark-day-strip bare .journal=${handOver} .today=${handOver.to}></lark-day-strip>
        <span>${plannedCount > 0 ? say('coach.drilledPlanned', { ...drilled, planned }) : say('coach.drilled', drilled)}</span>
      </td>
      <td data-name=${say('coach.painHead')} class="pain ${pain ? 'look' : ''}">
        ${
          pain
            ? say('coach.painDays', { days: painDays.length, last: pain })
            : say(handOver.includesPain === false ? 'coach.painNotTold' : 'coach.nonePain')
        }
      </td>
      <td class="written ${silentDays >= SILENT_DAYS ? 'look' : ''}">
        ${silentDays >= SILENT_DAYS ? say('coach.silent', { day: last, days: silentDays }) : last}
      </td>
    </tr>`;
  }

  #choose(id: string): void {
    this.chosenId = this.chosenId === id ? undefined : id;
  }

  /** Summed up once a file and day: the table is drawn again for every file that is read. */
  #lineOf(handOver: HandOver, today: string): ArcherLine {
    const kept = this.#lines.get(handOver);
    if (kept?.today === today) return kept.line;
    const line = summarizeArcher(handOver, today);
    this.#lines.set(handOver, { today, line });
    return line;
  }

  readonly #take = async ({ detail }: CustomEvent<readonly File[]>): Promise<void> => {
    this.said = [];
    this.unreadCount += detail.length;
    let next = textOf(detail[0]);
    for (const [index, file] of detail.entries()) {
      const text = await next?.catch(() => undefined);
      // The browser fetches the next file while this one is read.
      next = textOf(detail[index + 1]);
      const archerId = this.#add(file.name, text);
      if (detail.length === 1 && archerId !== undefined) this.chosenId = archerId;
      this.unreadCount -= 1;
    }
  };

  /** @returns the archer's id, where the file could be read */
  #add(name: string, text: string | undefined): string | undefined {
    const read = text === undefined ? undefined : this.#parse(text);
    if (text === undefined || !read?.ok) {
      const problem = read?.ok === false ? read.problems[0] : undefined;
      this.#say(name, problem ? problemWords(problem) : say('coach.cannotRead'));
      return undefined;
    }
    const { archer, archerId } = read.handOver;
    const { open, isTaken } = addHandOver(this.open, read.handOver);
    if (isTaken) void this.app?.act.keepHandOver({ id: archerId, archer, text });
    else this.#say(name, say('coach.asNew', { archer }));
    this.open = open;
    return archerId;
  }

  #say(name: string, words: string): void {
    this.said = [...this.said, say('coach.fileSaid', { file: name, words })];
  }
}

/** One that is larger than any file is reported as unreadable without reading it. */
function textOf(file: File | undefined): Promise<string> | undefined {
  if (file && file.size > LARGEST_BYTES) return Promise.reject(new RangeError(file.name));
  return file?.text();
}

declare global {
  interface HTMLElementTagNameMap {
    'coach-page': CoachPage;
  }
}

import type { CoachDesk } from '@larkhold/box';
import { say } from '@larkhold/words';
import { css, html, nothing, svg } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { until } from 'lit/directives/until.js';
import type { CoachPost } from '../../shell/coach-post.ts';
import { localWhen } from '../../shell/local-when.ts';
import { PlaceElement } from '../../shell/place-element.ts';
import { PostElement } from '../../shell/post-element.ts';
import { qrOf } from '../../shell/qr-modules.ts';
import { typedIn } from '../../shell/typed-in.ts';

/** Where a host has its boxes, beside the app. */
const HOSTED_AT = '/box';

/** The coach's box: opens it, shows the invitation, looks into it, and closes it. */
@customElement('coach-box')
export class CoachBox extends PostElement {
  static override styles = [
    ...PlaceElement.styles,
    css`
      svg {
        width: min(14rem, 100%);
        background: white;
      }
      .link {
        overflow-wrap: anywhere;
        user-select: all;
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        gap: 0.6rem;
        margin: 0.6rem 0;
      }
      label > input {
        display: block;
      }
    `,
  ];

  @state() private name = '';
  @state() private link = '';
  @state() private isClosed = false;

  override render() {
    const { post } = this;
    if (!post) return nothing;
    return html`<details ?open=${post.desk !== undefined || this.isClosed}>
      <summary>${say('post.deskHeading')}</summary>
      ${post.desk ? this.#desk(post, post.desk) : this.#none(post)}
      <div role="status"><ul>
        ${this.isClosed && !post.desk ? html`<li>${say('post.closed')}</li>` : nothing}
        ${post.troubles.map((trouble) => html`<li>${until(this.troubleSaid(trouble), '')}</li>`)}
      </ul></div>
    </details>`;
  }

  #none(post: CoachPost) {
    return html`<p>${say('post.deskAbout')}</p>
      <label
        >${say('post.yourName')}<input
          maxlength="60"
          .value=${this.name}
          @input=${(event: Event) => {
            this.name = typedIn(event);
          }}
      /></label>
      <div class="row">
        <button ?disabled=${this.name.trim() === ''} @click=${() => this.#open(post)}>${say('post.open')}</button>
      </div>`;
  }

  #desk(post: CoachPost, { lastReadAt }: CoachDesk) {
    if (this.link === '') void this.#invite(post);
    const qr = this.link === '' ? undefined : qrOf(this.link);
    return html`<p>${say('post.inviteAbout')}</p>
      ${qr ? svg`<svg viewBox="0 0 ${qr.size} ${qr.size}" role="img" aria-label=${say('post.qr')} shape-rendering="crispEdges"><path d=${qr.path}></path></svg>` : nothing}
      <p class="link small">${this.link}</p>
      ${lastReadAt ? html`<p class="dim small">${say('post.lastRead', localWhen(lastReadAt))}</p>` : nothing}
      <div class="row">
        <button @click=${() => post.meet()}>${say('post.look')}</button>
        <button @click=${() => this.#close(post)}>${say('post.close')}</button>
      </div>`;
  }

  async #open(post: CoachPost): Promise<void> {
    this.isClosed = false;
    await post.openDesk(this.name.trim(), HOSTED_AT);
  }

  async #invite(post: CoachPost): Promise<void> {
    this.link = `${location.href.replace(/#.*$/, '')}#/coach/${await post.invite()}`;
  }

  async #close(post: CoachPost): Promise<void> {
    await post.closeDesk();
    this.link = '';
    this.isClosed = true;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'coach-box': CoachBox;
  }
}

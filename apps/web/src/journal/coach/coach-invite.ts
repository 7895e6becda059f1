import type { CoachInvite as Invite } from '@larkhold/box';
import { say } from '@larkhold/words';
import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { PostElement } from '../../shell/post-element.ts';

/**
 * A coach's invitation as an archer opens it: says what it means before anything is done.
 *
 * @prop payload the end of the link
 */
@customElement('coach-invite')
export class CoachInvite extends PostElement {
  static override styles = [
    ...PostElement.styles,
    css`
      p {
        max-width: 36rem;
        margin: 0.7rem 0 1.2rem;
      }
    `,
  ];

  @property() payload = '';
  @state() private invite: Invite | 'none' | undefined;
  @state() private isAccepted = false;

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (!changed.has('payload')) return;
    void import('@larkhold/box').then(({ parseInvite }) => {
      this.invite = parseInvite(this.payload) ?? 'none';
    });
  }

  override render() {
    const { invite, post } = this;
    if (!post || invite === undefined) return html`<h1>${say('coach.coach')}</h1>`;
    if (invite === 'none') {
      return html`<h1>${say('coach.coach')}</h1>
        <p role="status">${say('post.cut')}</p>`;
    }
    return html`<h1>${say('post.inviteHeading', { coach: invite.coach })}</h1>
      <p>${say('post.inviteText', { coach: invite.coach })}</p>
      ${this.isAccepted ? nothing : html`<div><button class="main" @click=${() => this.#accept(invite)}>${say('post.accept')}</button></div>`}
      <p role="status">${this.isAccepted ? html`<a href="#/files">${say('post.accepted')}</a>` : nothing}</p>`;
  }

  async #accept(invite: Invite): Promise<void> {
    await this.post?.accept(invite);
    this.isAccepted = true;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'coach-invite': CoachInvite;
  }
}

import { say } from '@larkhold/words';
import { html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { PostElement } from './post-element.ts';

/** One line on every page while a coach's answer is unread: it came by the coach's box. */
@customElement('coach-answer')
export class CoachAnswer extends PostElement {
  override render() {
    const { answer, coach } = this.post?.archer ?? {};
    if (answer === undefined || coach === undefined) return nothing;
    return html`<p class="notice"><a href="#/files">${say('post.answerCame', { coach })}</a></p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'coach-answer': CoachAnswer;
  }
}

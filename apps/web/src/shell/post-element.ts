import type { BoxTrouble } from '@larkhold/box';
import type { PropertyValues } from 'lit';
import type { CoachPost } from './coach-post.ts';
import { PlaceElement } from './place-element.ts';

/** An element that shows what came by the coach's box, and is drawn again when anything does. */
export class PostElement extends PlaceElement {
  #stop: (() => void) | undefined;

  /** @returns the post; undefined where nothing is wired to it */
  protected get post(): CoachPost | undefined {
    return this.app?.act.post;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.();
    this.#stop = undefined;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.#stop ??= this.post?.subscribe(() => this.requestUpdate());
  }

  /**
   * Says a trouble of the box; its words are loaded with it.
   * @param trouble what was wrong
   * @returns the sentences
   */
  protected async troubleSaid(trouble: BoxTrouble): Promise<string> {
    const { troubleWords } = await import('@larkhold/box');
    return troubleWords(trouble);
  }
}

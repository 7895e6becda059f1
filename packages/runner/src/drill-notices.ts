/** What a notice of a drill is about. */
export type NoticeAbout = 'gap' | 'sound' | 'screen';

/** What is wrong in a drill now: at most one notice for each thing it can be about. */
export class DrillNotices {
  readonly #notices = new Map<NoticeAbout, string>();

  /** All of them as one text; empty when all is well. */
  get text(): string {
    return [...this.#notices.values()].join(' ');
  }

  /** @returns whether something is said about this */
  has(about: NoticeAbout): boolean {
    return this.#notices.has(about);
  }

  /**
   * @param about what
   * @param message plain words; undefined when all is well again
   * @returns whether that is news
   */
  put(about: NoticeAbout, message: string | undefined): boolean {
    if (this.#notices.get(about) === message) return false;
    if (message === undefined) this.#notices.delete(about);
    else this.#notices.set(about, message);
    return true;
  }
}

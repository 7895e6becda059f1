import { css } from 'lit';

/** The number is in front of the bow, which is an outline behind it. */
const numberFirst = css`
  svg .seconds,
  .title {
    display: none;
  }
  .digits {
    display: flex;
  }
  .hold .digits {
    color: var(--ink);
  }
  svg {
    opacity: 0.5;
  }
  /* A pause shows two bars. */
  .paused .digits {
    display: none;
  }
  .paused svg {
    opacity: 1;
  }
  .paused svg .seconds {
    display: inline;
  }
`;

/** How the glance display is laid out on small screens, and where the archer wants the number first: over `glanceStyles`. */
export const glanceLayouts = css`
  /* A small screen: the number in front of the bow, which is an outline behind it; then word, rep and what is next, each a share of the height. */
  @container glance (max-height: 31rem) or (max-width: 30rem) {
    .face {
      grid-template-rows: auto minmax(22cqh, 1fr) auto;
      gap: 0.6cqmin;
    }
    ${numberFirst}
    .title {
      display: block;
    }
    /* No larger than leaves the bow to be seen behind it. */
    .digits {
      font-size: min(96cqw / var(--digits-em), 122cqh, 66cqw);
    }
    .word,
    .count {
      line-height: 0.98;
    }
  }
  @container glance (max-width: 30rem) and (min-height: 31.01rem) {
    /* An upright phone has no width to spare: what is read from afar goes from edge to edge. */
    .face {
      padding-inline: 1cqw;
    }
    .words {
      --wide: 98cqw;
    }
    .what {
      /* Two lines of the size that is needed rather than one that can't be read. */
      font-size: max(
        1.15rem,
        min(
          max(var(--what-fits), min(var(--wide) / var(--two-em), var(--least))),
          clamp(5cqh, var(--least), 13.5cqh)
        )
      );
      line-height: 1;
    }
  }
  @container glance (max-height: 31rem) and (max-width: 30rem) {
    /* Hardly larger than the number: a trace of it is enough. */
    svg {
      opacity: 0.22;
    }
  }
  @container glance (max-height: 31rem) {
    .title {
      display: none;
    }
    /* What nobody reads from where the archer stands leaves its room, and is said to who hears the page. */
    .lead,
    .small {
      display: none;
    }
    .instead {
      display: block;
    }
    .words {
      --share: 18cqh;
    }
    /* The coach's words take their room from the three lines. */
    .words:has(.call, .hand, .notice) {
      --share: 14cqh;
    }
    .word {
      font-size: min(var(--word-fits), var(--share));
    }
    .count {
      font-size: min(var(--wide) / var(--count-em), var(--share));
    }
    .what {
      font-size: max(1.15rem, min(var(--what-fits), var(--share)));
      line-height: 1;
    }
    lark-hold-ribbon {
      margin: 0.4cqmin auto;
    }
  }
  /* The number first, also on a larger screen. */
  :host([layout='numbers']) {
    .face {
      grid-template-rows: auto minmax(38cqh, 1fr) auto;
    }
    ${numberFirst}
    .digits {
      font-size: min(96cqw / var(--digits-em), 122cqh);
    }
    svg {
      opacity: 0.35;
    }
  }
  @media (orientation: landscape) {
    .face {
      grid-template: auto minmax(0, 1fr) / minmax(0, 1fr) minmax(0, 1fr);
      column-gap: 4cqmin;
    }
    :host {
      --wide: 47cqw;
    }
    .title {
      grid-column: 1 / -1;
    }
    .bow,
    .words {
      grid-row: 2;
    }
    .words {
      --share: 28cqh;
      align-self: center;
      max-height: 100%;
      overflow-y: auto;
      text-align: left;
    }
    .word {
      font-size: min(var(--word-fits), var(--share));
      line-height: 0.95;
    }
    .count {
      font-size: min(var(--wide) / var(--count-em), clamp(20cqh, var(--least), var(--share)));
      line-height: 0.95;
    }
    .words:has(.call, .hand, .notice) {
      --share: 21cqh;
    }
    .small {
      justify-content: start;
    }
    lark-hold-ribbon {
      margin-inline: 0;
      --ribbon-beside: 0;
    }
    .hand {
      font-size: max(1.2rem, min(3.4cqw, 9cqh));
    }
    .what {
      font-size: max(1.15rem, min(var(--what-fits), clamp(8cqh, var(--least), var(--share))));
      line-height: 0.98;
    }
    .call {
      font-size: min(4.4cqw, 11cqh);
    }
  }
`;

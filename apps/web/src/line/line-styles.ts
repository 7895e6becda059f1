import { css } from 'lit';

/** The line: numbers first, a bar with the one button that is always on the screen, the rest below or beside. */
export const lineStyles = css`
  .page {
    display: flex;
    flex-direction: column;
  }
  header h1 {
    margin: 0.1rem 0 0.2rem;
  }
  header p + p {
    margin-top: 0.15rem;
  }
  due-today {
    margin-top: 0.6rem;
  }
  .first {
    display: grid;
    gap: 0.6rem;
    justify-items: start;
    margin-top: var(--gap);
    max-width: 34rem;
  }
  .what {
    display: flex;
    gap: 1rem;
    align-items: center;
  }
  .what .lark-mark {
    flex: none;
    width: min(5.5rem, 22vw);
  }
  @media (max-height: 42rem) {
    .first {
      gap: 0.2rem;
      margin-top: 0.3rem;
    }
    .what {
      gap: 0.7rem;
    }
    .what .lark-mark {
      width: min(4rem, 16vw);
    }
  }
  .notice {
    margin-top: var(--gap);
  }
  lark-prescription {
    margin-top: var(--gap);
  }
  .next {
    margin-top: calc(var(--gap) * 1.2);
  }
  .next + lark-prescription {
    --text-numbers: clamp(2.4rem, 1.9rem + 2.6vw, 3.6rem);
    margin-top: 0.4rem;
  }
  .done p {
    margin-top: 0.35rem;
  }
  .done lark-hold-ribbon {
    margin: 0.6rem 0 0.4rem;
  }
  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 0.6rem;
    margin-top: min(var(--gap), 1.6vh);
  }
  .low {
    display: block;
    margin-top: var(--gap);
  }
  .choices + lark-prescription {
    margin-top: 0.7rem;
  }
  .choices > * {
    flex: 1 1 8rem;
    min-width: 0;
  }
  .choices > [data-open] {
    flex-basis: 100%;
  }
  leads-on {
    margin-top: var(--gap);
  }
  .beside {
    margin-top: var(--gap);
  }
  /* Last on the page, so that it stays at the foot of the screen however far the page is scrolled. */
  .bar {
    position: sticky;
    bottom: var(--foot, 0px);
    z-index: 1;
    order: 1;
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 1rem;
    align-items: center;
    margin: var(--gap) calc(-1 * var(--gap)) 0;
    padding: 0.6rem var(--gap);
    background: var(--ground);
    border-top: 1px solid var(--rule);
  }
  /* Nothing of the page shows between it and the places below, in forced colours neither. */
  .bar::after {
    content: '';
    position: absolute;
    inset: 100% 0 auto;
    height: 0.5rem;
    background: var(--ground);
  }
  /* On the smallest screens with very large text it stays small enough to leave the page its room. */
  .string {
    flex: 1 0 100%;
    font-size: min(var(--text-small), 5.2vmin);
    font-weight: 600;
    line-height: 1.3;
    text-wrap: balance;
  }
  .length {
    flex: none;
    color: var(--dim);
  }
  .begin {
    flex: 1 1 7rem;
    min-width: 0;
    min-height: min(3.6rem, 16vh);
    font-size: 1.4rem;
    font-weight: 700;
  }
  .begin:not(.main) {
    font-weight: 500;
    font-size: var(--text-large);
  }
  .keys {
    flex: none;
  }
  @media (hover: none), (max-width: 40rem), (max-height: 30rem) {
    .keys {
      display: none;
    }
  }
  @media (max-height: 30rem) {
    .bar {
      row-gap: 0.4rem;
      padding-block: 0.35rem;
    }
    /* A turned phone: what is above the numbers shares a row, so that they are on the screen. */
    header {
      display: flex;
      flex-wrap: wrap;
      gap: 0 1rem;
      align-items: baseline;
    }
    header p + p {
      margin-top: 0;
    }
    header due-today {
      flex: 1 0 100%;
      margin-top: 0.2rem;
    }
    lark-prescription {
      --text-numbers: clamp(2.2rem, 17vh, 3.6rem);
      margin-top: 0.5rem;
    }
    /* A phone on its side has width, and no height to spare. */
    .string {
      flex: 1 1 16rem;
    }
    .begin {
      min-height: min(3rem, 16vh);
      padding-block: 0.2rem;
    }
  }
  lark-day-strip {
    margin-top: calc(var(--gap) * 1.2);
  }
  .as-file {
    margin-top: var(--gap);
  }
  @media (min-width: 68rem) {
    .page {
      display: grid;
      grid-template-columns: minmax(0, 7fr) minmax(0, 5fr);
      grid-template-rows: auto 1fr;
      column-gap: clamp(2rem, 4vw, 4.5rem);
    }
    .beside {
      grid-column: 2;
      grid-row: 1 / span 2;
      margin-top: 3.4rem;
    }
    .bar {
      align-self: start;
      margin-inline: 0;
      padding-inline: 0;
      border-top: 0;
    }
    .begin {
      max-width: 26rem;
      min-height: 4.4rem;
    }
  }
  .full {
    position: fixed;
    inset: 0;
    z-index: 10;
    background: var(--ground);
  }
  .full > * {
    height: 100%;
  }
  /* What it says where it could not be loaded. */
  lark-sight:not(:defined) {
    padding: 0.3rem 0.6rem;
    font-size: 0.85rem;
  }
  .scrolls {
    overflow-y: auto;
    /* What the tab key reaches stops above the bar at the foot of the questions. */
    scroll-padding-bottom: min(6rem, 30vh);
  }
  .scrolls > * {
    height: auto;
    min-height: 100%;
  }
`;

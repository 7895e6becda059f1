import { css } from 'lit';

/** Layout of a month: a line of strokes for each week, its sum at the end of the line. */
export const monthCalendarStyles = css`
  :host {
    container-type: inline-size;
  }
  section {
    margin-top: 0;
    padding-top: 0.2rem;
    border-top: 0;
  }
  .top {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 0.8rem;
    align-items: center;
    justify-content: space-between;
  }
  .week {
    display: grid;
    grid-template-columns: repeat(7, minmax(0, 1fr)) minmax(5.4rem, 1.8fr);
  }
  .names {
    margin-top: 0.3rem;
  }
  .name {
    color: var(--dim);
    font-size: 0.8rem;
    text-align: center;
  }
  li + li {
    margin-top: 0.2rem;
  }
  .day {
    /* 40 of 54: where the drawing's ground is. The lines of seven days are one line. */
    --tall: 4rem;
    display: grid;
    justify-items: center;
    text-decoration: none;
    font-size: 0.8rem;
    line-height: 1.3;
    font-variant-numeric: tabular-nums;
    background: linear-gradient(var(--faint), var(--faint)) 0 calc(var(--tall) * 40 / 54) / 100% 1.5px no-repeat;
  }
  .day:hover .date {
    color: var(--ink);
    text-decoration: underline;
  }
  svg {
    height: var(--tall);
    width: calc(var(--tall) * 16 / 54);
    overflow: visible;
  }
  .held {
    fill: var(--ink);
  }
  .arrows,
  .pain {
    fill: none;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .arrows {
    stroke: var(--dim);
    stroke-width: 1.3;
  }
  .pain {
    stroke: var(--accent);
    stroke-width: 2;
  }
  .date {
    min-width: 1.6em;
    padding-bottom: 0.1rem;
    border-bottom: 3px solid transparent;
    color: var(--dim);
    text-align: center;
  }
  [aria-current] .date {
    border-bottom-color: var(--accent);
    color: var(--ink);
    font-weight: 700;
  }
  .sum {
    display: grid;
    align-content: center;
    justify-items: end;
    min-width: 0;
    padding-left: 0.6rem;
    font-size: 0.8rem;
    line-height: 1.35;
    text-align: right;
    text-decoration: none;
    overflow-wrap: anywhere;
    font-variant-numeric: tabular-nums;
  }
  .sum > :first-child {
    text-decoration: underline;
    text-decoration-color: var(--dim);
    text-underline-offset: 0.2em;
  }
  .sum b {
    font-size: var(--text-small);
  }
  .key {
    margin-top: 0.8rem;
  }
  /* Very large text: a week's sum is under its line. */
  @container (max-width: 16rem) {
    .week {
      grid-template-columns: repeat(7, minmax(0, 1fr));
    }
    .date {
      min-width: 0;
    }
    .sum {
      display: flex;
      flex-wrap: wrap;
      gap: 0 0.6rem;
      grid-column: 1 / -1;
      padding: 0.4rem 0;
    }
  }
  @media (min-width: 40rem) {
    .day {
      --tall: 5.4rem;
    }
    .sum,
    .day {
      font-size: var(--text-small);
    }
  }
  @media (forced-colors: active) {
    .held {
      fill: CanvasText;
    }
    .arrows,
    .pain {
      stroke: CanvasText;
    }
    .day {
      background: none;
      border-bottom: 1px solid CanvasText;
    }
    .date {
      border-bottom-color: Canvas;
    }
    [aria-current] .date {
      border-bottom-color: Highlight;
    }
  }
`;

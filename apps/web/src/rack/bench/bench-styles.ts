import { css } from 'lit';

/** The bench's own layout; colours and controls are the page's. */
export const benchStyles = css`
  .bar {
    position: sticky;
    top: 0;
    z-index: 1;
    /* With very large text it leaves the form its room, and never lies over the places below. */
    max-height: 45vh;
    overflow-y: auto;
    margin: var(--gap) 0;
    padding: min(0.6rem, 1.5vh) 0;
    background: var(--ground);
    border-bottom: 1px solid var(--rule);
  }
  /* The buttons right of the totals where both have room, else above them: with very large text they are what must be seen. */
  .bar {
    display: flex;
    flex-flow: row-reverse wrap;
    gap: 0.4rem 1.4rem;
    align-items: center;
  }
  .bar > * {
    flex: 1 1 100%;
    order: 2;
    min-width: 0;
  }
  .bar > .totals {
    flex: 1 1 4rem;
    order: 1;
  }
  .bar > .row {
    flex: 0 1 auto;
    order: 0;
  }
  .bar > .row button {
    min-height: min(var(--touch), 12vh);
  }
  .bar > [role='status']:empty {
    display: none;
  }
  .in-one,
  .no-times {
    --timeline-tall: 2.2rem;
    /* As high as the picture and its times, so that a field half typed moves nothing. */
    min-height: 3.9rem;
  }
  .by-block {
    display: none;
    --timeline-tall: 3.4rem;
  }
  /* On a wide screen the times are beside the form and stay there. */
  @media (min-width: 68rem) {
    .two {
      display: grid;
      grid-template-columns: minmax(0, 7fr) minmax(0, 5fr);
      gap: calc(var(--gap) * 2);
      align-items: start;
      margin-top: var(--gap);
    }
    .form {
      order: -1;
    }
    .bar {
      top: var(--gap);
      display: grid;
      grid-template-columns: minmax(0, 1fr);
      max-height: calc(100dvh - 2 * var(--gap));
      overflow-y: auto;
      margin: 0;
      padding: var(--gap);
      gap: 1rem;
      border: 0;
      background: var(--raised);
    }
    .bar > * {
      order: 0;
    }
    .in-one {
      display: none;
    }
    .by-block {
      display: block;
    }
  }
  lark-quick-line {
    display: block;
    margin-bottom: calc(var(--gap) * 1.2);
  }
  .readies {
    display: grid;
    gap: 0.6rem;
    grid-template-columns: repeat(auto-fit, minmax(min(15rem, 100%), 1fr));
    margin: 0.6rem 0;
  }
  .ready {
    display: grid;
    gap: 0.25rem;
    justify-items: start;
    align-content: start;
    padding: 0.7rem 0.9rem;
    font-weight: 400;
    text-align: left;
  }
  .ready b {
    font-weight: 650;
  }
  .grows {
    display: block;
    font-weight: 400;
  }
  .totals {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1.4rem;
  }
  .totals div {
    display: flex;
    gap: 0.5em;
    align-items: baseline;
  }
  dt {
    color: var(--dim);
    font-size: var(--text-small);
  }
  dd {
    font-weight: 650;
  }
  svg {
    display: block;
    width: 100%;
    height: 3rem;
    margin: 0.4rem 0;
  }
  svg.fatigue {
    height: 6rem;
  }
  .drawn {
    fill: var(--accent);
    stroke: none;
  }
  .edge,
  .ground {
    stroke: var(--dim);
    vector-effect: non-scaling-stroke;
    stroke-dasharray: 3 3;
  }
  .curve {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2.5;
    vector-effect: non-scaling-stroke;
  }
  .fails {
    stroke: var(--accent);
    stroke-width: 3;
    vector-effect: non-scaling-stroke;
  }
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(9.5rem, 100%), 1fr));
    gap: 0.8rem;
    margin: 0.8rem 0;
    align-items: start;
  }
  .wide {
    grid-column: 1 / -1;
  }
  .field input,
  .field select {
    width: 100%;
  }
  .field label {
    font-weight: 600;
  }
  .field :is(input, select, textarea) {
    scroll-margin-top: 13rem;
  }
  [aria-invalid='true'] {
    border-width: 3px;
    border-color: var(--accent);
  }
  .problem {
    margin-top: 0.25rem;
    padding-left: 0.6rem;
    border-left: 4px solid var(--accent);
    overflow-wrap: anywhere;
  }
  .blocks > li {
    margin: var(--gap) 0;
    padding: var(--gap);
    border: 1.5px solid var(--faint);
    border-radius: var(--radius);
    background: var(--ground);
  }
  .blocks > li.sortable-ghost {
    opacity: 0.5;
  }
  .rungs > li {
    padding: 0.4rem 0;
    border-bottom: 1px solid var(--rule);
  }
  .block-head {
    display: flex;
    gap: 0.6rem;
    align-items: center;
    margin-bottom: 0.6rem;
  }
  .as-line,
  #add-block {
    margin-top: 0.6rem;
  }
  .sessions {
    margin: 0.8rem 0;
  }
  .block-head h3 {
    overflow-wrap: anywhere;
  }
  .grip {
    flex: none;
    min-width: var(--touch);
    min-height: var(--touch);
    display: grid;
    place-items: center;
    font-size: 1.4rem;
    color: var(--dim);
    cursor: grab;
    touch-action: none;
  }
  .weeks {
    width: 100%;
    border-collapse: collapse;
  }
  .weeks-room {
    container-type: inline-size;
  }
  @container (min-width: 15rem) {
    .weeks th {
      overflow-wrap: normal;
    }
  }
  .weeks :is(th, td) {
    padding: 0.5rem 0.5rem 0.5rem 0;
    border-bottom: 1px solid var(--rule);
    text-align: left;
    vertical-align: top;
  }
  svg.week-bar {
    max-width: 8rem;
    height: 0.4rem;
  }
  @media (max-width: 30rem) {
    .totals {
      gap: 0.2rem 0.9rem;
    }
    /* The whole time is at the end of the strokes' line. */
    .totals :is(.spare, .whole) {
      display: none;
    }
    .totals div {
      display: block;
      line-height: 1.25;
    }
    .bar button {
      padding: 0.3rem 0.6rem;
    }
    .bar .row {
      gap: 0.3rem;
    }
    .blocks > li {
      padding: 0.7rem;
    }
    .blocks .row {
      gap: 0.4rem;
    }
    .blocks .row button {
      padding-inline: 0.4rem;
      font-size: var(--text-small);
    }
    .fields {
      grid-template-columns: repeat(auto-fill, minmax(min(7.5rem, 100%), 1fr));
    }
    .field:has([id$='-drill']) {
      grid-column: 1 / -1; /* so that sets are beside reps, and draw beside hold */
    }
  }
  @media (max-height: 30rem) {
    .bar {
      position: static;
    }
  }
`;

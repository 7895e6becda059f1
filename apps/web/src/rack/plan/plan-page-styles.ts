import { css } from 'lit';

/** A day's times where they are under its drill. */
const underDrill = css`
  width: auto;
  padding: 0 0 0.5rem 1.1rem;
  border-bottom: 1px solid var(--rule);
  color: var(--dim);
  font-size: var(--text-small);
  text-align: left;
`;

/** A plain table; on a telephone the times are under the drill. */
export const planPageStyles = css`
  .forecast {
    margin-top: 0.6rem;
    max-width: 38rem;
  }
  .fields {
    display: flex;
    flex-wrap: wrap;
    gap: 0.8rem 1.2rem;
    margin: var(--gap) 0 0.6rem;
  }
  .fields label {
    display: grid;
    gap: 0.3rem;
    grid-template-columns: minmax(0, 1fr);
    min-width: 0;
    max-width: 100%;
  }
  .fields select {
    max-width: 100%;
  }
  .row,
  .empty {
    margin-top: var(--gap);
  }
  .weeks {
    margin-top: var(--gap);
    border-bottom: 1px solid var(--rule);
  }
  .week > summary {
    padding: 0.4rem 0;
  }
  .head {
    display: flex;
    flex: 1 1 0;
    flex-wrap: wrap;
    gap: 0.1rem 0.6rem;
    align-items: baseline;
    min-width: 0;
    line-height: 1.3;
  }
  .head b {
    font-weight: 650;
  }
  .head .small {
    flex-basis: 100%;
    font-weight: 400;
  }
  .strokes {
    flex: none;
    width: min(5.6rem, 26%);
  }
  .ground {
    stroke: var(--faint);
    stroke-width: 1.2;
  }
  .held {
    fill: var(--ink);
  }
  .marked {
    fill: none;
    stroke: var(--accent);
    stroke-width: 2;
    stroke-linecap: round;
  }
  .week table {
    margin-bottom: 0.8rem;
  }
  th,
  td {
    padding: 0.5rem 0.8rem 0.5rem 0;
    vertical-align: top;
  }
  tbody tr:last-child > * {
    border-bottom: 0;
  }
  th {
    font-weight: 500;
  }
  tbody th[scope='row'] {
    width: 8.5rem;
  }
  .at-draw {
    display: none;
  }
  .times {
    width: 11rem;
    padding-right: 0;
    text-align: right;
  }
  .kind {
    padding: 0.05rem 0.45rem;
    border: 1.5px solid var(--accent);
    border-radius: 6px;
    font-size: var(--text-small);
    font-weight: 600;
  }
  .competition td,
  .competition th {
    font-weight: 700;
  }
  .week details {
    border: 0;
  }
  .week details summary {
    min-height: 1.75rem;
    font-weight: 400;
  }
  .week details ul {
    padding: 0.3rem 0 0.4rem 1.1rem;
    color: var(--dim);
    font-weight: 400;
  }
  @media (max-width: 34rem) {
    table,
    tbody,
    tr,
    td,
    tbody th {
      display: block;
    }
    tbody th[scope='row'] {
      width: auto;
      padding-bottom: 0;
      border-bottom: 0;
      color: var(--dim);
      font-size: var(--text-small);
    }
    td {
      padding: 0.1rem 0;
      border-bottom: 0;
    }
    td.times {
      ${underDrill}
    }
    .at-draw {
      display: inline;
    }
  }
  /* A wide screen: weeks in two columns, each of them whole. */
  @media (min-width: 68rem) {
    .in-two .weeks {
      columns: 2 26rem;
      column-gap: calc(var(--gap) * 2.5);
      border-bottom: 0;
    }
    .in-two li {
      break-inside: avoid;
    }
  }
  @media (forced-colors: active) {
    .held {
      fill: CanvasText;
    }
    .ground {
      stroke: CanvasText;
    }
    .marked {
      stroke: Highlight;
    }
  }
`;

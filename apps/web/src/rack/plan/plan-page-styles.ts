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

/** A plain table; on a telephone the times stand under the drill. */
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
  table {
    margin-top: var(--gap);
  }
  th,
  td {
    padding: 0.5rem 0.8rem 0.5rem 0;
    vertical-align: top;
  }
  th {
    font-weight: 500;
  }
  thead th {
    color: var(--dim);
    font-size: var(--text-small);
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
  .week th {
    padding-top: 1.4rem;
    border-bottom: 2px solid var(--faint);
    font-weight: 650;
  }
  .week .dim {
    margin-left: 0.5rem;
    font-weight: 400;
  }
  .kind {
    margin-left: 0.5rem;
    padding: 0.05rem 0.45rem;
    border: 1.5px solid var(--accent);
    border-radius: 6px;
    font-size: var(--text-small);
    font-weight: 600;
    white-space: nowrap;
  }
  .competition td,
  .competition th {
    font-weight: 700;
  }
  details {
    border: 0;
  }
  summary {
    min-height: 1.75rem;
    font-weight: 400;
  }
  details ul {
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
    thead {
      display: none;
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
    .in-two table {
      display: block;
      columns: 2 26rem;
      column-gap: calc(var(--gap) * 2.5);
    }
    .in-two thead {
      display: none;
    }
    .in-two tbody {
      display: block;
      break-inside: avoid;
      padding-bottom: 0.8rem;
    }
    .in-two .week th {
      padding-top: 0.6rem;
    }
    .in-two tr {
      display: grid;
      grid-template-columns: 7.6rem minmax(0, 1fr);
    }
    .in-two .week {
      grid-template-columns: minmax(0, 1fr);
    }
    .in-two tbody th[scope='row'] {
      grid-row: 1 / span 2;
      width: auto;
    }
    .in-two td {
      padding-bottom: 0;
      border-bottom: 0;
    }
    .in-two td.times {
      grid-column: 2;
      ${underDrill}
    }
    .in-two .at-draw {
      display: inline;
    }
  }
`;

import { css } from 'lit';

/** Forms of the season: fields in a row where there is room, one below the other on a phone. */
export const seasonStyles = css`
  /* Parts that are lines are set close, as in an index. */
  .fold {
    margin-top: 0;
    padding-top: 0;
    border-top: 0;
  }
  .fold > details > summary {
    padding: 0.5rem 0;
  }
  .fold h2 {
    font-size: var(--text);
  }
  .fold summary .small {
    display: block;
    font-weight: 400;
    overflow-wrap: anywhere;
  }
  .fold .inside {
    padding-bottom: var(--gap);
  }
  section p {
    max-width: 40rem;
  }
  .blocks details:last-child {
    border-bottom: 1px solid var(--rule);
  }
  .blocks span {
    overflow-wrap: anywhere;
  }
  .blocks span > .dim {
    display: block;
    font-weight: 400;
  }
  details form {
    padding-bottom: 1rem;
  }
  .index {
    margin-top: calc(var(--gap) * 1.2);
    border-bottom: 1px solid var(--rule);
  }
  .next {
    font-weight: 650;
  }
  .under {
    margin-top: 0.8rem;
  }
  section > .small {
    margin-top: 0.8rem;
  }
  .things:not(:empty) {
    margin-top: 0.4rem;
  }
  .things li {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 0.8rem;
    align-items: center;
    justify-content: space-between;
    padding: 0.3rem 0;
    border-bottom: 1px solid var(--rule);
    overflow-wrap: anywhere;
  }
  form {
    margin-top: 0.8rem;
  }
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 11rem), 1fr));
    gap: 0.8rem 1.2rem;
    align-items: end;
  }
  .fields :is(input, select) {
    display: block;
    width: 100%;
    margin-top: 0.3rem;
  }
  .row {
    margin-top: 0.8rem;
  }
  fieldset {
    min-width: 0;
    margin: 1rem 0 0;
    padding: 0.2rem 0 0;
    border: 0;
  }
  legend {
    padding: 0;
    font-weight: 650;
  }
  .days {
    display: grid;
    gap: 0.4rem 1rem;
    margin-top: 0.8rem;
  }
  .days li {
    display: grid;
    grid-template-columns: 6.5rem minmax(0, 1fr) minmax(0, 1fr);
    gap: 0.5rem;
    align-items: center;
  }
  .days select {
    width: 100%;
  }
  .notices li {
    margin-top: 0.35rem;
  }
  @media (max-width: 34rem) {
    .days li {
      grid-template-columns: 1fr 1fr;
    }
    .days span {
      grid-column: 1 / -1;
    }
  }
`;

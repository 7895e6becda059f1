import { css } from 'lit';

/** Forms of the season: fields in a row where there is room, one below the other on a phone. */
export const seasonStyles = css`
  section p {
    max-width: 40rem;
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

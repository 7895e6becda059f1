import { css } from 'lit';

/** The page of what is known: a section a field, each with where it was read and how it is corrected. */
export const knownStyles = css`
  .about {
    margin-top: 0.6rem;
    max-width: 40rem;
  }
  .climb {
    margin-top: 0.6rem;
    padding-top: 0;
    border-top: 0;
  }
  h3 {
    margin-top: 0.9rem;
  }
  section p {
    margin-top: 0.35rem;
    max-width: 40rem;
  }
  .from {
    color: var(--dim);
    font-size: var(--text-small);
  }
  .from a {
    white-space: nowrap;
  }
  label {
    margin-top: 0.9rem;
  }
  label input {
    display: block;
    width: min(100%, 9rem);
    margin-top: 0.3rem;
  }
  fieldset {
    margin: 0.9rem 0 0;
    padding: 0;
    border: 0;
  }
  legend {
    padding: 0;
    font-weight: 600;
  }
  .row {
    margin-top: 0.6rem;
  }
  .results li {
    padding: 0.5rem 0;
    border-bottom: 1px solid var(--rule);
  }
  .problem:empty {
    display: none;
  }
  .problem {
    font-weight: 600;
  }
  lark-climb {
    margin-top: 0.6rem;
  }
`;

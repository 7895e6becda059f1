import { css } from 'lit';

/** The kit: fields in two columns where there is room. */
export const kitStyles = css`
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 17rem), 1fr));
    gap: 1.1rem 1.6rem;
    margin-top: 0.9rem;
  }
  .fields input,
  .fields select {
    display: block;
    width: 100%;
    margin-top: 0.3rem;
  }
  .fields .small {
    display: block;
    margin-top: 0.3rem;
  }
  .problem:empty {
    display: none;
  }
  .problem {
    margin-top: 0.8rem;
    font-weight: 600;
  }
  .tick {
    margin-top: 0.5rem;
  }
  .row {
    margin: 0.9rem 0;
  }
  .legible {
    margin-top: 0.9rem;
  }
  .warning:empty {
    display: none;
  }
  .warning {
    margin-top: 0.4rem;
    padding: 0.6rem 0.8rem;
    border-left: 5px solid var(--accent);
    background: var(--raised);
  }
  .learns {
    display: grid;
    gap: 0.6rem;
    margin: 1rem 0;
  }
  .learns lark-learn {
    border-radius: var(--radius);
  }
  .safety {
    margin: 0.6rem 0 1rem;
    padding-left: 1.1rem;
    list-style: disc;
  }
  .safety li + li {
    margin-top: 0.35rem;
  }
`;

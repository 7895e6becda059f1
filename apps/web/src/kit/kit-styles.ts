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
  .keys {
    margin-top: 0.6rem;
  }
  .keys div {
    display: grid;
    grid-template-columns: minmax(7rem, 12rem) 1fr;
    gap: 0.3rem 1rem;
    padding: 0.4rem 0;
    border-bottom: 1px solid var(--rule);
  }
  kbd {
    display: inline-block;
    margin: 0.1rem 0;
    padding: 0.05rem 0.5rem;
    border: 1.5px solid var(--faint);
    border-radius: 6px;
    font: inherit;
    font-size: var(--text-small);
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

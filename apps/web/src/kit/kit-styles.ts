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
    margin: 1rem 0;
    border-top: 1px solid var(--rule);
  }
  .learns lark-learn {
    padding-inline: 0;
    border-bottom: 1px solid var(--rule);
    background: none;
  }
  .last {
    margin-top: 0.6rem;
  }
  .links {
    margin-top: 0.6rem;
  }
  /* What can be done here: a button, and beside or below it what it is for. */
  .deeds {
    margin-top: var(--gap);
    border-top: 1px solid var(--rule);
  }
  .deeds + *,
  * + .deeds {
    margin-top: 0;
  }
  .deeds li {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 15.5rem), 1fr));
    gap: 0.3rem 1rem;
    align-items: center;
    padding: 0.7rem 0;
    border-bottom: 1px solid var(--rule);
  }
  lark-integrity .deeds {
    border-top: 0;
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

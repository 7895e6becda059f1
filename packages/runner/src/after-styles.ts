import { css } from 'lit';

/** Layout of the questions after a drill. */
export const afterStyles = css`
  :host {
    display: block;
    padding: 1rem;
  }
  form {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1.2rem;
    max-width: 44rem;
    margin: 0 auto;
  }
  h2,
  h3,
  p {
    margin: 0;
  }
  fieldset {
    margin: 0;
    padding: 0.6rem 0.9rem 0.9rem;
    border: 1px solid var(--faint);
    border-radius: 12px;
    min-width: 0;
  }
  fieldset.asked {
    border-color: var(--ink);
  }
  .hint {
    color: var(--dim);
  }
  legend {
    padding: 0 0.4rem;
    font-weight: 600;
  }
  .effort {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(9rem, 100%), 1fr));
    gap: 0.3rem 0.4rem;
  }
  fieldset label {
    display: flex;
    align-items: center;
    gap: 0.4rem;
    min-height: 48px;
    line-height: 1.2;
    cursor: pointer;
  }
  input {
    width: 24px;
    height: 24px;
    flex: none;
    accent-color: var(--accent);
  }
  b {
    min-width: 1.2em;
    text-align: right;
    font-variant-numeric: tabular-nums;
  }
  .pain {
    display: flex;
    flex-wrap: wrap;
    gap: 0 2rem;
  }
  .caution {
    flex-basis: 100%;
    font-weight: 600;
  }
  .caution:not(:empty) {
    margin-top: 0.4rem;
    padding-left: 0.7rem;
    border-left: 6px solid var(--accent);
  }
  .note {
    display: grid;
    gap: 0.3rem;
    font-weight: 600;
  }
  textarea {
    padding: 0.6rem;
    border: 1px solid var(--dim);
    border-radius: 8px;
    background: var(--raised);
    color: var(--ink);
    font: inherit;
    font-weight: 400;
  }
  ol {
    margin: 0.4rem 0 0;
    padding: 0;
    list-style: none;
  }
  li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.4rem 1rem;
    padding: 0.6rem 0;
    border-top: 1px solid var(--faint);
  }
  li.asked {
    box-shadow: inset 4px 0 var(--ink);
    padding-left: 0.8rem;
  }
  .rep {
    flex: 1 1 12rem;
  }
  .held {
    color: var(--dim);
    font-variant-numeric: tabular-nums;
  }
  .outcomes {
    display: flex;
    flex-wrap: wrap;
    flex: 1 1 100%;
    gap: 6px;
  }
  .outcomes button {
    flex: 1 1 auto;
    min-height: 48px;
    padding: 0.2rem;
    font-size: 1rem;
    font-weight: 400;
  }
  .outcomes [aria-pressed='true'] {
    border-color: var(--ink);
    font-weight: 700;
    text-decoration: underline;
    text-underline-offset: 4px;
  }
  .done {
    display: flex;
    gap: 10px;
  }
  .done .main {
    flex: 1;
  }
`;

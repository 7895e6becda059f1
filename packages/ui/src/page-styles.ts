import { css } from 'lit';

/** Headings, text and controls shared by all places. Colours and sizes come from `tokens.css`. */
export const pageStyles = css`
  :host {
    display: block;
    overflow-wrap: break-word; /* a word that is wider than its place */
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  h1,
  h2,
  h3,
  p,
  ul,
  ol,
  dl,
  dd,
  figure {
    margin: 0;
    padding: 0;
  }
  ul,
  ol {
    list-style: none;
  }
  h1 {
    font-size: min(var(--text-title), 12.5vw); /* with large text on a small screen a word stays whole */
    font-weight: 700;
    letter-spacing: -0.015em;
    line-height: 1.15;
    overflow-wrap: anywhere;
    hyphens: auto;
  }
  h1,
  h2,
  h3,
  button,
  .button {
    text-wrap: balance;
  }
  /* No word of a sentence is alone on its last line. */
  p,
  li,
  summary {
    text-wrap: pretty;
  }
  h2,
  h3,
  legend {
    overflow-wrap: anywhere;
    hyphens: auto;
  }
  .tick,
  summary {
    overflow-wrap: anywhere;
  }
  legend {
    max-width: 100%;
  }
  h2 {
    font-size: var(--text-large);
    font-weight: 650;
    line-height: 1.25;
  }
  h3 {
    font-size: var(--text);
    font-weight: 650;
  }
  h2 + p,
  h3 + p {
    margin-top: 0.35rem;
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
    text-decoration-thickness: 1px;
    text-decoration-color: var(--dim);
  }
  a:hover {
    text-decoration-thickness: 2px;
    text-decoration-color: currentColor;
  }
  /* A narrow or enlarged page breaks a long word sooner than it scrolls sideways. */
  table {
    overflow-wrap: anywhere;
  }
  .dim {
    color: var(--dim);
  }
  .small {
    font-size: var(--text-small);
  }
  .numbers {
    font-variant-numeric: tabular-nums;
  }
  .lark-mark {
    display: block;
    width: min(8.5rem, 38vw);
    height: auto;
  }
  .visually-hidden {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  section {
    margin-top: calc(var(--gap) * 1.4);
    padding-top: calc(var(--gap) * 0.9);
    border-top: 1px solid var(--rule);
  }
  :focus-visible {
    outline: 3px solid var(--accent);
    outline-offset: 3px;
    border-radius: 4px;
  }
`;

/** Buttons, fields and folds, large enough for a hand in a finger tab. */
export const controlStyles = css`
  button,
  .button {
    display: inline-flex;
    align-items: center;
    justify-content: center;
    gap: 0.5em;
    min-height: var(--touch);
    min-width: var(--touch);
    max-width: 100%;
    padding: 0.45rem 1rem;
    border: 1.5px solid var(--faint);
    border-radius: var(--radius);
    background: transparent;
    color: var(--ink);
    font: inherit;
    font-weight: 600;
    line-height: 1.2;
    text-align: center;
    text-decoration: none;
    overflow-wrap: break-word;
    cursor: pointer;
    touch-action: manipulation;
  }
  button:hover,
  .button:hover {
    border-color: var(--dim);
  }
  button.main {
    border-color: var(--accent);
    background: var(--accent);
    color: var(--on-accent);
  }
  button.quiet {
    border-color: transparent;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.2em;
    padding-inline: 0.5rem;
    font-weight: 500;
  }
  button[aria-pressed='true'] {
    border-color: var(--ink);
    background: var(--ink);
    color: var(--ground);
  }
  button:disabled {
    opacity: 0.5;
    cursor: default;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 0.6rem;
    align-items: center;
  }
  .row > * {
    min-width: 0;
    max-width: 100%;
  }
  label {
    display: block;
  }
  input:not([type='checkbox'], [type='radio'], [type='range']),
  select,
  textarea {
    min-height: var(--touch);
    max-width: 100%;
    padding: 0.4rem 0.75rem;
    border: 1.5px solid var(--faint);
    border-radius: var(--radius);
    background: var(--raised);
    color: var(--ink);
    font: inherit;
  }
  textarea {
    display: block;
    width: 100%;
    min-height: 5rem;
    resize: vertical;
  }
  input[type='checkbox'],
  input[type='radio'] {
    width: 1.5rem;
    height: 1.5rem;
    margin: 0;
    accent-color: var(--accent);
    flex: none;
  }
  input[type='range'] {
    width: min(100%, 22rem);
    min-height: var(--touch);
    margin: 0;
    accent-color: var(--accent);
  }
  .tick {
    display: flex;
    gap: 0.75rem;
    align-items: center;
    min-height: var(--touch);
  }
  details {
    border-top: 1px solid var(--rule);
  }
  summary {
    display: flex;
    align-items: center;
    gap: 0.6rem;
    min-height: 3.25rem;
    font-weight: 600;
    cursor: pointer;
    list-style: none;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  summary::before {
    content: '';
    flex: none;
    width: 0.5rem;
    height: 0.5rem;
    border: solid var(--dim);
    border-width: 0 2px 2px 0;
    transform: rotate(-45deg);
  }
  details[open] > summary::before {
    transform: rotate(45deg) translate(-2px, -2px);
  }
  dialog {
    width: min(42rem, 100% - 2rem);
    max-height: calc(100dvh - 2rem);
    padding: var(--gap);
    border: 1.5px solid var(--faint);
    border-radius: calc(var(--radius) * 1.3);
    background: var(--ground);
    color: var(--ink);
  }
  dialog::backdrop {
    background: rgb(0 0 0 / 0.6);
  }
  .notice {
    display: grid;
    gap: 0.7rem;
    justify-items: start;
    padding: 0.8rem 1rem;
    border-left: 5px solid var(--accent);
    background: var(--raised);
  }
  /* What happened, and beside it what can be done about it. */
  .notice .said {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 1rem;
    align-items: center;
    justify-content: space-between;
    width: 100%;
  }
  .notice .said p {
    flex: 1 1 9rem;
  }
  @media (forced-colors: active) {
    button.main,
    button[aria-pressed='true'] {
      forced-color-adjust: none;
    }
  }
`;

/** Tables of numbers: as wide as their place, a rule under each row. What a table adds of its own comes after it. */
export const tableStyles = css`
  table {
    width: 100%;
    border-collapse: collapse;
    font-variant-numeric: tabular-nums;
  }
  th,
  td {
    border-bottom: 1px solid var(--rule);
    text-align: left;
    font-weight: 400;
  }
`;

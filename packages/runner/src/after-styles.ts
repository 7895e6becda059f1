import { css } from 'lit';

/** Layout of the questions after a drill: everything on one page, and Save always on the screen. */
export const afterStyles = css`
  :host {
    display: block;
    position: relative;
    padding: 1rem 1rem 0;
    box-sizing: border-box;
  }
  *,
  *::before {
    box-sizing: border-box;
  }
  form {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1rem;
    max-width: 44rem;
    margin: 0 auto;
  }
  h2,
  h3,
  p {
    margin: 0;
  }
  h2 {
    line-height: 1.15;
  }
  fieldset {
    margin: 0;
    padding: 0;
    border: 0;
    min-width: 0;
  }
  fieldset.asked legend {
    text-decoration: underline 3px;
    text-underline-offset: 5px;
  }
  .hint,
  .meant,
  .sum {
    color: var(--dim);
  }
  .hint {
    font-size: 0.9375rem;
  }
  legend {
    padding: 0 0 0.3rem;
    font-weight: 600;
  }
  .strip {
    position: relative;
    display: grid;
    grid-template-columns: repeat(11, minmax(0, 1fr));
    max-width: 36rem;
  }
  .strip svg {
    position: absolute;
    inset: 0 0 2rem;
    width: 100%;
    height: 4.2rem;
    border-bottom: 1px solid var(--faint);
  }
  .strip path {
    fill: none;
    stroke: var(--dim);
    stroke-width: 1;
    vector-effect: non-scaling-stroke;
  }
  .strip path.felt {
    fill: var(--ink);
    stroke: var(--ink);
  }
  .strip label {
    position: relative;
    display: grid;
    align-items: end;
    justify-items: center;
    height: 6.2rem;
    min-width: 0;
    cursor: pointer;
    touch-action: manipulation;
  }
  .strip input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    margin: 0;
    opacity: 0;
    cursor: pointer;
  }
  .strip b {
    width: 100%;
    height: 1.7rem;
    border-radius: 6px;
    font-weight: 500;
    line-height: 1.7rem;
    text-align: center;
    font-size: min(1.05rem, 5vw);
    font-variant-numeric: tabular-nums;
  }
  .strip .chosen b {
    background: var(--ink);
    color: var(--ground);
    font-weight: 700;
  }
  .strip label:focus-within {
    outline: 3px solid var(--ink);
    outline-offset: 1px;
    border-radius: 6px;
  }
  .felt-words {
    min-height: 1.5em;
    margin-top: 0.2rem;
    font-weight: 600;
  }
  .pain {
    display: flex;
    flex-wrap: wrap;
    gap: 0 0.8rem;
  }
  .pain legend {
    float: left;
    flex: none;
    padding: 0;
  }
  .pain .meant {
    flex: 1 1 100%;
    margin-bottom: 0.3rem;
  }
  .pain label {
    display: flex;
    align-items: center;
    gap: 0.5rem;
    min-height: 48px;
    padding: 0 1.1rem 0 0.8rem;
    border: 1.5px solid var(--faint);
    border-radius: 12px;
    cursor: pointer;
  }
  .pain label:has(:checked) {
    border-color: var(--ink);
    font-weight: 700;
  }
  .pain input {
    width: 24px;
    height: 24px;
    flex: none;
    accent-color: var(--accent);
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
    resize: vertical;
  }
  ol {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  li {
    border-top: 1px solid var(--faint);
  }
  li.asked {
    box-shadow: inset 4px 0 var(--ink);
    padding-left: 0.8rem;
  }
  section lark-hold-ribbon {
    margin: 0.2rem 0;
  }
  /* At the foot of the screen however long the page is. */
  .done {
    position: sticky;
    bottom: 0;
    display: flex;
    flex-wrap: wrap;
    gap: 10px;
    margin: 0 -1rem;
    padding: 0.6rem 1rem max(0.6rem, env(safe-area-inset-bottom));
    border-top: 1px solid var(--faint);
    background: var(--ground);
  }
  .done button {
    min-height: min(56px, 14vh);
    padding-block: 0.2rem;
  }
  .done .main {
    flex: 1;
  }
  .closing {
    position: fixed;
    inset: 0;
    z-index: 2;
    display: grid;
    grid-template-rows: auto auto minmax(0, 1fr);
    gap: 2vmin;
    padding: 4vmin;
    background: var(--ground);
    text-align: center;
    animation: away 0.5s 7s forwards;
  }
  .closing.flipped {
    transform: scaleX(-1);
  }
  .closing .word {
    font-size: min(24vw, 30vh);
    font-weight: 700;
    letter-spacing: -0.02em;
    line-height: 1;
  }
  .closing .count {
    font-size: min(18vw, 24vh);
    font-weight: 700;
    line-height: 1;
    font-variant-numeric: tabular-nums;
  }
  .closing lark-hold-ribbon {
    align-self: stretch;
    width: min(100%, 80rem);
    height: 100%;
    min-height: 0;
    margin: 0 auto;
  }
  /* Beside each other on a screen that is wider than high: both as large as they can be. */
  @media (orientation: landscape) {
    .closing {
      grid-template: 1fr 1fr / minmax(0, 11fr) minmax(0, 9fr);
      column-gap: 4vw;
    }
    .closing .word {
      align-self: end;
      font-size: min(12vw, 38vh);
    }
    .closing .count {
      align-self: start;
      font-size: min(10vw, 30vh);
      white-space: nowrap;
    }
    .closing lark-hold-ribbon {
      grid-area: 1 / 2 / -1 / -1;
    }
  }
  /* Effort and pain beside each other where the screen is wide or low. */
  @media (min-width: 60rem), (min-width: 40rem) and (max-height: 30rem) {
    form {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      column-gap: 2.5rem;
      align-items: start;
      max-width: 72rem;
    }
    h2,
    .hint,
    .done {
      grid-column: 1 / -1;
    }
  }
  @keyframes away {
    to {
      opacity: 0;
      visibility: hidden;
    }
  }
  /* Without motion it does not go by itself, so it is above the questions and covers nothing. */
  @media (prefers-reduced-motion: reduce) {
    .closing {
      position: static;
      max-width: 44rem;
      margin: 0 auto 1rem;
      padding: 0;
      animation: none;
    }
    .closing .word,
    .closing .count {
      font-size: min(12vw, 12vh);
    }
    .closing lark-hold-ribbon {
      display: none;
    }
  }
`;

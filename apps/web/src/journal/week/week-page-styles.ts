import { css } from 'lit';

/** Layout of a week's page. */
export const weekPageStyles = css`
  header {
    display: flex;
    flex-wrap: wrap;
    gap: 0.6rem 1.2rem;
    align-items: center;
    justify-content: space-between;
  }
  /* Beside the title also on a phone; under it where text is large. */
  header > div:first-child {
    flex: 1 1 9rem;
  }
  header .button {
    padding-inline: 0.6rem;
  }
  .field {
    display: grid;
    gap: 0.25rem;
    margin-top: 0.6rem;
    font-weight: 600;
    line-height: 1.3;
  }
  .field input:not([type='checkbox']),
  .field textarea {
    width: 100%;
    font-weight: 400;
  }
  /* As low as a line, and as high as what is written. */
  .field textarea.low {
    min-height: 3rem;
    field-sizing: content;
  }
  @supports (field-sizing: content) {
    .field textarea.low {
      resize: none;
    }
  }
  .field .focus {
    font-size: var(--text-large);
    font-weight: 600;
  }
  /* The name beside its field; above it where there is no room for both. */
  .inline {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.2rem 0.7rem;
  }
  .inline textarea {
    flex: 1 1 9rem;
    width: auto;
    min-width: 0;
  }
  /* Two folds in a row; an open one has the row for itself. */
  .pair {
    display: flex;
    flex-wrap: wrap;
    column-gap: var(--gap);
  }
  .pair details {
    flex: 1 1 auto;
    margin-top: 0;
    border-top: 0;
  }
  .pair details[open] {
    flex-basis: 100%;
  }
  .pair + details {
    margin-top: 0;
    border-top: 0;
  }
  .foot {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.2rem;
    align-items: center;
  }
  .carried {
    margin-top: 0.9rem;
    padding-left: 0.9rem;
    border-left: 3px solid var(--accent);
  }
  .two > div > section:first-child {
    margin-top: 0.8rem;
    padding-top: 0;
    border-top: 0;
  }
  @media (min-width: 68rem) {
    .two {
      display: grid;
      grid-template-columns: minmax(0, 7fr) minmax(0, 5fr);
      gap: calc(var(--gap) * 2.5);
      align-items: start;
    }
  }
  /* Beside the days the column is narrow: there the name is above its field. */
  @media (min-width: 68rem) {
    .inline textarea {
      flex-basis: 100%;
    }
  }
  .days {
    display: grid;
    /* Seven in a row; with very large text in two. */
    grid-template-columns: repeat(auto-fit, minmax(2.4rem, 1fr));
    gap: 2px;
  }
  .day {
    display: grid;
    justify-items: center;
    align-content: start;
    gap: 0.2rem;
    width: 100%;
    min-width: 0;
    min-height: 5.2rem;
    padding: 0.4rem 0 0.2rem;
    border: 0;
    border-top: 3px solid transparent;
    border-radius: 0;
    font-weight: 400;
  }
  .day .number {
    font-weight: 650;
    font-variant-numeric: tabular-nums;
  }
  .day[aria-expanded='true'] {
    border-top-color: var(--accent);
    background: var(--raised);
  }
  .day.today .number {
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.25em;
  }
  /* A stroke, as in the ribbon: planned an outline, done filled, pain crossed. */
  .day .mark {
    width: 0.55rem;
    height: 1.25rem;
    border-radius: 0.3rem;
    border: 2px solid transparent;
    border-bottom-color: var(--faint);
  }
  .day .mark.planned {
    border-color: var(--dim);
  }
  .day .mark.done {
    border-color: var(--ink);
    background: var(--ink);
  }
  .day .mark.pain {
    border-style: dashed;
    border-color: var(--accent);
  }
  .opened {
    padding: 0.6rem 1rem 0;
    background: var(--raised);
  }
  @media (forced-colors: active) {
    .day:not([aria-expanded='true']) {
      border-top-color: Canvas;
    }
    /* A border that is transparent would be drawn, and every day look planned. */
    .day .mark:not(.planned, .done, .pain) {
      border-color: Canvas Canvas CanvasText;
    }
  }
  .title {
    display: flex;
    flex-wrap: wrap;
    gap: 0 0.7rem;
    align-items: baseline;
  }
  .title p {
    margin: 0;
  }
  .open {
    padding: 0.5rem 0 0.8rem;
  }
  h2 {
    margin-bottom: 0.6rem;
  }
  details {
    margin-top: 1rem;
    border-bottom: 1px solid var(--rule);
  }
  details + details {
    margin-top: 0;
    border-top: 0;
  }
  details[open] {
    padding-bottom: 1.1rem;
  }
  summary {
    min-height: var(--touch);
    padding: 0.4rem 0;
  }
  .aims,
  .short {
    display: -webkit-box;
    overflow: hidden;
    -webkit-box-orient: vertical;
    -webkit-line-clamp: 2;
    overflow-wrap: anywhere;
  }
  .short .dim {
    font-weight: 400;
  }
  .aims {
    -webkit-line-clamp: 1;
    font-weight: 400;
    font-size: var(--text-small);
  }
  details + section {
    border-top: 0;
    padding-top: 0;
  }
  .drills {
    margin-bottom: 1rem;
  }
  .drills a {
    display: inline-flex;
    align-items: center;
    min-height: 2.4rem;
  }
  .plan {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(2.1rem, 1fr));
    gap: 0.3rem;
    max-width: 30rem;
  }
  .plan button {
    min-width: 0;
    padding: 0;
  }
  fieldset {
    margin: 1rem 0 0;
    padding: 0;
    border: 0;
    min-width: 0;
  }
  legend {
    padding: 0 0 0.4rem;
    font-weight: 600;
  }
  th,
  td {
    padding: 0.45rem 0;
    text-align: right;
  }
  thead th {
    color: var(--dim);
    font-size: var(--text-small);
  }
  td:nth-child(2) {
    font-weight: 650;
  }
  td:last-child {
    color: var(--dim);
  }
  th:first-child {
    text-align: left;
  }
  .comment {
    white-space: pre-line;
    overflow-wrap: anywhere;
  }
  day-strip {
    display: block;
    margin: 1.2rem 0 0.6rem;
  }
  week-paper {
    display: none;
  }
  @media print {
    .screen {
      display: none;
    }
    week-paper {
      display: block;
    }
  }
`;

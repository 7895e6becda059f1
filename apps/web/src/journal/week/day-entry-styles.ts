import { css } from 'lit';

/** Layout of a day's entry: one column, the thumb's reach. */
export const dayEntryStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.7rem;
    container-type: inline-size;
  }
  fieldset {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.35rem;
    margin: 0;
    padding: 0;
    border: 0;
    min-width: 0;
  }
  /* What a group is about, and the one field that belongs to all of it. */
  .headed {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.2rem;
    align-items: center;
    justify-content: space-between;
  }
  .headed b {
    font-weight: 650;
  }
  #felt {
    font-weight: 650;
  }
  .pain {
    display: flex;
    gap: 0.4rem;
    align-items: center;
    margin-top: 0.5rem;
  }
  .pain > span {
    flex: 1;
    min-width: 0;
  }
  .pain small {
    display: block;
    line-height: 1.3;
  }
  .pain button {
    min-width: 3rem;
    padding-inline: 0.5rem;
  }
  .headed .inline {
    flex: 1 1 8.5rem;
    min-width: 0;
    max-width: 16rem;
  }
  .headed .inline input {
    flex-basis: 4.5rem;
  }
  .kind {
    overflow-wrap: anywhere;
  }
  details {
    border: 0;
  }
  details[open] {
    padding-bottom: 0.4rem;
  }
  textarea {
    min-height: var(--touch);
    field-sizing: content;
  }
  .line {
    display: grid;
    grid-template-columns: minmax(5.5rem, 8rem) auto minmax(5rem, 1fr);
    gap: 0.3rem 0.6rem;
    align-items: center;
  }
  .beside {
    display: inline-flex;
    gap: 0.4rem;
    align-items: center;
    color: var(--dim);
  }
  .beside input {
    width: 4rem;
    text-align: right;
    font-variant-numeric: tabular-nums;
  }
  .beside select {
    width: 6.4rem;
    max-width: 100%;
    padding-inline: 0.4rem;
  }
  .steps {
    display: grid;
    grid-template-columns: repeat(5, minmax(0, 1fr));
  }
  .steps label {
    position: relative;
    display: grid;
    place-items: center;
    min-height: var(--touch);
    padding: 0.3rem 0.15rem;
    border: 1.5px solid var(--faint);
    border-left-width: 0;
    text-align: center;
    font-size: clamp(0.75rem, 4cqi, 1em); /* the longest word in German has room at 360 px */
    line-height: 1.15;
    cursor: pointer;
  }
  .steps label:first-child {
    border-left-width: 1.5px;
    border-radius: var(--radius) 0 0 var(--radius);
  }
  .steps label:last-child {
    border-radius: 0 var(--radius) var(--radius) 0;
  }
  .steps input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    opacity: 0;
    cursor: pointer;
  }
  .steps label:has(:checked) {
    background: var(--ink);
    color: var(--ground);
    font-weight: 650;
  }
  .steps label:has(:focus-visible) {
    outline: 3px solid var(--accent);
    outline-offset: 3px;
    z-index: 1;
  }
  .field {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.3rem;
    font-weight: 600;
  }
  .field input,
  .field textarea {
    min-width: 0;
    font-weight: 400;
  }
  /* The name beside its field; above it where there is no room for both. */
  .inline {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 0.7rem;
    align-items: center;
  }
  .inline > span {
    flex: 0 1 auto;
    font-weight: 500;
  }
  .inline input,
  .inline textarea {
    flex: 1 1 9rem;
    width: auto;
  }
  .caution:not(:empty) {
    padding-left: 0.8rem;
    border-left: 5px solid var(--accent);
    font-weight: 600;
  }
  .caution:empty {
    display: none;
  }
  @container (max-width: 27rem) {
    .line {
      grid-template-columns: minmax(0, 1fr) auto;
    }
    .line > .beside {
      grid-column: 1 / -1;
      justify-self: end;
    }
  }
  @container (max-width: 16rem) {
    .line {
      grid-template-columns: minmax(0, 1fr);
    }
    .steps {
      grid-template-columns: minmax(0, 1fr);
    }
    .steps label,
    .steps label:first-child,
    .steps label:last-child {
      border-width: 0 1.5px 1.5px;
      border-radius: 0;
    }
    .steps label:first-child {
      border-top-width: 1.5px;
    }
  }
  @media (forced-colors: active) {
    .steps label:has(:checked) {
      /* Or the system paints its own ground behind the word, in the word's colour. */
      forced-color-adjust: none;
    }
  }
`;

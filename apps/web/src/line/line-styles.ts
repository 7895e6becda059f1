import { css } from 'lit';

/** The line: numbers first, one large button, the rest below. */
export const lineStyles = css`
  header h1 {
    margin: 0.1rem 0 0.3rem;
  }
  .notice {
    margin-top: var(--gap);
  }
  lark-prescription {
    margin-top: calc(var(--gap) * 1.1);
  }
  .start {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 1.2rem;
    align-items: center;
    margin-top: calc(var(--gap) * 1.1);
  }
  .begin {
    flex: 1 1 14rem;
    max-width: 26rem;
    min-height: 4.75rem;
    font-size: 1.6rem;
    font-weight: 700;
  }
  @media (hover: none) {
    .keys {
      display: none;
    }
  }
  fieldset {
    margin: calc(var(--gap) * 1.2) 0 0;
    padding: 0;
    border: 0;
    min-width: 0;
  }
  legend {
    padding: 0 0 0.5rem;
    font-weight: 600;
  }
  .minutes button {
    font-weight: 500;
    padding-inline: 0.85rem;
  }
  lark-day-strip {
    margin-top: calc(var(--gap) * 1.4);
  }
  .as-file {
    margin-top: var(--gap);
  }
  .full {
    position: fixed;
    inset: 0;
    z-index: 10;
    background: var(--ground);
  }
  .full > * {
    height: 100%;
  }
  .scrolls {
    overflow-y: auto;
  }
  .scrolls > * {
    height: auto;
    min-height: 100%;
  }
`;

import { css } from 'lit';

/** Layout of a running drill: the display, and the buttons below it. */
export const drillStyles = css`
  :host {
    display: grid;
    grid-template-rows: minmax(0, 1fr) auto auto;
    height: 100%;
    min-height: 0;
    box-sizing: border-box;
  }
  lark-glance {
    grid-row: 1;
  }
  .waiting {
    grid-row: 1;
    display: grid;
    place-items: center;
  }
  .waiting button {
    min-width: min(80vw, 20rem);
    min-height: 96px;
    font-size: 2rem;
  }
  .question {
    grid-row: 2;
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.8rem;
    padding: 0.6rem 1rem;
    border-top: 3px solid var(--accent);
    background: var(--raised);
  }
  .question p {
    flex: 1 1 14rem;
    margin: 0;
    font-size: 1.2rem;
  }
  .buttons {
    grid-row: 3;
    display: grid;
    grid-template-columns: repeat(6, minmax(0, 1fr));
    gap: 10px;
    padding: 10px;
    padding-bottom: max(10px, env(safe-area-inset-bottom));
  }
  .buttons button {
    grid-column: span 2;
  }
  .buttons button:nth-child(-n + 2) {
    grid-column: span 3;
  }
  @media (min-width: 700px) {
    .buttons {
      grid-template-columns: 2fr 2fr 1fr 1fr 1fr;
    }
    .buttons button,
    .buttons button:nth-child(-n + 2) {
      grid-column: auto;
    }
  }
`;

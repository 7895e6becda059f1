import { css } from 'lit';

/** Layout of a running drill: the display, and the buttons below it. */
export const drillStyles = css`
  :host {
    display: grid;
    grid-template: 'glance' minmax(0, 1fr) 'sight' auto 'mind' auto 'buttons' auto / minmax(0, 1fr);
    height: 100%;
    min-height: 0;
    box-sizing: border-box;
    line-height: 1.2; /* the page around it may have any: what lines don't need, the number has */
  }
  lark-glance {
    grid-area: glance;
  }
  ::slotted(*) {
    grid-area: mind;
    min-width: 0;
  }
  /* A room of its own: over the display it would hide words. */
  ::slotted([slot='sight']) {
    grid-area: sight;
  }
  @media (orientation: landscape) {
    :host {
      grid-template: 'glance sight' minmax(0, 1fr) 'mind mind' auto 'buttons buttons' auto / minmax(0, 1fr) auto;
    }
    ::slotted([slot='sight']) {
      align-self: end;
    }
  }
  .waiting {
    grid-area: buttons;
    display: grid;
    gap: 0.8rem;
    justify-items: center;
    padding: 0.4rem 1rem max(1.2rem, env(safe-area-inset-bottom));
  }
  .waiting ul {
    margin: 0;
    padding: 0;
    list-style: none;
    max-width: 46rem;
    max-height: 30vh;
    overflow: auto;
    text-align: center;
    color: var(--dim);
    font-size: 1.1rem;
    line-height: 1.4;
  }
  .waiting button {
    width: min(100%, 26rem);
    min-height: 88px;
    font-size: 1.9rem;
  }
  .warm-up p {
    margin: 0;
    max-width: 40rem;
    text-align: center;
    font-size: clamp(1.4rem, 5vw, 2.6rem);
    line-height: 1.25;
    overflow-wrap: anywhere;
  }
  .warm-up .row {
    display: grid;
    grid-template-columns: 2fr 1fr;
    gap: 10px;
    width: min(100%, 34rem);
  }
  .warm-up button {
    width: 100%;
    min-height: 72px;
    font-size: 1.4rem;
  }
  .question {
    grid-area: glance;
    align-self: end;
    z-index: 1;
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.8rem;
    max-height: 100%;
    overflow: auto;
    box-sizing: border-box;
    padding: 0.6rem 1rem;
    border-top: 3px solid var(--accent);
    background: var(--raised);
  }
  .question p {
    flex: 1 1 11rem;
    margin: 0;
    font-size: 1.1rem;
  }
  .buttons {
    grid-area: buttons;
    display: grid;
    grid-template-columns: repeat(12, minmax(0, 1fr));
    gap: 10px;
    padding: 10px;
    padding-bottom: max(10px, env(safe-area-inset-bottom));
  }
  .buttons button {
    grid-column: span 3;
    padding-inline: min(0.9rem, 2vw);
    font-size: min(1.1rem, 8.5vw);
    overflow-wrap: anywhere;
  }
  /* Long words, as German has, are set smaller before they are broken. */
  .buttons button:nth-child(n + 3) {
    padding-inline: 2px;
    font-size: clamp(0.72rem, 3.2vw, 1.1rem);
    hyphens: auto;
  }
  .buttons button:nth-child(-n + 2) {
    grid-column: span 6;
  }
  @media (min-width: 700px) {
    .buttons {
      grid-template-columns: 1.6fr 1.6fr 1fr 1fr 1fr 1fr;
    }
    .buttons button,
    .buttons button:nth-child(-n + 2) {
      grid-column: auto;
    }
    .buttons button:nth-child(n + 3) {
      font-size: clamp(0.72rem, 1.9vw, 1.1rem);
    }
  }
`;

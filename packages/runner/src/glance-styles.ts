import { css } from 'lit';

/** Layout of the glance display: bow above words when upright, side by side when wide. */
export const glanceStyles = css`
  :host {
    display: block;
    height: 100%;
    min-height: 0;
    overflow: hidden;
  }
  .face {
    box-sizing: border-box;
    height: 100%;
    padding: 2vmin 4vmin;
    display: grid;
    grid-template: auto minmax(0, 1fr) auto / minmax(0, 1fr);
    gap: 1vmin;
  }
  :host([flipped]) .face {
    transform: scaleX(-1);
  }
  p {
    margin: 0;
  }
  .title {
    color: var(--dim);
    font-size: max(1.1rem, 3vmin);
    min-height: 1.3em;
  }
  .bow {
    position: relative;
    justify-self: center;
    align-self: center;
    aspect-ratio: 900 / 1000;
    width: min(100%, 78vh);
    max-height: 100%;
    container-type: size;
  }
  svg {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    overflow: visible;
  }
  path {
    fill: none;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .limbs {
    fill: var(--dim);
  }
  .grip {
    stroke: var(--ink);
    stroke-width: 40;
  }
  .string {
    stroke: var(--dim);
    stroke-width: 6;
  }
  .fingers {
    fill: var(--dim);
  }
  .draw .string,
  .hold .string {
    stroke: var(--accent);
    stroke-width: 10;
  }
  .draw .fingers,
  .hold .fingers {
    fill: var(--accent);
  }
  .hold .limbs {
    fill: var(--ink);
  }
  .seconds {
    position: absolute;
    top: 50%;
    left: 62%;
    transform: translate(-50%, -50%);
    color: var(--dim);
    font-size: 26vmin;
    font-weight: 700;
    font-variant-numeric: tabular-nums;
    letter-spacing: -0.04em;
    line-height: 1;
  }
  .hold .seconds {
    left: 45%;
    color: var(--ink);
    font-size: 38vmin;
  }
  .hold .seconds.long {
    font-size: 24vmin;
  }
  .draw .seconds,
  .letDown .seconds {
    font-size: 22vmin;
    left: 31%;
  }
  :host([hand='left']) .seconds {
    left: 38%;
  }
  :host([hand='left']) .hold .seconds {
    left: 55%;
  }
  :host([hand='left']) .draw .seconds,
  :host([hand='left']) .letDown .seconds {
    left: 69%;
  }
  .words {
    text-align: center;
    min-width: 0;
  }
  .word {
    font-size: min(16vmin, 10rem);
    letter-spacing: -0.02em;
    white-space: nowrap;
    font-weight: 750;
    line-height: 1.05;
  }
  .next,
  .place,
  .left {
    font-size: max(1.15rem, 3.4vmin);
    line-height: 1.35;
    font-variant-numeric: tabular-nums;
  }
  .next {
    min-height: 1.35em;
  }
  .left {
    color: var(--dim);
  }
  .notice {
    margin-top: 1.2vmin;
    padding: 0.6rem 0.8rem;
    border-left: 6px solid var(--accent);
    background: var(--raised);
    font-size: max(1.05rem, 2.6vmin);
    text-align: left;
  }
  .marks {
    margin: 1.4vmin 0 0.6vmin;
    display: grid;
    gap: 8px;
    justify-items: center;
  }
  .marks span {
    display: flex;
    gap: 6px;
    width: min(100%, 32rem);
  }
  i {
    flex: 1;
    height: 8px;
    border-radius: 4px;
    background: var(--faint);
  }
  .sets i {
    height: 4px;
  }
  i.past {
    background: var(--dim);
  }
  i.now {
    background: var(--ink);
    outline: 2px solid var(--ink);
    outline-offset: 1px;
  }
  @media (orientation: landscape) {
    .face {
      grid-template: auto minmax(0, 1fr) / minmax(0, 3fr) minmax(0, 2fr);
      column-gap: 3vmin;
    }
    .title {
      grid-column: 1 / -1;
    }
    .bow {
      width: min(100%, 92vh);
    }
    .word {
      font-size: min(13vmin, 6.6vw);
    }
    .words {
      align-self: center;
      text-align: left;
    }
    .marks {
      justify-items: start;
    }
  }
`;

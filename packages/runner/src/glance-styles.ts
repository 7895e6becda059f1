import { css } from 'lit';

/** Layout of the glance display: bow above words when upright, side by side when wide. */
export const glanceStyles = css`
  :host {
    display: block;
    height: 100%;
    min-height: 0;
    overflow: hidden auto; /* with enlarged text and a long notice there may be more than fits */
    container-type: size;
    position: relative;
  }
  .edge {
    position: absolute;
    inset: 0;
    z-index: 1;
    border: max(10px, 2.6cqmin) solid var(--ink);
    opacity: 0;
    pointer-events: none;
  }
  .face {
    box-sizing: border-box;
    min-height: 100%;
    height: 100%;
    padding: 2cqmin 4cqmin;
    display: grid;
    grid-template: auto minmax(34cqmin, 1fr) auto / minmax(0, 1fr);
    gap: 1.5cqmin;
  }
  :host([flipped]) .face {
    transform: scaleX(-1);
  }
  p {
    margin: 0;
  }
  .title {
    color: var(--dim);
    font-size: max(1.1rem, 2.6cqmin);
    min-height: 1.3em;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .bow {
    position: relative;
    min-height: 0;
  }
  svg {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  .limbs,
  .grip {
    fill: var(--dim);
  }
  .string,
  .lit {
    fill: none;
    stroke: var(--dim);
    stroke-width: 4;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .lit {
    stroke-width: 9;
  }
  .fingers {
    fill: var(--dim);
  }
  .ready .lit,
  .letDown .lit,
  .paused .lit,
  .waiting .lit,
  .done .lit,
  .stopped .lit {
    stroke: none;
  }
  .draw .limbs,
  .draw .grip,
  .hold .limbs,
  .hold .grip {
    fill: var(--ink);
  }
  .draw .lit,
  .hold .lit {
    stroke: var(--accent);
    stroke-width: 12;
  }
  .draw .fingers,
  .hold .fingers {
    fill: var(--accent);
  }
  .seconds {
    fill: var(--dim);
    stroke: var(--ground);
    stroke-width: 26px;
    stroke-linejoin: round;
    paint-order: stroke;
    font-weight: 700;
    font-variant-numeric: tabular-nums;
    letter-spacing: -0.03em;
  }
  .hold .seconds,
  .bars {
    fill: var(--ink);
  }
  .words {
    text-align: center;
    min-width: 0;
  }
  .word {
    font-size: min(16cqw, 9rem);
    font-weight: 700;
    letter-spacing: -0.02em;
    line-height: 1.05;
    white-space: nowrap;
  }
  .rest .word,
  .setRest .word {
    color: var(--dim);
  }
  .hand,
  .next {
    font-size: max(1.2rem, 7cqw);
    line-height: 1.2;
  }
  .place,
  .left {
    font-size: max(1.2rem, 5cqw);
    line-height: 1.3;
    font-variant-numeric: tabular-nums;
  }
  .hand {
    font-weight: 700;
  }
  .call {
    min-height: 1.15em;
    font-size: min(8.5cqw, 4.5rem);
    font-weight: 700;
    line-height: 1.15;
    overflow-wrap: anywhere;
  }
  .next {
    min-height: 1.2em;
  }
  .left {
    color: var(--dim);
  }
  .notice {
    margin-top: 1.2cqmin;
    padding: 0.6rem 0.8rem;
    border-left: 6px solid var(--accent);
    background: var(--raised);
    font-size: max(1.05rem, 2.6cqmin);
    text-align: left;
  }
  .marks {
    margin: 2cqmin 0 1.4cqmin;
    display: grid;
    gap: 10px;
    justify-items: center;
  }
  .marks span {
    display: flex;
    align-items: center;
    gap: 6px;
    width: min(100%, 32rem);
    height: 14px;
  }
  .marks .sets {
    height: 5px;
  }
  i {
    flex: 1;
    height: 6px;
    border-radius: 3px;
    background: var(--faint);
  }
  i.past {
    background: var(--dim);
  }
  i.now {
    height: 14px;
    background: var(--ink);
  }
  .sets i,
  .sets i.now {
    height: 5px;
  }
  @media (forced-colors: active) {
    i {
      forced-color-adjust: none;
    }
  }
  @media (orientation: landscape) {
    .face {
      grid-template: auto minmax(0, 1fr) / minmax(0, 6fr) minmax(0, 5fr);
      column-gap: 4cqmin;
    }
    .title {
      grid-column: 1 / -1;
    }
    .words {
      align-self: center;
      max-height: 100%;
      overflow-y: auto;
      text-align: left;
    }
    .word {
      font-size: min(7.6cqw, 22cqh);
    }
    .hand,
    .next {
      font-size: max(1.2rem, min(3.4cqw, 9cqh));
    }
    .place,
    .left {
      font-size: max(1.2rem, min(2.4cqw, 6.5cqh));
    }
    .call {
      font-size: min(4.4cqw, 11cqh);
    }
    .marks {
      justify-items: start;
      margin: 3cqmin 0 2cqmin;
    }
  }
`;

import { css, unsafeCSS } from 'lit';

/** Words of more signs than these wrap or are no larger than the page's text. */
export const MOST_SIGNS = 48;

/** `data-signs` as a number that a size can be worked out from. */
const signs = unsafeCSS(
  Array.from({ length: MOST_SIGNS + 1 }, (_, count) => `[data-signs='${count}']{--signs:${count}}`).join(''),
);

/** The number stands before the bow, which is an outline behind it. */
const numberFirst = css`
  svg .seconds,
  .title {
    display: none;
  }
  .hold .digits {
    color: var(--ink);
  }
  svg {
    opacity: 0.35;
  }
`;

/** Layout of the glance display: bow above words when upright, side by side when wide. */
export const glanceStyles = css`
  ${signs}
  :host {
    --least: 0px;
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
  /* Every line as large as its own signs allow across the screen: what is read at three metres needs all of it. */
  .word,
  .count,
  .digits {
    font-weight: 700;
    letter-spacing: -0.02em;
    line-height: 1.05;
    white-space: nowrap;
    font-variant-numeric: tabular-nums;
  }
  .word {
    font-size: min(92cqw / (var(--signs) * 0.68), clamp(12cqh, var(--least), 18cqh), 20rem);
  }
  .count {
    font-size: min(92cqw / (var(--signs) * 0.66), clamp(8cqh, var(--least), 14cqh), 16rem);
  }
  .digits {
    display: none;
    position: absolute;
    inset: 0;
    align-items: center;
    justify-content: center;
    font-size: min(92cqw / (var(--signs) * 0.7), 44cqh);
  }
  .rest .word,
  .setRest .word {
    color: var(--dim);
  }
  .hand {
    font-size: max(1.2rem, 7cqw);
    line-height: 1.2;
  }
  .next {
    font-size: max(1.05rem, 2.6cqmin);
    line-height: 1.15;
    font-variant-numeric: tabular-nums;
  }
  .lead {
    color: var(--dim);
  }
  .what {
    display: block;
    font-size: max(1.15rem, min(92cqw / (var(--signs) * 0.56), clamp(5cqh, var(--least), 9.5cqh), 10rem));
  }
  .place,
  .left {
    font-size: max(1.05rem, 2.6cqmin);
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
  lark-hold-ribbon {
    height: clamp(1.7rem, 5.4cqh, 6rem);
    margin: 0.8cqmin auto;
    max-width: 46rem;
  }
  .small {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.2em;
    justify-content: center;
  }
  /* A small screen: the number before the bow, which stands behind it as an outline. */
  @container (max-height: 25rem) {
    .face {
      grid-template-rows: minmax(44cqh, 1fr) auto;
    }
    .digits {
      display: flex;
    }
    ${numberFirst}
    .left {
      display: none;
    }
    .word {
      font-size: min(92cqw / (var(--signs) * 0.68), 19cqh);
    }
    .count {
      font-size: min(92cqw / (var(--signs) * 0.66), 12cqh);
    }
  }
  /* A little more height: the number still first, with less of it, so that the words keep their size. */
  @container (min-height: 25.01rem) and (max-height: 31rem) {
    .face {
      grid-template-rows: minmax(30cqh, 1fr) auto;
    }
    .digits {
      display: flex;
      font-size: min(92cqw / (var(--signs) * 0.7), 32cqh);
    }
    ${numberFirst}
  }
  /* The number first, also on a taller screen. */
  :host([layout='numbers']) {
    .face {
      grid-template-rows: minmax(38cqh, 1fr) auto;
    }
    .digits {
      display: flex;
    }
    ${numberFirst}
  }
  @media (orientation: landscape) {
    .face {
      grid-template: auto minmax(0, 1fr) / minmax(0, 1fr) minmax(0, 1fr);
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
      font-size: min(45cqw / (var(--signs) * 0.68), 26cqh);
    }
    .count {
      font-size: min(45cqw / (var(--signs) * 0.66), 20cqh);
    }
    .digits {
      font-size: min(46cqw / (var(--signs) * 0.7), 74cqh);
    }
    .small {
      justify-content: start;
    }
    lark-hold-ribbon {
      margin-inline: 0;
    }
    .hand {
      font-size: max(1.2rem, min(3.4cqw, 9cqh));
    }
    .what {
      font-size: max(1.15rem, min(45cqw / (var(--signs) * 0.56), clamp(8cqh, var(--least), 16cqh)));
    }
    .call {
      font-size: min(4.4cqw, 11cqh);
    }
  }
`;

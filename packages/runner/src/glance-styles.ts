import { css, unsafeCSS } from 'lit';
import { NARROWEST_LETTERS } from './narrowed-letters.ts';

const NARROWEST_RATIO = unsafeCSS(NARROWEST_LETTERS);

/** Layout of the glance display: bow above words when upright, side by side when wide. */
export const glanceStyles = css`
  :host {
    --least: 0px;
    --wide: 96cqw;
    --digits-em: 1.4;
    --word-em: 3;
    --word-narrow: 1;
    --what-narrow: 1;
    --count-em: 3;
    --what-em: 6;
    --two-em: 6;
    display: block;
    height: 100%;
    min-height: 0;
    overflow: hidden auto; /* with enlarged text and a long notice there may be more than fits */
    container: glance / size;
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
    padding: 2cqmin 2cqw;
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
    container: bow / size;
    contain: layout paint; /* nothing that moves in it makes the page be laid out */
    overflow: clip;
    grid-row: 2;
  }
  .title {
    grid-row: 1;
  }
  .words {
    grid-row: 3;
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
  .instead {
    display: none;
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
    /* Its signs are laid out once and then only scaled: otherwise Chromium takes another font for each scale. */
    text-rendering: geometricPrecision;
  }
  .hold .seconds,
  .bars {
    fill: var(--ink);
  }
  .words {
    /* As wide as its place, or larger and narrowed (narrowed-letters.ts) where the archer could not read it otherwise. */
    --word-fits: max(
      var(--wide) / var(--word-em),
      min(var(--wide) / (var(--word-em) * ${NARROWEST_RATIO}), var(--least))
    );
    --what-fits: max(
      var(--wide) / var(--what-em),
      min(var(--wide) / (var(--what-em) * ${NARROWEST_RATIO}), var(--least))
    );
    text-align: center;
    min-width: 0;
  }
  /* What is narrowed takes no more room than is seen of it. */
  .narrowed {
    display: inline-block;
    transform: scaleX(var(--narrow));
    margin-inline: calc(var(--em) * 0.5em * (var(--narrow) - 1));
  }
  .word .narrowed {
    --em: var(--word-em);
    --narrow: var(--word-narrow);
  }
  .what .narrowed {
    --em: var(--what-em);
    --narrow: var(--what-narrow);
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
    font-size: min(var(--word-fits), clamp(12cqh, var(--least), 18cqh), 20rem);
  }
  .count {
    font-size: min(var(--wide) / var(--count-em), clamp(8cqh, var(--least), 14cqh), 16rem);
  }
  .digits {
    display: none;
    position: absolute;
    inset: 0;
    align-items: center;
    justify-content: center;
    color: var(--dim);
    /* Its own place is measured: a digit is 0.73 of the font high, so that it fills nearly all of it. */
    font-size: min(96cqw / var(--digits-em), 122cqh);
    line-height: 1;
    -webkit-text-stroke: 0.05em var(--ground);
    paint-order: stroke fill;
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
    font-size: max(1.15rem, min(var(--what-fits), clamp(5cqh, var(--least), 9.5cqh), 10rem));
    letter-spacing: -0.02em;
    text-wrap: balance;
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
    height: clamp(1.7rem, 8.5cqh, 6rem);
    margin: 0.8cqmin auto;
    max-width: 46rem;
  }
  .small {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.2em;
    justify-content: center;
  }
`;

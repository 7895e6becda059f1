import { css } from 'lit';

/** Colours of a ribbon. Shape says what a stroke is; brightness only sets apart what is under way. */
export const ribbonStyles = css`
  :host {
    display: block;
    --ink-here: var(--ribbon-ink, var(--ink, currentColor));
    --mark-here: var(--ribbon-mark, var(--accent, currentColor));
  }
  svg {
    display: block;
    /* A few strokes stay as large as many do, and many shrink to the room there is. */
    max-width: 100%;
    height: auto;
    overflow: visible;
  }
  :host([fills]) svg {
    height: 100%;
    margin-inline: var(--ribbon-beside, auto);
  }
  [role='slider'] {
    min-height: 3rem;
    padding: 0.3rem 0;
    cursor: pointer;
    touch-action: manipulation;
  }
  [role='slider']:focus-visible {
    outline: 3px solid var(--mark-here);
    outline-offset: 3px;
    border-radius: 4px;
  }
  path {
    fill: none;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .full {
    fill: var(--ink-here);
  }
  .ground {
    stroke: var(--faint, currentColor);
    stroke-width: 1.2;
  }
  .coming {
    stroke: var(--dim, currentColor);
    stroke-width: 2.4;
  }
  .missing {
    stroke: var(--ink-here);
    stroke-width: 1.1;
    stroke-dasharray: 2 2.6;
  }
  .hollow {
    stroke: var(--ink-here);
    stroke-width: 1.2;
    stroke-dasharray: 2.6 2;
  }
  .marks {
    stroke: var(--ink-here);
    stroke-width: 1.5;
  }
  .asked {
    stroke: var(--dim, currentColor);
    stroke-width: 0.9;
  }
  .now {
    fill: var(--mark-here);
  }
  .picked {
    stroke: var(--mark-here);
    stroke-width: 2.6;
  }
  @media (forced-colors: active) {
    .full,
    .now {
      fill: CanvasText;
    }
    .ground,
    .missing,
    .hollow,
    .marks,
    .asked,
    .coming {
      stroke: CanvasText;
    }
    .picked {
      stroke: Highlight;
    }
  }
  @media print {
    .full {
      fill: #000;
    }
    .missing,
    .hollow,
    .marks {
      stroke: #000;
    }
  }
`;

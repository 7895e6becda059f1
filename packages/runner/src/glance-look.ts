import { css } from 'lit';

/** Colours of the display: brightness carries meaning, one warm accent. Shared by the runner's elements. */
export const lookStyles = css`
  :host {
    --ground: #0e0d0b;
    --ink: #f4efe6;
    --dim: #aaa294;
    --faint: #39352e;
    --accent: #f2a541;
    --on-accent: #16110a;
    --raised: #1c1a16;
    color-scheme: dark;
  }
  :host([theme='light']) {
    --ground: #f6f1e7;
    --ink: #1d1a15;
    --dim: #5f584c;
    --faint: #d5ccbb;
    --accent: #a8450c;
    --on-accent: #fffaf0;
    --raised: #fffbf2;
    color-scheme: light;
  }
  @media (prefers-color-scheme: light) {
    :host([theme='system']) {
      --ground: #f6f1e7;
      --ink: #1d1a15;
      --dim: #5f584c;
      --faint: #d5ccbb;
      --accent: #a8450c;
      --on-accent: #fffaf0;
      --raised: #fffbf2;
      color-scheme: light;
    }
  }
  :host([theme='contrast']) {
    --ground: #000;
    --ink: #fff;
    --dim: #fff;
    --faint: #777;
    --accent: #ffc14d;
    --on-accent: #000;
    --raised: #000;
  }
  @media (forced-colors: active) {
    :host,
    :host([theme]) {
      --ground: Canvas;
      --ink: CanvasText;
      --dim: CanvasText;
      --faint: GrayText;
      --accent: Highlight;
      --on-accent: HighlightText;
      --raised: Canvas;
    }
  }
  :host {
    background: var(--ground);
    color: var(--ink);
    font-family: system-ui, sans-serif;
  }
`;

/** Buttons of the runner: large enough for a hand that wears a tab. */
export const buttonStyles = css`
  button {
    min-height: 64px;
    min-width: 64px;
    padding: 0.4rem 0.9rem;
    border: 2px solid var(--faint);
    border-radius: 12px;
    background: var(--raised);
    color: var(--ink);
    font: inherit;
    font-size: 1.1rem;
    font-weight: 600;
    touch-action: manipulation;
    cursor: pointer;
  }
  button:disabled {
    color: var(--dim);
    opacity: 0.55;
    cursor: default;
  }
  button.main {
    border-color: var(--accent);
    background: var(--accent);
    color: var(--on-accent);
  }
  @media (forced-colors: active) {
    button.main {
      forced-color-adjust: none;
    }
  }
  button:focus-visible,
  textarea:focus-visible,
  input:focus-visible {
    outline: 3px solid var(--ink);
    outline-offset: 2px;
  }
`;

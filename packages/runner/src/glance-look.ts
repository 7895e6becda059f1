import { css } from 'lit';

/** The light colours: chosen, or the system's choice. */
const light = css`
  --ground: var(--lark-ground, #f6f1e7);
  --ink: var(--lark-ink, #1d1a15);
  --dim: var(--lark-dim, #5c5549);
  --faint: var(--lark-faint, #cfc5b3);
  --accent: var(--lark-accent, #96500a);
  --on-accent: var(--lark-on-accent, #fffaf0);
  --raised: var(--lark-raised, #fffbf2);
  color-scheme: light;
`;

/**
 * Colours of the display: brightness carries meaning, one warm accent. Shared by the runner's elements. A page sets its own by `--lark-…`, which
 * pass through every shadow root; forced colours come before them. The values are those of `tokens.css` in ui: the elements are used in other pages without it.
 */
export const lookStyles = css`
  :host {
    --ground: var(--lark-ground, #0e0d0b);
    --ink: var(--lark-ink, #f4efe6);
    --dim: var(--lark-dim, #b3ab9c);
    --faint: var(--lark-faint, #39352e);
    --accent: var(--lark-accent, #f2a541);
    --on-accent: var(--lark-on-accent, #16110a);
    --raised: var(--lark-raised, #191713);
    color-scheme: dark;
  }
  :host([theme='light']) {
    ${light}
  }
  @media (prefers-color-scheme: light) {
    :host([theme='system']) {
      ${light}
    }
  }
  :host([theme='contrast']) {
    --ground: var(--lark-ground, #000);
    --ink: var(--lark-ink, #fff);
    --dim: var(--lark-dim, #fff);
    --faint: var(--lark-faint, #8a8a8a);
    --accent: var(--lark-accent, #ffc14d);
    --on-accent: var(--lark-on-accent, #000);
    --raised: var(--lark-raised, #000);
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
    font-family: var(--lark-font, system-ui, sans-serif);
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

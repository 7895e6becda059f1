import { css } from 'lit';

/** The shell: navigation below on a phone, at the side on a wide screen. */
export const appStyles = css`
  :host {
    min-height: 100dvh;
    /* Room that the navigation takes at the foot of the screen. */
    --nav: min(4.1rem, 18vh);
    --foot: calc(var(--nav) + 4px + env(safe-area-inset-bottom));
  }
  .skip {
    position: absolute;
    left: 1rem;
    top: -5rem;
    z-index: 3;
    background: var(--ground);
  }
  .skip:focus {
    top: 1rem;
  }
  [hidden] {
    display: none;
  }
  main {
    width: 100%;
    max-width: calc(var(--page) + 2 * var(--gap));
    margin: 0 auto;
    padding: calc(var(--gap) * 1.2) var(--gap) calc(var(--foot) + 1.5rem);
  }
  /* Places with two columns take the width there is. */
  @media (min-width: 68rem) {
    main:has(> lark-line, > lark-journal, > week-page, > plan-page, > bench-page, > lark-kit, > files-page, > trends-page, > coach-page) {
      --page: 74rem;
    }
  }
  main:has(> lark-line) {
    padding-bottom: var(--foot);
  }
  main:focus {
    outline: none;
  }
  nav {
    position: fixed;
    inset: auto 0 0;
    z-index: 2;
    container-type: inline-size;
    border-top: 1px solid var(--rule);
    background: var(--ground);
    padding-bottom: env(safe-area-inset-bottom);
  }
  nav ul {
    display: grid;
    grid-template-columns: repeat(4, 1fr);
    max-width: 34rem;
    margin: 0 auto;
  }
  nav a {
    display: grid;
    justify-items: center;
    align-content: center;
    gap: 0.15rem;
    min-height: var(--nav);
    border-top: 3px solid transparent;
    color: var(--dim);
    font-size: clamp(0.74rem, 3.3vw, 0.875rem); /* the longest name in German has room at 360 px */
    text-decoration: none;
  }
  nav a[aria-current] {
    border-top-color: var(--accent);
    color: var(--ink);
    font-weight: 650;
  }
  nav svg {
    width: 1.6rem;
    height: 1.6rem;
    fill: none;
    stroke: currentColor;
    stroke-width: 1.8;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  nav a:focus-visible {
    outline-offset: -4px;
  }
  /* With large text on a small screen the drawings alone say where they lead; a screen reader hears the words. */
  @container (max-width: 15rem) {
    nav a {
      font-size: 0;
    }
    nav svg {
      width: 1.5rem;
      height: 1.5rem;
    }
  }
  .name {
    display: none;
  }
  .banner {
    display: flex;
    flex-wrap: wrap;
    gap: 0.8rem 1.2rem;
    align-items: center;
    margin-bottom: var(--gap);
  }
  .banner p {
    flex: 1 1 16rem;
  }
  @media (min-width: 60rem) {
    nav {
      inset: 0 auto 0 0;
      width: 12.5rem;
      padding: 2.2rem 0 0;
      border-top: 0;
      border-right: 1px solid var(--rule);
    }
    :host {
      --foot: 0px;
    }
    .name {
      display: block;
      padding: 0 1.5rem 1.6rem;
      font-weight: 700;
      letter-spacing: 0.01em;
    }
    nav ul {
      grid-template-columns: 1fr;
    }
    nav a {
      grid-template-columns: auto 1fr;
      justify-items: start;
      align-items: center;
      gap: 0.9rem;
      min-height: 3.4rem;
      padding: 0 1.5rem 0 1.3rem;
      border-top: 0;
      border-left: 3px solid transparent;
      font-size: var(--text);
    }
    nav a[aria-current] {
      border-left-color: var(--accent);
    }
    main {
      width: auto; /* or the margin would push it past the right edge */
      margin-left: max(12.5rem, calc((100vw - 12.5rem - var(--page)) / 2 + 4rem));
      margin-right: 0;
      padding-top: 2.4rem;
      padding-bottom: 4rem;
    }
  }
  /* A phone on its side: the navigation is at the side, so that the page has the height. */
  @media (max-height: 30rem) and (min-width: 40rem) and (max-width: 59.99rem) {
    :host {
      --foot: 0px;
    }
    nav {
      inset: 0 auto 0 0;
      width: calc(5rem + env(safe-area-inset-left));
      padding: 0 0 0 env(safe-area-inset-left);
      border-top: 0;
      border-right: 1px solid var(--rule);
      overflow-y: auto;
    }
    nav ul {
      grid-template-columns: 1fr;
      grid-auto-rows: 1fr;
      min-height: 100%;
    }
    nav a {
      min-height: min(3.4rem, 24.5vh); /* all four in sight, with large text too */
      height: 100%;
      border-top: 0;
      border-left: 3px solid transparent;
    }
    nav a[aria-current] {
      border-left-color: var(--accent);
    }
    main {
      width: auto;
      margin-left: calc(5rem + env(safe-area-inset-left));
      padding-top: 0.8rem;
    }
    main:not(:has(> lark-line)) {
      padding-bottom: 2rem;
    }
  }
  @media (forced-colors: active) {
    nav a:not([aria-current]) {
      border-color: Canvas;
    }
  }
  @media print {
    .skip,
    nav,
    .banner {
      display: none;
    }
    :host {
      min-height: 0;
    }
    main {
      max-width: none;
      margin: 0;
      padding: 0;
    }
  }
`;

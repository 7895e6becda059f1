import { css } from 'lit';

/** Two small choices side by side: each a fold that says what is chosen, and takes the whole row when it is open. */
export const choiceStyles = css`
  details {
    border: 1.5px solid var(--faint);
    border-radius: var(--radius);
    padding: 0 0.7rem;
  }
  details summary {
    gap: 0.5rem;
    padding: 0.35rem 0;
    min-height: var(--touch);
    font-weight: 600;
    line-height: 1.2;
  }
  details summary .dim {
    font-weight: 400;
  }
  details[open] {
    padding-bottom: 0.9rem;
  }
  details button {
    padding-inline: 0.85rem;
    font-weight: 500;
  }
  @media (max-height: 30rem) {
    details summary::before {
      display: none;
    }
  }
`;

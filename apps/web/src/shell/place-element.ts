import { controlStyles, pageStyles } from '@larkhold/ui';
import { consume } from '@lit/context';
import { LitElement } from 'lit';
import { property } from 'lit/decorators.js';
import { type App, appContext } from './app-context.ts';

/** What every place and every part of one has: the app as it stands, and the look of a page. */
export class PlaceElement extends LitElement {
  static override styles = [pageStyles, controlStyles];

  @consume({ context: appContext, subscribe: true })
  @property({ attribute: false })
  app: App | undefined;
}

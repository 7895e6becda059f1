import type { Words } from '@larkhold/words';
import type { Plugin } from 'vite';

/** Markup in a sentence of the page, by the name of its parameter. */
const markup = {
  folder: () => '<code>dist/bundle</code>',
  package: () => '<code>@larkhold/runner</code>',
  program: ({ say }: Words) => linkTo('./schemas/program.schema.json', say('about.program')),
  season: ({ say }: Words) => linkTo('./schemas/season.schema.json', say('about.season')),
  journal: ({ say }: Words) => linkTo('./schemas/journal.schema.json', say('about.journal')),
  handOver: ({ say }: Words) => linkTo('./schemas/hand-over.schema.json', say('about.handOver')),
  backup: ({ say }: Words) => linkTo('./schemas/backup.schema.json', say('about.backup')),
  licences: ({ say }: Words) => linkTo('./licences.txt', say('about.licences')),
};

/** Fills the page that says what Larkhold is, once for each language: English is `about.html`, another one `about.xx.html`. */
export const aboutPage: Plugin = {
  name: 'larkhold-about-page',
  enforce: 'post', // the page has been built by then
  async generateBundle(_, bundle) {
    const built = bundle['about.html'];
    if (built?.type !== 'asset') throw new Error('about.html has not been built');
    const template = String(built.source);
    for (const { fileName, source } of await pagesOf(template)) {
      if (fileName === built.fileName) built.source = source;
      else this.emitFile({ type: 'asset', fileName, source });
    }
  },
  async transformIndexHtml(html, { path, server }) {
    return server && path === '/about.html' ? (await pagesOf(html))[0]?.source : html;
  },
};

async function pagesOf(template: string): Promise<{ fileName: string; source: string }[]> {
  // Here and not above: whoever serves what is built can read this file without the packages being built.
  const { createWords, languageTags } = await import('@larkhold/words');
  const all = languageTags.map((tag) => createWords(tag));
  return all.map((words) => ({ fileName: pageOf(words), source: filled(template, words, all) }));
}

const pageOf = ({ language }: Words): string => (language === 'en' ? 'about.html' : `about.${language}.html`);
const linkTo = (href: string, text: string): string => `<a href="${href}">${escaped(text)}</a>`;
const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** The page in one language. */
function filled(html: string, words: Words, all: readonly Words[]): string {
  const others = all.filter(({ language }) => language !== words.language);
  const pieces = Object.fromEntries(Object.entries(markup).map(([name, make]) => [name, { html: make(words) }]));
  const say = (key: string): string =>
    words
      .pieces(key as 'about.schemas', pieces as never)
      .map((piece) => (typeof piece === 'string' ? escaped(piece) : (piece as { html: string }).html))
      .join('');
  return html
    .replace('<!-- in other languages -->', () =>
      others.map((one) => `<link rel="alternate" hreflang="${one.language}" href="./${pageOf(one)}" />`).join('\n    '),
    )
    .replace('<!-- links to other languages -->', () =>
      others
        .map(
          (one) =>
            `<p><a href="./${pageOf(one)}" hreflang="${one.language}" lang="${one.language}">${escaped(one.say('about.thisPage'))}</a></p>`,
        )
        .join('\n      '),
    )
    .replace('<html lang="en">', `<html lang="${words.language}">`)
    .replace(/\{(about\.\w+)\}/g, (_, key: string) => say(key));
}

import type { Plugin } from 'vite';

/** Where each language's texts are built from. */
const sources = { en: '/words/src/en/english.ts', de: '/words/src/de/german.ts' };

/** Tells the page's first script which built file holds which language, so that the right one is fetched along with the rest. */
export const languageParts: Plugin = {
  name: 'larkhold-language-parts',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler(html, { bundle = {} }) {
      const chunks = Object.values(bundle).filter((one) => one.type === 'chunk');
      const attributes = Object.entries(sources).map(([language, source]) => {
        const part = chunks.find(({ facadeModuleId }) => facadeModuleId?.endsWith(source));
        if (!part) throw new Error(`no part of its own holds ${source}`);
        return ` data-${language}="./${part.fileName}"`;
      });
      return html.replace('<script src="./first-language.js"', `$&${attributes.join('')}`);
    },
  },
};

import type { Plugin } from 'vite';

/** Where a language's texts are built from. */
const source = /\/words\/src\/(\w+)\/\w+\.ts$/;

/** Tells the page's first script which built file holds which language, so that the right one is fetched along with the rest. */
export const languageParts: Plugin = {
  name: 'larkhold-language-parts',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler(html, { bundle = {} }) {
      const attributes = Object.values(bundle).flatMap((part) => {
        const language = part.type === 'chunk' && part.isDynamicEntry && source.exec(part.facadeModuleId ?? '')?.[1];
        return language ? [` data-${language}="./${part.fileName}"`] : [];
      });
      if (attributes.length === 0) throw new Error('no part of its own holds the texts of a language');
      return html.replace('<script src="./first-language.js"', `$&${attributes.join('')}`);
    },
  },
};

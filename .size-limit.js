import { readFileSync } from 'node:fs';

/** What a page loads before anything can be seen: its scripts and style sheets, and the texts of the longer language. */
function firstLoad(page) {
  const text = readFileSync(new URL(`apps/web/dist/${page}`, import.meta.url), 'utf8');
  const files = [...text.matchAll(/(?:src|href)="\.?\/?(assets\/[^"]+\.(?:js|css))"/g)].map(
    ([, file]) => `apps/web/dist/${file}`,
  );
  return [...files, 'apps/web/dist/assets/german-*.js'];
}

/** Sizes as they travel (gzip), a tenth above what they are: what outgrows them was looked at, and the limit raised by hand. */
export default [
  { name: 'the app, before its first picture', path: firstLoad('index.html'), limit: '370 kB', gzip: true },
  {
    name: 'the app, whole, without the camera',
    path: ['apps/web/dist/assets/*.{js,css}', '!apps/web/dist/assets/*sight*'],
    limit: '640 kB',
    gzip: true,
  },
  { name: 'the camera, when it is asked for', path: 'apps/web/dist/assets/*sight*.js', limit: '165 kB', gzip: true },
  // It loads the same two files as the app, of which it needs the most: few files count for more than 28 kB.
  { name: 'the page about Larkhold', path: firstLoad('about.html'), limit: '265 kB', gzip: true },
  {
    name: 'the runner for a page of one’s own',
    path: ['packages/runner/dist/bundle/larkhold-runner.js', 'packages/runner/dist/bundle/assets/german-*.js'],
    limit: '250 kB',
    gzip: true,
  },
];

// Everything from a bare clone to a served app: install, build, serve, print the address.
import { fail, requireNode, requirePackages, root, run, say } from './prepare.mjs';

requireNode();
requirePackages();
say('building …');
if (!run('npm', ['run', '--silent', 'build'])) fail('the build failed: its own words are above.');

const port = Number(process.env.PORT ?? 4173);
const { preview } = await import('vite');
const server = await preview({
  root: `${root}apps/web`,
  preview: { port, host: process.env.HOST ?? 'localhost' },
}).catch((error) => fail(`could not serve on port ${port}: ${error.message}. Set PORT to another.`));
say(`ready at ${server.resolvedUrls?.local[0] ?? `http://localhost:${port}/`}  (Ctrl+C ends)`);

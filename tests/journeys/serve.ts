import { fileURLToPath } from 'node:url';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    address: string;
  }
}

/** Serves the built app once for all journeys, as `npm start` does, on a free port. `LARKHOLD_BUILT` names another folder of a built app. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
  const root = fileURLToPath(new URL('../../apps/web', import.meta.url));
  const outDir = process.env.LARKHOLD_BUILT ?? 'dist';
  const server = await preview({ root, logLevel: 'warn', build: { outDir }, preview: { port: 0, host: '127.0.0.1' } });
  const address = server.resolvedUrls?.local[0];
  if (!address) throw new Error('the built app could not be served: run `npm run build` first');
  project.provide('address', address);
  return () => server.close();
}

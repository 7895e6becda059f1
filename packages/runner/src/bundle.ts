// Everything a page without a bundler needs, in one file: the elements, and the engine that prescribes.
export * from '@larkhold/engine';
export * from './index.ts';

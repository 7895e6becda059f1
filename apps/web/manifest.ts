import type { ManifestOptions } from 'vite-plugin-pwa';

/** Opens a program file with the app where a system lets an installed app do so. */
interface FileHandler {
  action: string;
  accept: Record<string, string[]>;
}

/** What an installed app is called, looks like and opens. */
export const manifest: Partial<ManifestOptions> & { file_handlers: FileHandler[] } = {
  id: './',
  name: 'Larkhold',
  short_name: 'Larkhold',
  description: 'Draw-and-hold training at home for target archers.',
  lang: 'en',
  start_url: './#/line',
  scope: './',
  display: 'standalone',
  background_color: '#0e0d0b',
  theme_color: '#0e0d0b',
  categories: ['sports', 'health'],
  icons: [
    { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
    { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
    { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
    { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
  file_handlers: [{ action: './#/rack', accept: { 'application/json': ['.drill.json', '.json'] } }],
};

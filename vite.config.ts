import { readdirSync } from 'node:fs';
import preact from '@preact/preset-vite';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** The dev server injects inline styles and a reload socket, which the page's own policy rightly blocks. */
const noPolicyInDev = (): Plugin => ({
  name: 'soundline:no-policy-in-dev',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
});

/** Languages whose voice is stored only where it is chosen; English stands in for all of them, so everybody has it. */
const CHOSEN_VOICES = readdirSync(new URL('src/languages', import.meta.url), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'en')
  .map((entry) => `voice/${entry.name}-*.mp3`);
/** Named in src/offline/keepVoice.ts too. */
const CHOSEN_VOICE_CACHE = 'soundline-voice';

/**
 * Everything that the page needs is stored by the first visit, the voice included. A new worker waits until the runner
 * takes it: it must not change the page in the middle of a race.
 */
const offline = () =>
  VitePWA({
    registerType: 'prompt',
    injectRegister: null,
    manifest: {
      id: '/',
      name: 'Soundline',
      short_name: 'Soundline',
      description: 'A voice in the ear of a runner who races by the clock.',
      lang: 'en',
      start_url: '/',
      display: 'standalone',
      theme_color: '#0a1018',
      background_color: '#000000',
      categories: ['sports', 'fitness'],
      icons: [
        { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
        { src: '/icon-512.png', sizes: '512x512', type: 'image/png' },
        { src: '/icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
      ],
    },
    workbox: {
      globPatterns: ['**/*.{html,js,css,svg,png,mp3,json}'],
      // A loud voice is stored where it is chosen; pictures are for the README.
      globIgnores: ['voice/*-loud-*.mp3', ...CHOSEN_VOICES, 'pictures/**'],
      // Their names hold a hash: what is stored under a name never changes.
      runtimeCaching: [
        {
          urlPattern: /\/voice\/[^/]+-[0-9a-f]{8}\.mp3$/,
          handler: 'CacheFirst',
          options: { cacheName: CHOSEN_VOICE_CACHE },
        },
      ],
      maximumFileSizeToCacheInBytes: 8_000_000,
      inlineWorkboxRuntime: true,
      sourcemap: false,
      navigateFallback: '/index.html',
      skipWaiting: false,
      clientsClaim: false,
      cleanupOutdatedCaches: true,
    },
  });

/** What a header can say and a meta element cannot. The content policy itself stands in index.html, so that every host has it. */
const headers = {
  'Content-Security-Policy': "frame-ancestors 'none'",
  'Permissions-Policy':
    'geolocation=(self), screen-wake-lock=(self), accelerometer=(self), camera=(self), microphone=()',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
};

export default defineConfig({
  plugins: [preact(), noPolicyInDev(), offline()],
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    // The notices of the packages in it, which their licences want beside every copy.
    license: { fileName: 'licences.md' },
    // What a race needs is one file; the screens of the days around it come when they are opened. Left alone, what both
    // use stands in ten small ones, each of which the first picture waits for.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } } },
  },
  preview: { port: 4173, strictPort: false, headers },
});

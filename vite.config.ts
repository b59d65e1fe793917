import preact from '@preact/preset-vite';
import { defineConfig, type Plugin } from 'vite';

/** The dev server injects inline styles and a reload socket, which the page's own policy rightly blocks. */
const noPolicyInDev = (): Plugin => ({
  name: 'soundline:no-policy-in-dev',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
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
  plugins: [preact(), noPolicyInDev()],
  // A page of a few dozen kB needs no splitting; and nothing may be fetched lazily in the middle of a race.
  build: { target: 'es2022', assetsInlineLimit: 0 },
  preview: { port: 4173, strictPort: false, headers },
});

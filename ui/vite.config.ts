import { defineConfig } from 'vite';

// Hotday's server answers on this port while the page is worked on with `npm run dev`.
const server = process.env['HOTDAY_SERVER'] ?? 'http://127.0.0.1:8643';

export default defineConfig({
  base: './',
  build: {
    outDir: 'dist',
    target: 'es2022',
    // The page stands under a strict Content-Security-Policy: every asset is a file, nothing is inlined.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: { proxy: { '/api': server } },
});

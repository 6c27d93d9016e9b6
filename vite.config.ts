import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';

/**
 * The page's content security policy stands in index.html and is what ships. The development server alone
 * needs more: hot reloading starts from an inline script, and styles arrive as inline sheets.
 */
function loosenPolicyWhileDeveloping(): Plugin {
  return {
    name: 'loosen-policy-while-developing',
    apply: 'serve',
    transformIndexHtml: {
      order: 'pre',
      handler(html, context) {
        if (!context.server) return html;
        return html
          .replace("script-src 'self'", "script-src 'self' 'unsafe-inline'")
          .replace(/style-src [^;]+/, "style-src 'self' 'unsafe-inline'");
      },
    },
  };
}

export default defineConfig({
  // Relative addresses, so that the built folder can be served from any path.
  base: './',
  plugins: [
    react(),
    loosenPolicyWhileDeveloping(),
    // Everything the page may ever ask for is kept in the browser, so that a dialog first opened where there is no
    // network opens all the same. A newer version waits until the person asks for it: src/app/keep-offline.ts.
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: false,
      workbox: {
        globPatterns: ['**/*.{js,css,html,woff2,svg,json}'],
        maximumFileSizeToCacheInBytes: 5_000_000,
        cleanupOutdatedCaches: true,
        // The page that fetched it is the first to be kept, not only its next visit.
        clientsClaim: true,
      },
    }),
  ],
  // Nothing is inlined: the policy lets in neither fonts nor scripts from data addresses.
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    rolldownOptions: {
      // The kernel does nothing when it is loaded, so what only a worker or a later view asks of it need not be in the
      // first load though all of it goes through one door.
      treeshake: { moduleSideEffects: [{ test: /\/geometry\//, sideEffects: false }] },
    },
  },
  worker: { format: 'es' },
  preview: { port: 4173, strictPort: true },
  test: {
    // Two cores are the smallest machine this is run on.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // The deliberately faulty houses of the house rules.
    exclude: ['node_modules', 'test/house/fixtures'],
    projects: [
      {
        extends: true,
        test: { name: 'plain', environment: 'node', include: ['test/**/*.test.ts'] },
      },
      {
        extends: true,
        test: { name: 'screen', environment: 'happy-dom', include: ['test/**/*.test.tsx'] },
      },
    ],
  },
});

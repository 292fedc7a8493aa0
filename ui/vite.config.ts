// How the ui is built: one page, every file under its own name, nothing inlined that the content policy would refuse.

import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

/** Where the local server stands while the ui is being worked on; `WELLKEPT_DOOR` names another. */
const door = process.env.WELLKEPT_DOOR ?? 'http://127.0.0.1:4780';

export default defineConfig({
  plugins: [svelte()],
  // A font or picture written into the style sheet as a data address would be refused by the content policy.
  // All words come along, since the ui works offline from its first start: nearly half of the script is text.
  build: { chunkSizeWarningLimit: 800, assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  server: {
    port: 5173,
    strictPort: true,
    // The words and the icon stand outside the ui, beside the crates that share them.
    fs: { allow: ['..'] },
    proxy: { '/ask': door, '/paper': door, '/read': door, '/straighten': door, '/photo': door, '/card.pdf': door },
  },
  test: { include: ['src/**/*.test.ts'], environment: 'node', setupFiles: ['src/test-reader.ts'] },
});

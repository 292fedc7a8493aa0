// The viewer's own tests: `npm run viewer:test` in the ui folder.

import { fileURLToPath } from 'node:url';

import { wordsPlugin } from './words.mjs';

export default {
  root: fileURLToPath(new URL('.', import.meta.url)),
  plugins: [wordsPlugin()],
  test: { include: ['src/**/*.test.ts'], environment: 'node' },
};

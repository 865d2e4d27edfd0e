import { readFileSync } from 'node:fs';
import path from 'node:path';
import { defineConfig } from 'vitest/config';

/** `import text from './uk.perp'` gives the file's text, as it does in the bundles. */
const perpAsText = {
  name: 'perp-as-text',
  enforce: 'pre' as const,
  load(id: string): string | undefined {
    if (!id.endsWith('.perp')) return undefined;
    return `export default ${JSON.stringify(readFileSync(id, 'utf8'))};`;
  },
};

// vitest 5 asks for Node 22; 4.1 is the newest whose failure reports work on Node 20.
export default defineConfig({
  root: path.resolve(import.meta.dirname, '..'),
  plugins: [perpAsText],
  // The one that is bundled: it packs with what comes along, and so gives the same bytes on every machine.
  resolve: {
    alias: {
      pdfkit: path.resolve(import.meta.dirname, '../node_modules/pdfkit/js/pdfkit.browser.mjs'),
    },
  },
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/host/**'],
    // For a machine that is slow and busy, where a test may take ten times as long: speed is measured by npm run bench.
    testTimeout: 240_000,
    hookTimeout: 240_000,
    teardownTimeout: 60_000,
    setupFiles: ['tests/harness/seed.ts'],
    // One worker reads the engine once, not once a file: half of the time of the whole suite was that. So a test leaves
    // nothing behind in a module: what it sets (the language that is spoken, say) it sets back.
    isolate: false,
    // All cores: left to itself it keeps one free, which of two is half.
    maxWorkers: '100%',
  },
});

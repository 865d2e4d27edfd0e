/** npm run test:page: pages as a browser shows them. Apart from the unit tests, which need no browser and are quicker. */
import { defineConfig } from 'vitest/config';
import base from '../../vitest.config';

export default defineConfig({
  ...base,
  test: {
    ...base.test,
    include: ['tests/host/page/**/*.test.ts'],
    exclude: [],
    testTimeout: 180_000,
    // A browser is started before the first of them.
    hookTimeout: 180_000,
    expect: { poll: { timeout: 60_000 } },
  },
});

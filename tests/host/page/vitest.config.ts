/** npm run test:page: pages as a browser shows them. Apart from the unit tests, which need no browser and are quicker. */
import { defineConfig } from 'vitest/config';
import base from '../../vitest.config';

export default defineConfig({
  ...base,
  test: {
    ...base.test,
    include: ['tests/host/page/**/*.test.ts'],
    exclude: [],
    testTimeout: 120_000,
  },
});

import path from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

const root = path.resolve(import.meta.dirname, '..');
const alias = {
  '@': root,
  'server-only': path.join(root, 'tests/support/empty-module.ts'),
};
const everywhere = ['**/node_modules/**', '**/.next*/**', 'tests/e2e/**'];

export default defineConfig({
  root,
  plugins: [react()],
  resolve: { alias },
  // The style sheets play no part in these tests.
  css: { postcss: { plugins: [] } },
  test: {
    // Two cores: more workers than that only get in each other's way.
    maxWorkers: 2,
    // Says that a test hangs, not that a machine is busy.
    testTimeout: 30_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          include: ['**/*.test.ts'],
          exclude: everywhere,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser-like',
          environment: 'jsdom',
          include: ['**/*.test.tsx'],
          exclude: everywhere,
        },
      },
    ],
  },
});

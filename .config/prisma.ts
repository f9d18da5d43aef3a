import path from 'node:path';
import { PrismaBetterSQLite3 } from '@prisma/adapter-better-sqlite3';
import { defineConfig } from 'prisma/config';

const root = path.resolve(import.meta.dirname, '..');
const folder = path.resolve(root, process.env['DUSKBENCH_DATA'] ?? 'data/demo');

export default defineConfig({
  schema: path.join(root, 'prisma/schema.prisma'),
  migrations: { path: path.join(root, 'prisma/migrations') },
  experimental: { adapter: true },
  engine: 'js',
  adapter: () =>
    Promise.resolve(
      new PrismaBetterSQLite3({ url: `file:${path.join(folder, 'duskbench.sqlite')}` }),
    ),
});

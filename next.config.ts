import type { NextConfig } from 'next';

const nextConfig: NextConfig = {
  // `npm start`, `npm test` and `npm run dev` each build into a folder of their own, so that none
  // of them pulls the files from under another that is running.
  distDir: process.env['DUSKBENCH_BUILD'] ?? '.next',
  serverExternalPackages: ['better-sqlite3', '@node-rs/argon2'],
  poweredByHeader: false,
  // A clone inside another project's folder must not take that one for its root.
  turbopack: { root: import.meta.dirname },
  // `npm test` runs the compiler over the whole project; a school's laptop need not do so again.
  typescript: { ignoreBuildErrors: true },
  headers: () =>
    Promise.resolve([
      {
        source: '/:path*',
        headers: [
          { key: 'X-Content-Type-Options', value: 'nosniff' },
          { key: 'Referrer-Policy', value: 'same-origin' },
          { key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
          {
            key: 'Permissions-Policy',
            value: 'camera=(), microphone=(), geolocation=(), browsing-topics=()',
          },
        ],
      },
    ]),
};

export default nextConfig;

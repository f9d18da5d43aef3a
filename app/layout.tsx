import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import { readTheme } from './theme-choice';
import './globals.css';

export const metadata: Metadata = {
  title: { default: 'Duskbench', template: '%s · Duskbench' },
  description: 'Learn to set up and align a computerised telescope, indoors, on your own sky.',
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  themeColor: '#263850',
};

export default async function RootLayout({ children }: { children: ReactNode }) {
  const theme = await readTheme();
  return (
    <html lang="en" data-theme={theme ?? undefined} suppressHydrationWarning>
      <body>{children}</body>
    </html>
  );
}

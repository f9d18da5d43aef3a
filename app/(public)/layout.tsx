import type { ReactNode } from 'react';
import { PageFrame } from '../page-frame';

export default function PublicLayout({ children }: { children: ReactNode }) {
  return <PageFrame>{children}</PageFrame>;
}

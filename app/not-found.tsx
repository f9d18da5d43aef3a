import type { Metadata } from 'next';
import { PageNotFound } from '@/components/ui/page-not-found';
import { PageFrame } from './page-frame';

export const metadata: Metadata = { title: 'Nothing at this spot' };

export default function NotFound() {
  return (
    <PageFrame>
      <PageNotFound />
    </PageFrame>
  );
}

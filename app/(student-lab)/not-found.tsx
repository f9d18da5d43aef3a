import { PageNotFound } from '@/components/ui/page-not-found';

export default function NotFound() {
  return <PageNotFound />;
}

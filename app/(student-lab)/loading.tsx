import { PageLoading } from '@/components/ui/page-loading';

export default function Loading() {
  return <PageLoading />;
}

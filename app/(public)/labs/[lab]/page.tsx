import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { BenchPage } from './bench-page';
import { benchTexts } from '@/components/lab/bench/bench-texts';
import { isBenchLab } from '@/lib/variants/bench/bench-labs';
import type { VisitorPageProps } from '../visitor-page';

type LabPageProps = VisitorPageProps & { params: Promise<{ lab: string }> };

export async function generateMetadata({ params }: LabPageProps): Promise<Metadata> {
  const { lab } = await params;
  return { title: isBenchLab(lab) ? benchTexts[lab].name : 'Labs' };
}

/** A bench lab for visitors. The labs under the sky have pages of their own beside this one. */
export default async function LabPage({ params, searchParams }: LabPageProps) {
  const { lab } = await params;
  if (!isBenchLab(lab)) notFound();
  return <BenchPage lab={lab} searchParams={searchParams} />;
}

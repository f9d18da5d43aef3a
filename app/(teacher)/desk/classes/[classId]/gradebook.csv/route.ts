import { getViewer } from '@/lib/auth/session';
import { exportGradebookCsv } from '@/lib/data/gradebook';
import { nothingHere, sendFile } from '../../../send-file';

export async function GET(
  _request: Request,
  { params }: { params: Promise<{ classId: string }> },
): Promise<Response> {
  const { classId } = await params;
  const csv = await exportGradebookCsv(await getViewer(), classId);
  return csv === null ? nothingHere() : sendFile(csv, 'gradebook.csv', 'text/csv; charset=utf-8');
}

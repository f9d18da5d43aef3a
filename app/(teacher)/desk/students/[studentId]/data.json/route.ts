import { getViewer } from '@/lib/auth/session';
import { readExportChoices } from '@/lib/data/exports-input';
import { exportStudent } from '@/lib/data/roster';
import { nothingHere, sendFile } from '../../../send-file';

export async function GET(
  request: Request,
  { params }: { params: Promise<{ studentId: string }> },
): Promise<Response> {
  const { studentId } = await params;
  const data = await exportStudent(
    await getViewer(),
    studentId,
    readExportChoices(Object.fromEntries(new URL(request.url).searchParams)),
  );
  if (data === null) return nothingHere();
  return sendFile(
    `${JSON.stringify(data, null, 2)}\n`,
    'student.json',
    'application/json; charset=utf-8',
  );
}

import type { Viewer } from '@/lib/auth/policy';
import { getViewer } from '@/lib/auth/session';
import {
  exportAttempts,
  exportMarks,
  exportSkills,
  exportStatements,
  exportStudentZip,
} from '@/lib/data/exports';
import {
  readClassFile,
  readExportChoices,
  type ClassFile,
  type ExportChoices,
} from '@/lib/data/exports-input';
import { nothingHere, sendFile } from '../../../../send-file';

export async function GET(
  request: Request,
  { params }: { params: Promise<{ classId: string; file: string }> },
): Promise<Response> {
  const { classId, file: name } = await params;
  const file = readClassFile(name);
  if (file === null) return nothingHere();
  const choices = readExportChoices(Object.fromEntries(new URL(request.url).searchParams));
  return (await answer(await getViewer(), classId, file, choices)) ?? nothingHere();
}

const csv = 'text/csv; charset=utf-8';
const sendIf = (text: string | null, file: ClassFile): Response | null =>
  text === null ? null : sendFile(text, file, csv);

async function answer(
  viewer: Viewer,
  classId: string,
  file: ClassFile,
  choices: ExportChoices,
): Promise<Response | null> {
  switch (file) {
    case 'marks.csv':
      return sendIf(await exportMarks(viewer, classId, choices), file);
    case 'skills.csv':
      return sendIf(await exportSkills(viewer, classId, choices), file);
    case 'attempts.csv':
      return sendIf(await exportAttempts(viewer, classId, choices), file);
    case 'statements.json': {
      const statements = await exportStatements(viewer, classId, choices);
      return statements === null
        ? null
        : sendFile(
            `${JSON.stringify(statements, null, 2)}\n`,
            file,
            'application/json; charset=utf-8',
          );
    }
    case 'student.zip': {
      const zip =
        choices.student === null ? null : await exportStudentZip(viewer, choices.student, choices);
      return zip === null ? null : sendFile(zip.bytes, zip.fileName, 'application/zip');
    }
  }
}

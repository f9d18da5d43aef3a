import { labText, templateText } from '@/components/grading/template-text';
import type { StudentPart } from '@/lib/data/attempts';

/** What a part is called beside others: its lab, or of questions the one lesson that they are on. */
export function partName({ lab, templates }: Pick<StudentPart, 'lab' | 'templates'>): string {
  const [only, ...more] = templates;
  return lab === 'lesson-questions' && only !== undefined && more.length === 0
    ? `Questions: ${templateText(lab, only).name}`
    : labText[lab].name;
}

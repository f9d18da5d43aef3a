import { labText, templateText } from '@/components/grading/template-text';
import { labOptions } from '@/lib/variants/labs';
import type { PartDraft } from './part-draft';

/** A part as it is called in the form: its lab, or of questions the one lesson they are on. */
export function partDraftName({ lab, templates }: Pick<PartDraft, 'lab' | 'templates'>): string {
  const [only, ...more] = templates;
  return lab === 'lesson-questions' && only !== undefined && more.length === 0
    ? `Questions: ${templateText(lab, only).name}`
    : labText[lab].name;
}

/** What is set in a part, in a few words. */
export function partDraftSettings(part: PartDraft): string {
  const { lab, templates, windowMinutes } = part;
  const { ofAllKinds = false, withoutSky = false } = labOptions[lab];
  const [only, ...more] = templates;
  const kinds =
    only !== undefined && more.length === 0
      ? templateText(lab, only).name
      : `${templates.length === 0 ? 'no' : String(templates.length)} ${ofAllKinds ? 'lessons' : 'kinds'}`;
  return withoutSky ? kinds : `${kinds}, ± ${windowMinutes} minutes`;
}

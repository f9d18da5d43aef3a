import { labText, templateText } from '@/components/grading/template-text';
import { hasMoment, labOptions } from '@/lib/variants/labs';
import { countWord } from '@/lib/wording/count-word';
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
  const { templates: all, ofAllKinds = false } = labOptions[lab];
  const [only, ...more] = templates;
  const kinds =
    only !== undefined && more.length === 0
      ? templateText(lab, only).name
      : ofAllKinds
        ? `${countWord(templates.length)} lessons`
        : templates.length === all.length
          ? `all ${countWord(all.length)} kinds`
          : `${countWord(templates.length)} of ${countWord(all.length)} kinds`;
  return hasMoment(lab) ? `${kinds}, ± ${windowMinutes} minutes` : kinds;
}

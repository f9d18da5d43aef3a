import 'server-only';
import { readFileSync } from 'node:fs';
import path from 'node:path';

/** What was made by others: which part, whom to thank, on what terms. */
export type Credit = {
  part: string;
  credit: string;
  source: string;
  licence: string;
  licenceUrl: string | null;
  changes: string;
};

/** The text after "- Label: " within one part of the file. */
function line(part: string, text: string, label: string): string {
  const found = new RegExp(`^- ${label}: (.+)$`, 'm').exec(text)?.[1]?.trim();
  if (found === undefined) {
    throw new Error(`content/LICENCES.md: "${part}" has no line "- ${label}: …"`);
  }
  return found;
}

/**
 * Reads the parts of content/LICENCES.md: a heading of the second level, then one line each for
 * files, credit, source, licence ("name, address") and changes. Throws when a part lacks a line, so
 * that nobody's credit can drop out of the About page unseen.
 */
export function parseCredits(markdown: string): Credit[] {
  return markdown
    .split(/^## /m)
    .slice(1)
    .map((section) => {
      const [heading = '', ...rest] = section.split('\n');
      const part = heading.trim();
      const text = rest.join('\n');
      const licence = line(part, text, 'Licence');
      const url = /^(.*), (https:\/\/\S+)$/.exec(licence);
      return {
        part,
        credit: line(part, text, 'Credit'),
        source: line(part, text, 'Source'),
        licence: url?.[1] ?? licence,
        licenceUrl: url?.[2] ?? null,
        changes: line(part, text, 'Changes'),
      };
    });
}

let kept: Credit[] | undefined;

/** The credits of everything that was taken in; read once a process. */
export function loadCredits(): Credit[] {
  kept ??= parseCredits(readFileSync(path.join(process.cwd(), 'content', 'LICENCES.md'), 'utf8'));
  return kept;
}

import 'server-only';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';

const lineNames = ['Files', 'Credit', 'Source', 'Licence', 'Changes'] as const;

/** One thing made by others: where it is, whom to thank, under what licence, and what was changed. */
export type LicenceNotice = {
  title: string;
  files: string[];
  credit: string;
  sourceUrl: string;
  licenceName: string;
  licenceUrl: string;
  changes: string;
};

/** Reads the parts of content/LICENCES.md. @throws {Error} naming the part that lacks a line. */
export function parseLicences(markdown: string): LicenceNotice[] {
  return markdown
    .split(/^## /m)
    .slice(1)
    .map((part) => {
      const [title = '', ...rest] = part.split('\n');
      const lines = new Map(
        rest.flatMap((line) => {
          const [, name, value] = /^- (\w+): (.+)$/.exec(line) ?? [];
          return name === undefined || value === undefined ? [] : [[name, value] as const];
        }),
      );
      const [files, credit, source, licence, changes] = lineNames.map((name) => {
        const value = lines.get(name);
        if (value === undefined) throw new Error(`"${title}" has no line "${name}"`);
        return value;
      });
      const [licenceName = '', licenceUrl] = (licence ?? '').split(/, (?=https:)/);
      return {
        title: title.trim(),
        files: (files ?? '').split(', '),
        credit: credit ?? '',
        sourceUrl: z.url().parse(source),
        licenceName,
        licenceUrl: z.url().parse(licenceUrl),
        changes: changes ?? '',
      };
    });
}

/** The notices that the About page shows. */
export function loadLicences(): LicenceNotice[] {
  return parseLicences(readFileSync(path.join(process.cwd(), 'content', 'LICENCES.md'), 'utf8'));
}

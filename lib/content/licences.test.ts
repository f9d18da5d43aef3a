import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadLicences, parseLicences } from './licences';

const notices = loadLicences();

describe('the licence notices', () => {
  it('name every data file in content, and only files that exist', () => {
    const noticed = new Set(notices.flatMap((notice) => notice.files));
    const data = ['stars', 'places'].flatMap((folder) =>
      readdirSync(`content/${folder}`, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && !entry.name.endsWith('.md'))
        .map((entry) => `${entry.parentPath}/${entry.name}`),
    );
    expect([...noticed]).toEqual(expect.arrayContaining(data));
    for (const file of noticed) {
      const onDisk = file.replace(/^(@\S+) .*$/, 'node_modules/$1');
      expect(existsSync(onDisk), file).toBe(true);
    }
  });

  it('give credit, licence with its address, and what was changed', () => {
    expect(notices.map((notice) => notice.title)).toEqual([
      'Stars',
      'Star names',
      'Constellation names',
      'Constellation figures',
      'Places',
      'Typeface',
    ]);
    for (const notice of notices) {
      expect(notice.credit).not.toBe('');
      expect(notice.licenceUrl).toMatch(/^https:/);
      expect(notice.changes).not.toBe('');
    }
  });

  it('are refused when a line is missing, and the part is named', () => {
    expect(() => parseLicences('## Fonts\n\n- Files: a\n')).toThrow('"Fonts" has no line "Credit"');
  });
});

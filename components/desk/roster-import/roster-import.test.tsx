import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import type { RosterList } from '@/lib/data/roster-import-input';
import type { Result } from '@/lib/data/result';
import type { RosterPreview } from '@/lib/data/roster-import';
import { countChanges, planRoster, type PresentStudent } from '@/lib/roster/plan-roster';
import {
  oneRosterTablesOf,
  oneRosterZip,
  zipOfTables,
} from '../../../tests/support/one-roster-zip';
import type { ImportActions } from './import-actions';
import { RosterImport } from './roster-import';

// What is fetched when it is first needed is at hand from the start here.
beforeAll(() =>
  Promise.all([
    import('@/lib/roster/read-table'),
    import('@/lib/roster/open-zip'),
    import('@/lib/roster/one-roster/read-one-roster'),
  ]),
);
afterEach(cleanup);

const kit: PresentStudent = { studentId: 's', displayName: 'Kit', sourcedId: null, left: false };

/** The server's part, with a class of Kit alone. */
function open(refusal: Result<never> | null = null, present: readonly PresentStudent[] = [kit]) {
  const preview = vi.fn<ImportActions['preview']>((list) => {
    const changes = planRoster(present, list);
    const value: RosterPreview = {
      changes,
      counts: countChanges(changes),
      fingerprint: 'f',
      fromAnotherClass: false,
    };
    return Promise.resolve(refusal ?? { ok: true, value });
  });
  const commit = vi.fn<ImportActions['commit']>((list) =>
    Promise.resolve({
      ok: true,
      value: {
        counts: countChanges(planRoster(present, list)),
        undo: {
          added: ['n'],
          left: [],
          learnedId: [],
          back: [],
          renamed: [],
          classSourcedId: { from: null, to: null },
        },
      },
    }),
  );
  const takeBack = vi.fn<ImportActions['takeBack']>(() =>
    Promise.resolve({ ok: true, value: null }),
  );
  render(
    <RosterImport
      actions={{ preview, commit, takeBack }}
      className="Year 8"
      rememberedId={null}
      today="2026-11-26"
    />,
  );
  const names = () => preview.mock.lastCall?.[0].entries.map(({ name }) => name);
  return { preview, commit, takeBack, names, user: userEvent.setup() };
}
type User = ReturnType<typeof userEvent.setup>;

async function paste(user: User, text: string): Promise<void> {
  await user.click(screen.getByRole('tab', { name: 'Paste or open columns' }));
  await user.click(screen.getByLabelText('Paste columns from a spreadsheet'));
  await user.paste(text);
  await user.click(screen.getByRole('button', { name: 'Read the columns' }));
}
const press = (user: User, name: string) => user.click(screen.getByRole('button', { name }));
const upload = async (user: User, label: string, file: File) => {
  await user.upload(await screen.findByLabelText(label), file);
};

describe('adding students', () => {
  it('shows what typed names would change, does it when told to, and takes it back', async () => {
    const { commit, takeBack, names, user } = open();
    await user.click(screen.getByLabelText('Names'));
    await user.paste('Ash\nkit\nLou');
    await press(user, 'Preview');
    expect(names()).toEqual(['Ash', 'kit', 'Lou']);
    expect(await screen.findByText('Your list: 2 new, 1 unchanged.')).toBeTruthy();
    expect(commit).not.toHaveBeenCalled();
    await press(user, 'Add 2 students');
    expect(commit.mock.lastCall?.[1]).toBe('f');
    expect(await screen.findByText(/2 students added/)).toBeTruthy();
    await press(user, 'Take the import back');
    expect(takeBack.mock.lastCall?.[0].added).toEqual(['n']);
    expect(await screen.findByText(/was taken back/)).toBeTruthy();
    expect(screen.getByLabelText('Names')).toHaveProperty('value', '');
  });

  it('keeps what was typed when the server refuses, and on the way back', async () => {
    const refusal = { ok: false, problem: { code: 'too-many', message: 'At most 500.' } } as const;
    const { user } = open(refusal);
    await user.type(screen.getByLabelText('Names'), 'Ash');
    await press(user, 'Preview');
    expect((await screen.findByRole('alert')).textContent).toContain('At most 500');
    expect(screen.getByLabelText('Names')).toHaveProperty('value', 'Ash');
    cleanup();
    const again = open();
    await again.user.type(screen.getByLabelText('Names'), 'Ash');
    await press(again.user, 'Preview');
    await screen.findByText('Your list: 1 new, 1 not in it, who stay as they are.');
    await press(again.user, 'Back to the list');
    expect(screen.getByLabelText('Names')).toHaveProperty('value', 'Ash');
  });

  it('leaves out a line that is no name, and says why', async () => {
    const { names, user } = open();
    await user.click(screen.getByLabelText('Names'));
    await user.paste('Ash\n=cmd');
    expect(screen.getByText(/as a formula does/)).toBeTruthy();
    await press(user, 'Preview');
    expect(names()).toEqual(['Ash']);
  });

  it('leaves personal columns behind and says so', async () => {
    const { names, user } = open();
    await paste(user, 'Given;Family;E-mail\nAsh;Reed;ash@school.test\nLou;Fern;lou@school.test');
    expect(await screen.findByText(/looks like email addresses/)).toBeTruthy();
    const column = screen.getByLabelText('Column with the name to show');
    expect(
      within(column)
        .getAllByRole('option')
        .map((option) => option.textContent),
    ).toEqual(['Given: Ash, Lou', 'Family: Reed, Fern']);
    await user.selectOptions(screen.getByLabelText('Followed by'), 'Family: Reed, Fern');
    await press(user, 'Preview');
    expect(names()).toEqual(['Ash Reed', 'Lou Fern']);
  });

  it('takes a column of ids along', async () => {
    const { preview, user } = open();
    await paste(user, 'Student ID\tName\na1\tAsh\na2\tLou');
    await screen.findByText('2 names read');
    await press(user, 'Preview');
    expect(preview.mock.lastCall?.[0].entries).toEqual([
      { row: 2, sourcedId: 'a1', name: 'Ash' },
      { row: 3, sourcedId: 'a2', name: 'Lou' },
    ]);
  });

  it('lets a row be mended', async () => {
    const { names, user } = open();
    await paste(user, 'Name\nAsh\nAsh');
    const second = await screen.findByLabelText('Name in row 3');
    expect(screen.getByText(/The same name as row 2/)).toBeTruthy();
    await user.type(second, ' B');
    await press(user, 'Preview');
    expect(names()).toEqual(['Ash', 'Ash B']);
  });

  it('names in the preview each row that is left out, folded away when they are many', async () => {
    const { user } = open();
    await paste(user, 'Name\tHouse\nAsh\tRed\n\n\tRed\n=cmd\tRed\nash\tRed');
    await press(user, 'Preview');
    expect(await screen.findByText(/^4 rows are left out/)).toBeTruthy();
    const table = within(screen.getByRole('table', { name: 'Left out of The pasted text' }));
    expect(
      table
        .getAllByRole('row')
        .slice(1)
        .map((row) => row.textContent),
    ).toEqual([
      '3nothingNothing stands here.',
      '4nothingNo name here. Type one, or leave the row out.',
      '5=cmdThis begins with =, +, − or @, as a formula does. Take the sign away, or type the name.',
      '6ashThe same name as row 2. Add an initial or a number.',
    ]);
    cleanup();
    const many = open();
    await paste(many.user, `Name\nAsh\n${'ash\n'.repeat(30)}`);
    await press(many.user, 'Preview');
    const summary = await screen.findByText(/^30 rows are left out/);
    expect(summary.closest('details')?.open).toBe(false);
  });

  it('takes a first row that is a student after all', async () => {
    const { user } = open();
    await paste(user, 'Name\nAsh');
    await user.click(await screen.findByLabelText('The first row names the columns'));
    expect(screen.getByText('2 names read')).toBeTruthy();
  });

  it('explains text that cannot be read, beside what was pasted', async () => {
    const { user } = open();
    await paste(user, 'Name\n"Ash\nLou');
    expect((await screen.findByRole('alert')).textContent).toContain('row 2 and never closed');
    expect(screen.getByLabelText('Paste columns from a spreadsheet')).toHaveProperty(
      'value',
      'Name\n"Ash\nLou',
    );
  });

  it('opens a file, and says where its letters had to be guessed', async () => {
    const { user } = open();
    await user.click(screen.getByRole('tab', { name: 'Paste or open columns' }));
    const bytes = Uint8Array.of(0x5a, 0x6f, 0xeb, 0x0a, 0x4c, 0x6f, 0x75);
    await upload(user, 'or open a CSV or TSV file', new File([bytes], 'class.csv'));
    expect(await screen.findByDisplayValue('Zoë')).toBeTruthy();
    expect(screen.getByText(/class.csv is not in UTF-8 \(first seen in row 1/)).toBeTruthy();
  });

  it("refuses a spreadsheet's own file with what to do", async () => {
    const { user } = open();
    await user.click(screen.getByRole('tab', { name: 'Paste or open columns' }));
    const file = new File([Uint8Array.of(0x50, 0x4b, 3, 4)], 'class.csv');
    await upload(user, 'or open a CSV or TSV file', file);
    expect((await screen.findByRole('alert')).textContent).toContain('Save it as CSV first');
  });
});

describe('a OneRoster zip', () => {
  const asFile = (bytes: Uint8Array): File => new File([Uint8Array.from(bytes)], 'office.zip');

  it('sends short names and ids of the chosen class alone', async () => {
    const { preview, user } = open();
    await user.click(screen.getByRole('tab', { name: 'OneRoster zip' }));
    await upload(user, 'OneRoster 1.2 zip', asFile(oneRosterZip(2)));
    await screen.findByText('office.zip read: 1 class.');
    await press(user, 'Preview');
    const sent: RosterList | undefined = preview.mock.lastCall?.[0];
    expect(sent).toEqual({
      completeness: 'whole-class',
      classSourcedId: 'class-8a',
      keepNames: false,
      entries: [
        { row: 2, sourcedId: 'student-1', name: 'Bittern B' },
        { row: 3, sourcedId: 'student-2', name: 'Crake C' },
      ],
      gone: [],
    });
  });

  it('asks again with the names kept as they are', async () => {
    const { preview, user } = open(null, [{ ...kit, sourcedId: 'student-1' }]);
    await user.click(screen.getByRole('tab', { name: 'OneRoster zip' }));
    await upload(user, 'OneRoster 1.2 zip', asFile(oneRosterZip(2)));
    await screen.findByText('office.zip read: 1 class.');
    await press(user, 'Preview');
    expect(await screen.findByText('renamed, was Kit')).toBeTruthy();
    await user.click(screen.getByLabelText('Keep the names as they are here'));
    expect(
      await screen.findByText('office.zip, Year 8, Astronomy: 1 new, 1 unchanged.'),
    ).toBeTruthy();
    expect(preview.mock.lastCall?.[0].keepNames).toBe(true);
  });

  it('lists all that is wrong with it, and takes nothing', async () => {
    const { user } = open();
    const tables = oneRosterTablesOf([
      { id: '1', givenName: '=cmd', familyName: 'Reed' },
      { id: '2', givenName: 'Lou', familyName: '@x' },
    ]);
    await user.click(screen.getByRole('tab', { name: 'OneRoster zip' }));
    await upload(user, 'OneRoster 1.2 zip', asFile(zipOfTables(tables)));
    const alert = await screen.findByRole('alert');
    expect(alert.textContent).toContain('users.csv, row 2, column givenName');
    expect(alert.textContent).toContain('users.csv, row 3, column familyName');
    expect(screen.getByRole('button', { name: 'Preview' })).toHaveProperty('disabled', true);
  });
});

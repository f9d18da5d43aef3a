import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Result } from '@/lib/data/result';
import { RosterImport } from './roster-import';

// The reader of columns is fetched when it is first needed; here it is at hand from the start.
beforeAll(() => import('./read-table'));
afterEach(cleanup);

type Added = Result<{ added: number }>;
function open(answer: Added = { ok: true, value: { added: 2 } }) {
  const addStudents = vi.fn<(names: string[]) => Promise<Added>>().mockResolvedValue(answer);
  render(<RosterImport existingNames={['Kit']} addStudents={addStudents} />);
  return { addStudents, user: userEvent.setup() };
}

async function paste(user: ReturnType<typeof userEvent.setup>, text: string): Promise<void> {
  await user.click(screen.getByRole('tab', { name: 'Paste or open columns' }));
  await user.click(screen.getByLabelText('Paste columns from a spreadsheet'));
  await user.paste(text);
  await user.click(screen.getByRole('button', { name: 'Read the columns' }));
}

describe('adding students', () => {
  it('previews typed names and sends the sound ones only', async () => {
    const { addStudents, user } = open();
    await user.click(screen.getByLabelText('Names'));
    await user.paste('Ash\nKit\nLou');
    expect(screen.getByText(/in the class already/)).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Add 2 students' }));
    expect(addStudents).toHaveBeenCalledWith(['Ash', 'Lou']);
    expect(await screen.findByText(/2 students added/)).toBeTruthy();
    expect(screen.getByLabelText('Names')).toHaveProperty('value', '');
  });

  it('keeps what was typed when the server refuses', async () => {
    const { user } = open({
      ok: false,
      problem: { code: 'class-full', message: 'A class has at most 200 students.' },
    });
    await user.type(screen.getByLabelText('Names'), 'Ash');
    await user.click(screen.getByRole('button', { name: 'Add 1 student' }));
    expect((await screen.findByRole('alert')).textContent).toContain('at most 200 students');
    expect(screen.getByLabelText('Names')).toHaveProperty('value', 'Ash');
  });

  it('leaves personal columns behind and says so', async () => {
    const { addStudents, user } = open();
    await paste(user, 'Given;Family;E-mail\nAsh;Reed;ash@school.test\nLou;Fern;lou@school.test');
    expect(await screen.findByText(/looks like email addresses/)).toBeTruthy();
    const column = screen.getByLabelText('Column with the name to show');
    expect(
      within(column)
        .getAllByRole('option')
        .map((option) => option.textContent),
    ).toEqual(['Given: Ash, Lou', 'Family: Reed, Fern']);
    await user.selectOptions(screen.getByLabelText('Followed by'), 'Family: Reed, Fern');
    await user.click(screen.getByRole('button', { name: 'Add 2 students' }));
    expect(addStudents).toHaveBeenCalledWith(['Ash Reed', 'Lou Fern']);
  });

  it('lets a row be mended in the preview', async () => {
    const { addStudents, user } = open();
    await paste(user, 'Name\nAsh\nAsh');
    const second = await screen.findByLabelText('Name in row 3');
    expect(screen.getByText(/The same name as row 2/)).toBeTruthy();
    await user.type(second, ' B');
    await user.click(screen.getByRole('button', { name: 'Add 2 students' }));
    expect(addStudents).toHaveBeenCalledWith(['Ash', 'Ash B']);
  });

  it('takes a first row that is a student after all', async () => {
    const { user } = open();
    await paste(user, 'Name\nAsh');
    await user.click(await screen.findByLabelText('The first row names the columns'));
    expect(screen.getByRole('button', { name: 'Add 2 students' })).toBeTruthy();
  });

  it('explains text that cannot be read, beside what was pasted', async () => {
    const { user } = open();
    await paste(user, 'Name\n"Ash\nLou');
    expect((await screen.findByRole('alert')).textContent).toContain('never closed');
    expect(screen.getByLabelText('Paste columns from a spreadsheet')).toHaveProperty(
      'value',
      'Name\n"Ash\nLou',
    );
  });

  it('opens a file, and says when its letters had to be guessed', async () => {
    const { user } = open();
    await user.click(screen.getByRole('tab', { name: 'Paste or open columns' }));
    const bytes = Uint8Array.of(0x5a, 0x6f, 0xeb, 0x0a, 0x4c, 0x6f, 0x75);
    await user.upload(
      screen.getByLabelText('or open a CSV or TSV file'),
      new File([bytes], 'class.csv', { type: 'text/csv' }),
    );
    expect(await screen.findByDisplayValue('Zoë')).toBeTruthy();
    expect(screen.getByText(/older Western code page/)).toBeTruthy();
  });

  it("refuses a spreadsheet's own file with what to do", async () => {
    const { user } = open();
    await user.click(screen.getByRole('tab', { name: 'Paste or open columns' }));
    const bytes = Uint8Array.of(0x50, 0x4b, 3, 4);
    await user.upload(
      screen.getByLabelText('or open a CSV or TSV file'),
      new File([bytes], 'class.csv', { type: 'text/csv' }),
    );
    expect((await screen.findByRole('alert')).textContent).toContain('Save it as CSV first');
  });
});

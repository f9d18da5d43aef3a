import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import type { ClassGroups, GroupsInput } from '@/lib/data/groups';
import type { Result } from '@/lib/data/result';
import { GroupEditor } from './group-editor';

afterEach(cleanup);

const student = (name: string, cardNumber: number) => ({
  studentId: name,
  displayName: name,
  cardNumber,
});
const nobodyPlaced: ClassGroups = {
  groups: [],
  withoutGroup: [student('Ash', 1), student('Birch', 2), student('Cedar', 3)],
  version: 'first',
};
/** Keeps what it is sent, as the server would. */
const keeping = () =>
  vi.fn<(input: GroupsInput) => Promise<Result<ClassGroups>>>((input) =>
    Promise.resolve({
      ok: true,
      value: {
        groups: input.groups.map(({ name, kitId, studentIds }, index) => ({
          groupId: `id-${index}`,
          name,
          kitId,
          students: studentIds.map((id, place) => student(id, place)),
          extensionCount: 0,
        })),
        withoutGroup: [],
        version: 'second',
      },
    }),
  );
const show = (save = keeping(), groups = nobodyPlaced) => {
  render(<GroupEditor groups={groups} telescopes={[{ id: 'wren', name: 'Wren' }]} save={save} />);
  return save;
};
const button = (name: RegExp | string) => screen.getByRole('button', { name });
const groupNamed = (name: string) => within(screen.getByRole('region', { name: `Group ${name}` }));
/** By the keyboard alone: focus it, press the space bar. */
async function press(name: RegExp | string): Promise<void> {
  button(name).focus();
  await userEvent.keyboard(' ');
}

test('students are chosen and put into a group by keyboard, and it is saved in one go', async () => {
  const save = show();
  await press('Add a group');
  await press(/^Ash/);
  await press(/^Cedar/);
  expect(button(/^Ash/).getAttribute('aria-pressed')).toBe('true');
  await press(/Put 2 here/);
  await userEvent.selectOptions(screen.getByLabelText('Telescope'), 'wren');
  expect(groupNamed('Group 1').getByRole('button', { name: /^Cedar/ })).toBeTruthy();
  expect(screen.getByText(/Not saved yet/)).toBeTruthy();
  await press('Save');
  expect(save).toHaveBeenCalledExactlyOnceWith({
    version: 'first',
    groups: [{ groupId: null, name: 'Group 1', kitId: 'wren', studentIds: ['Ash', 'Cedar'] }],
  });
  expect(await screen.findByText('Saved.')).toBeTruthy();
});

test('undo goes back past a save, and the next save means the same group', async () => {
  const save = show();
  await press('Add a group');
  await press('Deal everybody out anew');
  await press('Save');
  await screen.findByText('Saved.');
  await press('Undo');
  expect(groupNamed('Group 1').getByText('Nobody yet.')).toBeTruthy();
  await press('Save');
  expect(save).toHaveBeenLastCalledWith({
    version: 'second',
    groups: [{ groupId: 'id-0', name: 'Group 1', kitId: null, studentIds: [] }],
  });
});

test('a typed name is one step of undo', async () => {
  show();
  await press('Add a group');
  const name = screen.getByLabelText('Name');
  await userEvent.clear(name);
  await userEvent.type(name, 'Yard');
  await press('Undo');
  expect(screen.getByLabelText('Name')).toHaveProperty('value', 'Group 1');
});

test('a refusal is said at the name it is about, and nothing is lost', async () => {
  const message = 'Two groups are called Wren. Give one of them another name.';
  const problem = { code: 'name-taken', message, field: 'groups.1.name' };
  show(vi.fn(() => Promise.resolve({ ok: false as const, problem })));
  await press('Add a group');
  await press('Add a group');
  await press('Save');
  expect((await screen.findAllByText(message)).length).toBe(2);
  const [, second] = screen.getAllByLabelText('Name');
  expect(second?.getAttribute('aria-invalid')).toBe('true');
  expect(screen.getByText(/Not saved yet/)).toBeTruthy();
});

test('before a group with more time is deleted for good, it is said what goes with it', async () => {
  const wren = { groupId: 'g', name: 'Wren', kitId: null, students: [], extensionCount: 2 };
  show(keeping(), { ...nobodyPlaced, groups: [wren] });
  await press(/^Delete/);
  expect(screen.getByText(/later due time it was given in 2 assignments goes/)).toBeTruthy();
  await press('Undo');
  expect(screen.getByLabelText('Name')).toHaveProperty('value', 'Wren');
});

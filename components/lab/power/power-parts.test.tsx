import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { gradePower } from '@/lib/grading/bench/power/grade-power';
import { powerModelAnswer } from '@/lib/grading/bench/power/power-model-answer';
import {
  emptyPowerDraft,
  powerSubmissionSchema,
  type PowerDraft,
} from '@/lib/grading/bench/power/power-submission';
import type { PowerAction } from '@/lib/power/power-bench';
import { powerTemplates, type PowerVariant } from '@/lib/variants/bench/power/power-variant';
import { powerTask } from '@/tests/support/power-tasks';
import { PowerLab } from './power-lab';
import { powerParts } from './power-parts';
import { bayName, planNames, plugName, verdictNames, ways } from './power-words';

beforeEach(() => {
  vi.spyOn(window, 'scrollTo').mockImplementation(() => undefined);
  // A wide screen of somebody who asked for stillness.
  window.matchMedia = vi.fn<typeof window.matchMedia>(() =>
    Object.assign(new EventTarget(), {
      matches: true,
      media: '',
      onchange: null,
      addListener: vi.fn(),
      removeListener: vi.fn(),
    }),
  );
});
afterEach(cleanup);

/** What is submitted, through the schema that the server reads it by. */
function benchFor(variant: PowerVariant, draft: PowerDraft | null = null) {
  const sent: unknown[] = [];
  render(
    <PowerLab
      variant={variant}
      mode="check"
      attemptKey={`power ${variant.template} ${String(Math.random())}`}
      draft={draft}
      onSubmit={({ submission }) => {
        sent.push(submission);
        return Promise.resolve({ ok: true, value: { result: null, late: false } });
      }}
    />,
  );
  return sent;
}

const user = userEvent.setup();

/** By keyboard alone: the control is reached by focus, and pressed with Enter. */
async function press(name: string): Promise<void> {
  const button = screen.getByRole('button', { name });
  button.focus();
  expect(document.activeElement).toBe(button);
  await user.keyboard('{Enter}');
}

async function doInTable(action: PowerAction, plugged: { is: string | null }): Promise<void> {
  switch (action.do) {
    case 'put':
      await user.selectOptions(
        screen.getByLabelText(`Cell for ${bayName(action.bay)}`),
        action.cell,
      );
      return press(`Put it into ${bayName(action.bay)}, ${ways[action.plusEnd]}`);
    case 'take':
      return press(`Take the cell out of ${bayName(action.bay)}`);
    case 'turn':
      return press(`Turn round the cell in ${bayName(action.bay)}`);
    case 'plug':
      plugged.is = action.supply;
      return press(`Plug in ${plugName(action.supply)}`);
    case 'unplug':
      return press(`Unplug ${plugName(plugged.is ?? '')}`);
    case 'hand-control':
      return press(action.connected ? 'Connect the hand control' : 'Take the hand control off');
    case 'switch':
      return press(action.on ? 'Switch on' : 'Switch off');
    case 'slew':
      return press('Slew at full speed');
    case 'read':
      await user.selectOptions(screen.getByLabelText('Red probe on'), String(action.red));
      await user.selectOptions(screen.getByLabelText('Black probe on'), String(action.black));
      return press('Read the meter');
  }
}

test.each(powerTemplates)(
  'whoever uses the table and the keyboard alone gets full marks: %s',
  async (template) => {
    const variant = powerTask('table', template);
    const model = powerModelAnswer(variant);
    const sent = benchFor(variant);
    await user.click(screen.getByRole('button', { name: 'Table' }));
    expect(document.querySelector('svg[aria-label="The bench"]')).toBeNull();
    const plugged = { is: variant.setup.start.plugged };
    for (const action of model.actions) await doInTable(action, plugged);

    for (const [id, verdict] of Object.entries(model.verdicts))
      await user.selectOptions(
        screen.getByLabelText(`Supply ${id}`),
        verdictNames[verdict ?? 'fits'],
      );
    const type = async (label: RegExp, value: number | null) => {
      if (value !== null) await user.type(screen.getByLabelText(label), String(value));
    };
    await type(/^How many cells/, model.reversedCount);
    await type(/^Mean current/, model.meanMilliamperes);
    await type(/^Run time/, model.runTimeHours);
    await type(/^Volts at the socket/, model.slewingVolts);
    if (model.resets !== null)
      await user.click(screen.getByRole('radio', { name: model.resets ? 'Yes' : 'No' }));
    if (model.plan !== null)
      await user.click(screen.getByRole('radio', { name: planNames[model.plan] }));

    await user.click(screen.getByRole('button', { name: 'That is my work' }));
    expect(document.activeElement?.textContent).toBe('Read it once more before you submit');
    await user.click(screen.getByRole('button', { name: 'Submit' }));
    expect(sent).toHaveLength(1);
    const grading = gradePower({ variant, submission: powerSubmissionSchema.parse(sent[0]) });
    expect(grading.ok && grading.result.total).toBe(100);
    expect(grading.ok && grading.result.slips).toEqual([]);
  },
  60_000,
);

test('the drawing’s own buttons do the same by keyboard', async () => {
  const variant = powerTask('drawing', 'find-the-reversed');
  const model = powerModelAnswer(variant);
  benchFor(variant);
  for (const action of model.actions) {
    if (action.do === 'read')
      for (const stud of [action.black, action.red])
        await press(
          screen
            .getAllByRole('button', { name: new RegExp(`^Stud ${String(stud)}\\b`) })
            .map((one) => one.getAttribute('aria-label') ?? '')[0] ?? '',
        );
    else if (action.do === 'turn') await press(`Turn round the cell in ${bayName(action.bay)}`);
  }
  await press('Hand control: not connected. Connect it.');
  await press('The holder’s plug: plug it in');
  await press('Switch: off. Switch on.');
  await press('Hand control: slew at full speed');
  expect(within(screen.getByRole('complementary')).getByText('Slewing at full speed')).toBeTruthy();
});

test('a check says what is to be seen, and leaves what it means to its feedback', async () => {
  const variant = powerTask('quiet', 'choose-the-supply');
  const reversed = Object.entries(powerModelAnswer(variant).verdicts).find(
    ([, verdict]) => verdict === 'wrong-polarity',
  );
  benchFor(variant);
  await press('Hand control: not connected. Connect it.');
  await user.click(screen.getByRole('button', { name: 'Table' }));
  await press(`Plug in supply ${reversed?.[0] ?? ''}`);
  await press('Switch on');
  const said = screen.getAllByRole('status').map(({ textContent }) => textContent);
  expect(said.join(' ')).toContain('−12.0 V');
  expect(said.join(' ')).not.toContain('may not survive');
  // What happened has happened: the switch stays on, whatever is taken back.
  await press('Undo');
  expect(screen.getByRole('button', { name: 'Switch off' })).toBeTruthy();
});

test('what is still missing is said in words until the work can be handed in', () => {
  const variant = powerTask('missing', 'last-the-night');
  expect(powerParts.missing(emptyPowerDraft, variant)).toBe(
    'the mean current; the run time; the volts while slewing; whether it starts afresh; your plan',
  );
  expect(powerParts.submissionOf(emptyPowerDraft, variant)).toBeNull();
  const done = powerModelAnswer(variant);
  expect(powerParts.missing(done, variant)).toBe('');
  expect(powerParts.submissionOf(done, variant)).toEqual(done);
});

test('a draft that is none is not taken up', () => {
  expect(powerParts.readDraft({ actions: 'none' })).toBeNull();
  expect(powerParts.readDraft(emptyPowerDraft)).toEqual(emptyPowerDraft);
});

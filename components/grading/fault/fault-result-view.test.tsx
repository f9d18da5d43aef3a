import { readFileSync } from 'node:fs';
import path from 'node:path';
import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { wholeFaultView } from '@/components/lab/fault/fault-view';
import { decodeCatalogue } from '@/lib/sky/catalogue';
import { faultResult, faultyEvening } from '@/tests/support/faulty-evening';
import { FaultResultView } from './fault-result-view';

const catalogue = decodeCatalogue(
  JSON.parse(readFileSync(path.join(process.cwd(), 'content/stars/catalogue.json'), 'utf8')),
);
const variant = wholeFaultView(faultyEvening(), { placeName: 'Testham', catalogue });
afterEach(cleanup);

test('a found fault is said, with the line of the card that shows it and what each look cost', () => {
  render(<FaultResultView variant={variant} result={faultResult()} />);
  expect(screen.getByText('You found it: the summer-time hour.')).toBeTruthy();
  const marked = screen.getByText('here it is').closest('tr');
  expect(marked?.textContent).toBe('Summer timehere it isyesno');
  const marks = within(screen.getByRole('table', { name: 'The mark, part by part' }));
  expect(marks.getByText('Test slew to Capella')).toBeTruthy();
  expect(screen.getByText('That is what you named.')).toBeTruthy();
});

test('a look-alike counts, and is named as one', () => {
  render(
    <FaultResultView
      variant={variant}
      result={faultResult({ named: 'time-zone', alike: ['summer-time', 'time-zone'] })}
    />,
  );
  expect(
    screen.getByText(
      'That counts. You named “The time zone”, and it was “The summer-time hour”: tonight the two look the same.',
    ),
  ).toBeTruthy();
  expect(screen.queryByText(/What tells/)).toBeNull();
});

test('a wrong name is set against the evidence that tells the two apart', () => {
  render(
    <FaultResultView
      variant={variant}
      result={faultResult({
        named: 'base-not-level',
        cure: 'level-the-base',
        looked: [],
        testSlew: null,
        tellTale: 'card',
      })}
    />,
  );
  expect(
    screen.getByText('It was “The summer-time hour”. You named “The base off level”.'),
  ).toBeTruthy();
  expect(screen.getByText(/Here: the settings card\.$/)).toBeTruthy();
  expect(
    screen.getByRole('heading', {
      name: 'What tells “The summer-time hour” from “The base off level”: the settings card',
    }),
  ).toBeTruthy();
  expect(screen.getByText(/absorbed by a two-star alignment/)).toBeTruthy();
});

test('what told the two apart and lay open is said to have lain there', () => {
  render(
    <FaultResultView
      variant={variant}
      result={faultResult({ named: 'compass-north', tellTale: 'second' })}
    />,
  );
  expect(screen.getByText(/lay before you: the second slew/)).toBeTruthy();
});

test('a cure with a danger carries its caution', () => {
  render(
    <FaultResultView
      variant={variant}
      result={faultResult({
        fault: 'finder-off',
        named: 'finder-off',
        alike: ['finder-off'],
        rightCures: ['set-the-finder'],
      })}
    />,
  );
  expect(screen.getByText(/one look at the Sun blinds/)).toBeTruthy();
  expect(screen.getByText(/It leaves this fault as it is/)).toBeTruthy();
});

describe('the test slew', () => {
  const [capella] = variant.testSlews;
  if (capella === undefined) throw new Error('no test slew');
  const slewPanel = () =>
    within(
      screen.getByRole('heading', { name: 'Your test slew' }).closest('section') ?? document.body,
    );

  test('is drawn with what the fault made of it, when the fault was found', () => {
    render(<FaultResultView variant={variant} result={faultResult()} />);
    const panel = slewPanel();
    expect(panel.getByText('Capella')).toBeTruthy();
    expect(panel.getByText(/that is “The summer-time hour”/)).toBeTruthy();
    expect(panel.getByText('10.1° too far right along the horizon, 7.3° too low')).toBeTruthy();
    expect(panel.queryByText(/would have put it/)).toBeNull();
  });

  test('stands beside what the named fault would have done, and says what that teaches', () => {
    render(
      <FaultResultView
        variant={variant}
        result={faultResult({
          named: 'base-not-level',
          tellTale: 'card',
          namedSlew: { ...capella, rightDeg: 0.4, upDeg: -2.1 },
        })}
      />,
    );
    const panel = slewPanel();
    expect(panel.getByText(/Where “The base off level” would have put it/)).toBeTruthy();
    expect(panel.getByText('0.4° too far right along the horizon, 2.1° too low')).toBeTruthy();
    // √((10.1 − 0.4)² + (7.25 − 2.1)²) = 10.98
    expect(
      panel.getByText(/^The two lie 11\.0° apart\. Before a test slew, say where/),
    ).toBeTruthy();
  });

  test('that the named fault would not have let happen says so', () => {
    render(
      <FaultResultView
        variant={variant}
        result={faultResult({ named: 'date', tellTale: 'test-slew', namedSlew: null })}
      />,
    );
    expect(screen.getByText(/^nowhere: the mount would have taken this star/)).toBeTruthy();
    expect(screen.getByText(/because it was not “The date”/)).toBeTruthy();
    expect(screen.queryByRole('heading', { name: 'Your test slew' })).toBeNull();
  });

  test('of an answer from before the named fault was run shows where it landed', () => {
    render(
      <FaultResultView
        variant={variant}
        result={faultResult({ named: 'base-not-level', tellTale: 'card' })}
      />,
    );
    expect(slewPanel().queryByText(/would have put it/)).toBeNull();
  });

  test('that was not made has no panel of its own', () => {
    render(<FaultResultView variant={variant} result={faultResult({ testSlew: null })} />);
    expect(screen.queryByRole('heading', { name: 'Your test slew' })).toBeNull();
  });
});

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
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
  expect(screen.getByText(/^That counts: the time zone looks the same tonight/)).toBeTruthy();
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
    screen.getByText('It was the summer-time hour. You named the base off level.'),
  ).toBeTruthy();
  expect(screen.getByText(/Here: the settings card\.$/)).toBeTruthy();
  expect(
    screen.getByRole('heading', {
      name: 'What tells the summer-time hour from the base off level: the settings card',
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

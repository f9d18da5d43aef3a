import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import type { OperatorOptions } from '@/lib/alignment/perfect-operator';
import { randomRunNights } from '@/tests/support/run-nights';
import { resultOf } from '@/tests/support/run-robot';
import { markText } from '../mark-text';
import { RunResultView } from './run-result-view';

afterEach(cleanup);

const nights = [...randomRunNights('debrief', 3, [30, 60])];
const [wren, heron] = nights;
if (wren === undefined || heron === undefined) throw new Error('no nights');

function show(options: OperatorOptions = {}, night = wren) {
  if (night === undefined) throw new Error('no night');
  const result = resultOf(night, options);
  render(<RunResultView variant={night.variant} result={result} />);
  return result;
}

const meant = (name: string) =>
  within(screen.getByRole('table', { name: `What was confirmed as ${name}` }));

test.each(nights)('a perfect run is told as one: $variant.kit.name', (night) => {
  const result = show({}, night);
  expect(result.total).toBeGreaterThan(99.999);
  expect(screen.getByText(/^Nothing to change/)).toBeTruthy();
  expect(screen.getByRole('meter', { name: 'Mark' }).getAttribute('aria-valuetext')).toMatch(
    /^100 of 100|^99\.9/,
  );
  for (const { name } of result.stars) {
    expect(
      screen.getByText(`It was the right star: ${name}, in the middle of the eyepiece.`),
    ).toBeTruthy();
    expect(meant(name).getByText(/^Kept/)).toBeTruthy();
    expect(meant(name).getByText(`${name} in the middle`)).toBeTruthy();
  }
  expect(screen.getByText(/^These two agree to/)).toBeTruthy();
  expect(screen.getByText(/so you judged it rightly/)).toBeTruthy();
  expect(screen.getByRole('img', { name: /^Achieved error map\. Miss from/ })).toBeTruthy();
  expect(screen.getByRole('img', { name: /^Expected error map\. Expected miss/ })).toBeTruthy();
});

test('marks stand part by part, with what each is worth', () => {
  const result = show();
  const rows = within(screen.getByRole('table', { name: 'The mark, part by part' })).getAllByRole(
    'row',
  );
  expect(rows).toHaveLength(result.criteria.length + 1);
});

test('the wrong star is named for what it was, and drawn where it stood', () => {
  const other = wren.variant.thirdHips[0];
  if (other === undefined) throw new Error('no other star');
  const result = show({ first: { instead: { hip: other } } });
  const [first] = result.stars;
  if (first === undefined || first.reallyName === null) throw new Error('no first star');
  expect(first.right).toBe(false);
  expect(
    screen.getByText(
      new RegExp(
        `^It was the wrong star: ${first.reallyName} was in the eyepiece, and ${first.name} was .* away`,
      ),
    ),
  ).toBeTruthy();
  expect(meant(first.name).getByText(new RegExp(`^${first.reallyName} `))).toBeTruthy();
  const eyepiece = screen.getByRole('img', {
    name: new RegExp(`^The eyepiece when ${first.name}`),
  });
  expect(within(eyepiece).getByText(first.reallyName)).toBeTruthy();
  // The one that was meant is far away: it is not drawn where it was not, but the way to it is shown.
  expect(within(eyepiece).queryByText(first.name)).toBeNull();
  expect(within(eyepiece).getByText(`to ${first.name}`)).toBeTruthy();
  const way = screen.getByRole('img', {
    name: new RegExp(`^Where the tube pointed beside ${first.name}`),
  });
  expect(within(way).getByText(first.name)).toBeTruthy();
  expect(within(way).getByText(first.reallyName)).toBeTruthy();
});

test('a star that was never in the eyepiece is told once, and lies in the picture of the way there', () => {
  const result = show({ first: { offByShareOfField: 5, offTowardsDeg: 90 } });
  const [first] = result.stars;
  if (first === undefined) throw new Error('no first star');
  expect(first.reallyName).toBeNull();
  expect(
    screen.getByText(
      new RegExp(`^No star was in the eyepiece, .* ${first.name} was \\d\\.\\d° away`),
    ),
  ).toBeTruthy();
  expect(screen.queryByText(/not the star that was meant/)).toBeNull();
  expect(meant(first.name).getByText('no star')).toBeTruthy();
  // Wren's field reaches 75′, so five times that; the picture holds it and the field around it.
  const reach = /reaches (\d+\.\d)° from the star/.exec(document.body.textContent)?.[1];
  expect(Number(reach)).toBeGreaterThan((first.offsetArcmin + first.fieldRadiusArcmin) / 60);
});

test('a star half a field off is drawn there, as this tube shows it', () => {
  // Half a field to the right of the star: the star is to the left of the tube, and in a reflector's
  // turned view to the right (design, "Field").
  const result = show({ second: { offByShareOfField: 0.5, offTowardsDeg: 90 } }, heron);
  expect(result.advice.code).toBe('off-centre');
  const [, second] = result.stars;
  if (second === undefined) throw new Error('no second star');
  expect(
    meant(second.name).getByText(`${second.name} towards 3 o’clock, 5 tenths of the way out`),
  ).toBeTruthy();
});

test('a centring that ended on the wrong side is told by what the play took', () => {
  const result = show({ first: { againstFinalApproach: true } });
  const [first] = result.stars;
  if (first === undefined) throw new Error('no first star');
  expect(meant(first.name).getByText(/^Not kept/)).toBeTruthy();
});

describe('the replay', () => {
  test('opens with the whole path and can be stepped through by number and by button', () => {
    const result = show();
    const [first] = result.stars;
    if (first === undefined) throw new Error('no first star');
    const slider = screen.getByRole('slider', { name: `Follow the path to ${first.name}` });
    expect(slider.getAttribute('aria-valuetext')).toMatch(
      /^When it was confirmed: (less than )?0\.\d′ from/,
    );
    fireEvent.change(slider, { target: { value: '0' } });
    expect(slider.getAttribute('aria-valuetext')).toMatch(/ s before it was confirmed: /);
    const [on] = screen.getAllByRole('button', { name: 'One on' });
    if (on === undefined) throw new Error('no button');
    fireEvent.click(on);
    expect(slider).toHaveProperty('value', '1');
  });

  test('runs by itself only for who has not asked for less motion', () => {
    show();
    for (const play of screen.getAllByRole('button', { name: 'Play' }))
      expect(play.className).toContain('motion-reduce:hidden');
  });
});

test('a failed gate is named before everything else', () => {
  const result = resultOf(wren);
  render(
    <RunResultView
      variant={wren.variant}
      result={{
        ...result,
        gates: [{ id: 'sun', atMs: 65_000, distanceDeg: 12 }],
        advice: { code: 'sun', distanceDeg: 12 },
      }}
    />,
  );
  expect(screen.getByText('Not yet: too close to the Sun')).toBeTruthy();
  expect(screen.getByText(/One look at the Sun through a telescope blinds/)).toBeTruthy();
  // What the parts earned is still shown: the gate decides, not the sum.
  expect(screen.getByText(`${markText(result.total)} of 100`)).toBeTruthy();
});

test('a run that came to nothing shows what there is', () => {
  const result = resultOf(wren);
  render(
    <RunResultView
      variant={wren.variant}
      result={{
        ...result,
        stars: [],
        outcome: null,
        pair: { chosen: null, best: null },
        achievedHitRate: null,
        perfectHitRate: null,
        achieved: [],
        third: null,
        judgement: null,
        advice: { code: 'well-done' },
      }}
    />,
  );
  expect(screen.getByText(/there was no alignment\.$/)).toBeTruthy();
  expect(screen.getByText('You gave no judgement.')).toBeTruthy();
  expect(screen.queryByText(/NaN|Infinity|undefined/)).toBeNull();
});

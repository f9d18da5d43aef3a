import { cleanup, render } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { SignOffForm } from './sign-off-form';
import { SignOffLegend } from './sign-off-grid';

afterEach(cleanup);

test.each([
  [3, 'Level 3 or above on 2 evenings signs off', 'evenings at level 3 or above with no gate'],
  [4, 'Level 4 on 2 evenings signs off', 'evenings at level 4 with no gate'],
] as const)('paper and grid say what signs off at level %i', (needed, onPaper, inGrid) => {
  const sheet = { id: 'wren', name: 'Wren', telescope: null, students: [] };
  const { container } = render(
    <>
      <SignOffForm sheet={sheet} className="9b" needed={needed} notes={[]} />
      <SignOffLegend needed={needed} />
    </>,
  );
  expect(container.textContent).toContain(onPaper);
  expect(container.textContent).toContain(inGrid);
});

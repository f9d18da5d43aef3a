import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { GivenBackNotice } from './given-back-notice';

afterEach(cleanup);

test('work that was given back promises another attempt only while one can be started', () => {
  const { rerender } = render(<GivenBackNotice step="start" />);
  expect(screen.getByText(/gives you one more attempt/)).toBeTruthy();
  rerender(<GivenBackNotice step="too-late" />);
  expect(screen.getByText(/but the due time is over: ask for more time/)).toBeTruthy();
  expect(screen.queryByText(/one more attempt/)).toBeNull();
});

import { cleanup, createEvent, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, expect, test, vi } from 'vitest';
import { LabFrame } from './lab-frame';

afterEach(cleanup);

const frame = (status: string) => (
  <LabFrame
    status={status}
    scene={<p>scene</p>}
    controls={<p>controls</p>}
    summary="Do it"
    sheetOpen
    onSheetOpen={vi.fn<(open: boolean) => void>()}
    panel={<p>panel</p>}
  />
);

test('the status line is there before it has anything to say, and is the same line afterwards', () => {
  const { rerender } = render(frame(''));
  const line = screen.getByRole('status');
  expect(line.textContent).toBe('');
  rerender(frame('The mount stands.'));
  expect(screen.getByRole('status')).toBe(line);
  expect(line.textContent).toBe('The mount stands.');
});

test('text that is selected somewhere is not dragged out of scene and controls, only out of the panel', () => {
  render(frame(''));
  const stopped = (text: string): boolean => {
    const part = screen.getByText(text);
    const event = createEvent.dragStart(part);
    fireEvent(part, event);
    return event.defaultPrevented;
  };
  expect(stopped('scene')).toBe(true);
  expect(stopped('controls')).toBe(true);
  expect(stopped('panel')).toBe(false);
});

import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test, vi } from 'vitest';
import { ClassNav } from './class-nav';

vi.mock('next/navigation', () => ({ usePathname: () => '/c/sign-off' }));

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

test('a row wider than the phone opens with the current page in its middle', () => {
  vi.spyOn(Element.prototype, 'getBoundingClientRect').mockImplementation(function (this: Element) {
    return this.tagName === 'A' ? new DOMRect(534, 0, 80, 44) : new DOMRect(0, 0, 390, 44);
  });
  const labels = ['Live', 'Sign-off'].map((label) => ({
    href: `/c/${label.toLowerCase()}`,
    label,
  }));
  render(<ClassNav groups={[labels]} />);
  // The link's middle, 534 + 40, comes to the row's, 195.
  expect(screen.getByRole('navigation', { name: 'Class' }).scrollLeft).toBe(574 - 195);
});

import { expect, test, vi } from 'vitest';
import { FollowingView } from './following-view';

test('a view that is led by the tube says nothing; one that a hand turns says so', () => {
  const turned = vi.fn<() => void>();
  const view = new FollowingView({ azimuthDeg: 40, altitudeDeg: 20 }, turned);
  view.lookAt(80, 30);
  view.zoomBy(0.8);
  expect(turned).not.toHaveBeenCalled();
  view.turnBy(10, 0);
  view.dragBy(30, 0);
  expect(turned).toHaveBeenCalledTimes(2);
});

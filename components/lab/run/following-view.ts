import { SkyView } from '@/components/sky/sky-view';

/** A view that follows the tube until a hand turns it elsewhere. */
export class FollowingView extends SkyView {
  constructor(
    start: { azimuthDeg: number; altitudeDeg: number },
    /** Called when drag, key or button has turned it; `lookAt` alone does not. */
    private readonly onTurnedByHand: () => void,
  ) {
    super(start);
  }

  override dragBy(dxPx: number, dyPx: number): void {
    super.dragBy(dxPx, dyPx);
    this.onTurnedByHand();
  }

  override turnBy(azimuthDeg: number, altitudeDeg: number): void {
    super.turnBy(azimuthDeg, altitudeDeg);
    this.onTurnedByHand();
  }
}

import { describe, expect, test } from 'vitest';
import { PerspectiveCamera, Vector3 } from 'three';
import { mouseReachPx, pickLight } from './pick-light';
import { projectToScreen } from './project';
import type { SkyLight } from './sky-lights';
import { highestLookDeg, narrowestFieldDeg, SkyView, widestFieldDeg } from './sky-view';
import { cameraTurn, scenePoint } from './to-scene';

function viewOf(azimuthDeg: number, altitudeDeg: number, widthPx = 1280, heightPx = 720): SkyView {
  const view = new SkyView({ azimuthDeg, altitudeDeg });
  view.resize(widthPx, heightPx);
  return view;
}

describe('looking around', () => {
  test('350° turned by 20° reads 10°', () => {
    const view = viewOf(350, 20);
    view.turnBy(20, 0);
    expect(view.wanted().azimuthDeg).toBeCloseTo(10, 10);
  });

  test('no turn goes over the zenith and no zoom past its ends', () => {
    const view = viewOf(0, 80);
    view.turnBy(0, 50);
    view.zoomBy(100);
    expect(view.wanted()).toMatchObject({ altitudeDeg: highestLookDeg, fieldDeg: widestFieldDeg });
    view.zoomBy(1e-4);
    expect(view.wanted().fieldDeg).toBe(narrowestFieldDeg);
  });

  test('a glide takes the short way through north and comes to rest', () => {
    const view = viewOf(350, 20);
    view.lookAt(10, 20);
    view.step(0.05);
    expect(view.azimuthDeg > 350 || view.azimuthDeg < 10).toBe(true);
    let frames = 0;
    while (view.step(0.016)) frames += 1;
    expect(frames).toBeLessThan(120);
    expect(view.azimuthDeg).toBe(10);
  });

  test('with less motion wanted a turn is instant', () => {
    const view = viewOf(0, 10);
    view.preferLessMotion(true);
    view.lookAt(120, 40);
    expect(view.step(0.001)).toBe(false);
    expect([view.azimuthDeg, view.altitudeDeg]).toEqual([120, 40]);
  });

  test('dragging keeps the sky under the hand', () => {
    const view = viewOf(180, 0);
    const before = projectToScreen(view, 182, 3);
    view.dragBy(40, 25);
    const after = projectToScreen(view, 182, 3);
    expect((after?.x ?? 0) - (before?.x ?? 0)).toBeCloseTo(40, -0.5);
    expect((after?.y ?? 0) - (before?.y ?? 0)).toBeCloseTo(25, -0.5);
  });
});

test.each([
  [0, 0, 1280, 720],
  [200, 35, 1280, 720],
  [91, 70, 390, 600],
])(
  'the picture’s geometry is that of the camera, looking to %d°, %d°',
  (azimuth, altitude, width, height) => {
    const view = viewOf(azimuth, altitude, width, height);
    const camera = new PerspectiveCamera(view.verticalFieldDeg(), width / height, 1, 200);
    const turn = cameraTurn(azimuth, altitude);
    camera.rotation.set(turn.aboutX, turn.aboutY, 0, 'YXZ');
    camera.updateMatrixWorld();
    for (const [dAzimuth, dAltitude] of [
      [0, 0],
      [12, 5],
      [-9, -8],
    ] as const) {
      const clip = new Vector3(...scenePoint(azimuth + dAzimuth, altitude + dAltitude)).project(
        camera,
      );
      const point = projectToScreen(view, azimuth + dAzimuth, altitude + dAltitude);
      expect(point?.x).toBeCloseTo(((clip.x + 1) / 2) * width, 6);
      expect(point?.y).toBeCloseTo(((1 - clip.y) / 2) * height, 6);
    }
  },
);

describe('picking', () => {
  const light = (id: SkyLight['id'], azimuthDeg: number, seenAs: number): SkyLight => ({
    id,
    azimuthDeg,
    altitudeDeg: 20,
    seenAs,
    clarity: 1,
    colourIndex: null,
    veiled: false,
    twinkles: true,
    star: null,
    planet: null,
  });
  const view = viewOf(180, 20);
  const middle = { x: 640, y: 360 };

  test('takes the brighter of two that are equally near', () => {
    const lights = [light('hip-1', 179.5, 4), light('hip-2', 180.5, 1)];
    expect(pickLight(lights, view, middle, mouseReachPx)?.id).toBe('hip-2');
  });

  test('takes what is under the pointer before a slightly brighter one beside it', () => {
    const lights = [light('hip-1', 180, 3), light('hip-2', 181.3, 2)];
    expect(pickLight(lights, view, middle, mouseReachPx)?.id).toBe('hip-1');
  });

  test('takes nothing out of reach and nothing behind one’s back', () => {
    expect(pickLight([light('hip-1', 190, 0)], view, middle, mouseReachPx)).toBeNull();
    expect(pickLight([light('hip-1', 0, 0)], view, middle, 1e6)).toBeNull();
  });
});

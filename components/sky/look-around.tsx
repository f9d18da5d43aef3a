'use client';

import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import type { WebGLRenderer } from 'three';
import { PerspectiveCamera } from 'three';
import type { SkyView } from './sky-view';
import { cameraTurn } from './to-scene';

/** Slower than this while turning, and the picture is drawn coarser until it rests. */
const slowFrameSeconds = 1 / 36;
const coarseShare = 0.55;
/** After this long without a turn the picture is drawn at full sharpness again. */
const restMs = 160;

type Turning = {
  azimuthDeg: number;
  altitudeDeg: number;
  fieldDeg: number;
  /** Frames turned in a row, and their mean length in seconds. */
  frames: number;
  pace: number;
  /** Once a slow device is known, turning starts coarse. */
  slow: boolean;
  full: number;
  coarse: boolean;
  /** The timer that waits for rest, 0 for none. */
  rest: number;
  turnedAtMs: number;
  awaitRest: () => void;
};

/** Coarser while a slow device turns, sharp when it rests. */
function keepPace(gl: WebGLRenderer, held: Turning, turning: boolean, delta: number): void {
  if (!held.coarse) held.full = gl.getPixelRatio();
  if (!turning) {
    held.frames = 0;
    return;
  }
  held.frames += 1;
  held.turnedAtMs = performance.now();
  // The first frame's length is the pause before it.
  if (held.frames > 1) held.pace = held.pace * 0.85 + Math.min(delta, 0.2) * 0.15;
  if (held.frames > 8 && held.pace > slowFrameSeconds) held.slow = true;
  if (held.slow && !held.coarse && held.frames > 1) {
    held.coarse = true;
    gl.setPixelRatio(held.full * coarseShare);
    held.awaitRest();
  }
}

/** Turns the camera where the view looks; asks for frames only while something moves. */
export function LookAround({ view }: { view: SkyView }) {
  const invalidate = useThree((state) => state.invalidate);
  const gl = useThree((state) => state.gl);
  const turn = useRef<Turning>({
    azimuthDeg: NaN,
    altitudeDeg: NaN,
    fieldDeg: NaN,
    frames: 0,
    pace: 1 / 60,
    slow: false,
    full: 1,
    coarse: false,
    rest: 0,
    turnedAtMs: 0,
    awaitRest: () => undefined,
  });
  useEffect(() => {
    const held = turn.current;
    const sharpen = (): void => {
      held.rest = 0;
      if (!held.coarse) return;
      if (performance.now() - held.turnedAtMs < restMs) {
        held.rest = window.setTimeout(sharpen, restMs);
        return;
      }
      held.coarse = false;
      gl.setPixelRatio(held.full);
      invalidate();
    };
    held.awaitRest = () => {
      if (held.rest === 0) held.rest = window.setTimeout(sharpen, restMs);
    };
    const stop = view.subscribe(() => {
      invalidate();
    });
    return () => {
      stop();
      window.clearTimeout(held.rest);
      held.rest = 0;
    };
  }, [view, gl, invalidate]);

  useFrame(({ camera }, delta) => {
    const held = turn.current;
    const gliding = view.step(delta);
    const turning =
      view.azimuthDeg !== held.azimuthDeg ||
      view.altitudeDeg !== held.altitudeDeg ||
      view.fieldDeg !== held.fieldDeg;
    held.azimuthDeg = view.azimuthDeg;
    held.altitudeDeg = view.altitudeDeg;
    held.fieldDeg = view.fieldDeg;
    keepPace(gl, held, turning, delta);

    const { aboutX, aboutY } = cameraTurn(view.azimuthDeg, view.altitudeDeg);
    camera.rotation.set(aboutX, aboutY, 0, 'YXZ');
    if (camera instanceof PerspectiveCamera) {
      const field = view.verticalFieldDeg();
      const aspect = view.widthPx / view.heightPx;
      if (camera.fov !== field || camera.aspect !== aspect) {
        camera.fov = field;
        camera.aspect = aspect;
        camera.updateProjectionMatrix();
      }
    }
    if (gliding) invalidate();
  }, -1);
  return null;
}

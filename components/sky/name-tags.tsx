'use client';

import { useFrame } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import type { Sprite } from 'three';
import { degreesToRadians } from '@/lib/units/angle';
import { canvasTexture } from './canvas-texture';
import { drawOrder } from './draw-order';
import type { SkyMark } from './sky-mark';
import type { SkyView } from './sky-view';
import { scenePoint } from './to-scene';

const heightPx = 30;
const font = '600 40px "Source Sans 3 Variable", system-ui, sans-serif';

function NameTag({ mark, label, view }: { mark: SkyMark; label: string; view: SkyView }) {
  const sprite = useRef<Sprite>(null);
  const tag = useMemo(() => {
    const measuring = document.createElement('canvas').getContext('2d');
    if (measuring === null) return null;
    measuring.font = font;
    const textWidth = Math.ceil(measuring.measureText(label).width);
    const widthPx = textWidth + 36;
    const texture = canvasTexture(widthPx, 60, (pen) => {
      pen.fillStyle = 'rgba(10, 14, 22, 0.66)';
      pen.beginPath();
      pen.roundRect(0, 2, widthPx, 56, 12);
      pen.fill();
      pen.font = font;
      pen.textBaseline = 'middle';
      pen.fillStyle = '#ffdca6';
      pen.fillText(label, 18, 32);
    });
    return texture === null ? null : { texture, aspect: widthPx / 60 };
  }, [label]);
  useEffect(
    () => () => {
      tag?.texture.dispose();
    },
    [tag],
  );
  useFrame(() => {
    if (sprite.current === null || tag === null) return;
    const perPixel = (2 * Math.tan(degreesToRadians(view.verticalFieldDeg()) / 2)) / view.heightPx;
    sprite.current.scale.set(heightPx * tag.aspect * perPixel, heightPx * perPixel, 1);
    // The tag hangs to the right of its star, clear of the ring.
    sprite.current.center.set(-28 / (heightPx * tag.aspect), 0.5);
  });
  if (tag === null) return null;
  const [x, y, z] = scenePoint(mark.azimuthDeg, mark.altitudeDeg);
  return (
    <sprite ref={sprite} position={[x, y, z]} renderOrder={drawOrder.nameTags}>
      <spriteMaterial
        map={tag.texture}
        transparent
        sizeAttenuation={false}
        depthTest={false}
        depthWrite={false}
        toneMapped={false}
      />
    </sprite>
  );
}

type NameTagsProps = { marks: readonly SkyMark[]; view: SkyView };

/** Names beside the stars that have been kept. */
export function NameTags({ marks, view }: NameTagsProps) {
  return marks.map((mark) =>
    mark.label === null ? null : (
      <NameTag
        key={`${mark.label}${String(mark.azimuthDeg)}`}
        mark={mark}
        label={mark.label}
        view={view}
      />
    ),
  );
}

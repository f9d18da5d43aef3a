import type { ReactNode } from 'react';
import type { ItemDrawing, Shape, Tone } from '@/lib/drawings/drawing';

type ShapePictureProps = { drawing: ItemDrawing; label: string; children?: ReactNode };

/** A drawing of the engine's own strokes, in the theme's tokens. */
export function ShapePicture({ drawing, label, children }: ShapePictureProps) {
  return (
    <svg
      viewBox={`0 0 ${String(drawing.width)} ${String(drawing.height)}`}
      role="img"
      aria-label={label}
      className="mx-auto block h-auto w-full max-w-[40rem]"
    >
      {drawing.shapes.map((shape, index) => (
        <Stroke key={index} shape={shape} />
      ))}
      {children}
    </svg>
  );
}

const token = (tone: Tone | undefined): string => (tone === undefined ? 'none' : `var(--${tone})`);

function Stroke({ shape }: { shape: Shape }) {
  if (shape.kind === 'text') {
    const { x, y, text, size = 14, tone = 'ink', anchor = 'start', bold = false } = shape;
    return (
      <text
        x={x}
        y={y}
        fontSize={size}
        textAnchor={anchor}
        fontWeight={bold ? 600 : 400}
        fill={token(tone)}
      >
        {text}
      </text>
    );
  }
  const look = {
    fill: shape.kind === 'line' ? 'none' : token(shape.fill),
    stroke: token(shape.stroke),
    strokeWidth: shape.width ?? 1.5,
    strokeDasharray: shape.dashed === true ? '4 3' : undefined,
    strokeLinecap: 'round',
    strokeLinejoin: 'round',
  } as const;
  switch (shape.kind) {
    case 'line':
      return <line x1={shape.x1} y1={shape.y1} x2={shape.x2} y2={shape.y2} {...look} />;
    case 'circle':
      return <circle cx={shape.cx} cy={shape.cy} r={shape.r} {...look} />;
    case 'rect':
      return (
        <rect x={shape.x} y={shape.y} width={shape.w} height={shape.h} rx={shape.round} {...look} />
      );
    case 'path':
      return <path d={shape.d} {...look} />;
  }
}

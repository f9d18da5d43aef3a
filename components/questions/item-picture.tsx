import type { ReactNode } from 'react';
import { classNames } from '@/components/ui/class-names';
import type { ItemDrawing, Shape, Tone } from '@/lib/drawings/drawing';
import { fillLook, strokeLook } from './tone-look';

type ItemPictureProps = {
  drawing: ItemDrawing;
  /** Laid over the drawing, in parts of its width and height. */
  children?: ReactNode;
};

/** A question's drawing in the theme's colours and, folded away, the same in words. */
export function ItemPicture({ drawing, children }: ItemPictureProps) {
  const { width, height, alternative, shapes } = drawing;
  return (
    <div className="keep-together my-3 max-w-[30rem] border-y-2 border-strong bg-panel">
      <div className="relative">
        <svg
          viewBox={`0 0 ${String(width)} ${String(height)}`}
          role="img"
          aria-label={alternative}
          className="block h-auto w-full"
        >
          {shapes.map((shape, index) => (
            <DrawnShape key={index} shape={shape} />
          ))}
        </svg>
        {children}
      </div>
      <details className="border-t border-line px-3 text-sm">
        <summary className="no-print flex min-h-(--target) items-center text-soft underline decoration-dotted underline-offset-4">
          The drawing in words
        </summary>
        {/* The drawing says it to a reader already. */}
        <p aria-hidden="true" className="max-w-measure pb-2">
          {alternative}
        </p>
      </details>
    </div>
  );
}

/** One stroke of a drawing in the theme’s colours. */
export function DrawnShape({ shape }: { shape: Shape }) {
  switch (shape.kind) {
    case 'line': {
      const { x1, y1, x2, y2 } = shape;
      return <line {...{ x1, y1, x2, y2 }} {...stroked(shape, 'ink')} />;
    }
    case 'circle': {
      const { cx, cy, r } = shape;
      return <circle {...{ cx, cy, r }} {...painted(shape)} />;
    }
    case 'rect': {
      const { x, y, w, h, round, turnDeg } = shape;
      const turn =
        turnDeg === undefined
          ? undefined
          : `rotate(${String(turnDeg)} ${String(x + w / 2)} ${String(y + h / 2)})`;
      return (
        <rect {...{ x, y }} width={w} height={h} rx={round} transform={turn} {...painted(shape)} />
      );
    }
    case 'path':
      return <path d={shape.d} {...painted(shape)} />;
    case 'text': {
      const { x, y, text, size = 14, tone = 'ink', anchor = 'start', bold = false } = shape;
      return (
        <text
          {...{ x, y }}
          fontSize={size}
          textAnchor={anchor}
          className={classNames(fillLook[tone], 'font-figures', bold && 'font-semibold')}
        >
          {text}
        </text>
      );
    }
  }
}

type Stroked = { stroke?: Tone; width?: number; dashed?: boolean };

function stroked({ stroke, width = 1.5, dashed = false }: Stroked, unless?: Tone) {
  const tone = stroke ?? unless;
  if (tone === undefined) return {};
  return {
    className: strokeLook[tone],
    strokeWidth: width,
    strokeDasharray: dashed ? `${String(3 * width)} ${String(2 * width)}` : undefined,
    strokeLinecap: 'round',
    strokeLinejoin: 'round',
  } as const;
}

/** Neither line nor fill named: a line in ink, so that nothing is drawn that nobody sees. */
function painted(shape: Stroked & { fill?: Tone }) {
  const line = stroked(shape, shape.fill === undefined ? 'ink' : undefined);
  return {
    ...line,
    className: classNames(
      shape.fill === undefined ? 'fill-none' : fillLook[shape.fill],
      line.className,
    ),
  };
}

import { DrawnShape } from '@/components/questions/item-picture';
import type { Shape } from '@/lib/drawings/drawing';

type DrawnProps = { width: number; height: number; shapes: readonly Shape[]; label: string };

/** A picture made of the same strokes as a question's drawing. */
export function Drawn({ width, height, shapes, label }: DrawnProps) {
  return (
    <svg
      viewBox={`0 0 ${String(width)} ${String(height)}`}
      role="img"
      aria-label={label}
      className="mx-auto block h-auto w-full max-w-[32rem]"
    >
      {shapes.map((shape, index) => (
        <DrawnShape key={index} shape={shape} />
      ))}
    </svg>
  );
}

import { classNames } from '@/components/ui/class-names';
import { upperRight, type Corner } from '@/lib/items/ring-names';

/** An open ring, so that what it points at stays in view. */
export function SpotRing({ chosen }: { chosen: boolean }) {
  return (
    <svg viewBox="0 0 44 44" aria-hidden="true" className="size-11">
      {/* Two rims: one of them is seen on paper and on sky alike. */}
      <circle cx="22" cy="22" r="12.5" className="fill-none stroke-panel" strokeWidth="5" />
      <circle
        cx="22"
        cy="22"
        r="12.5"
        className="fill-none stroke-ink"
        strokeWidth={chosen ? 4 : 2}
      />
    </svg>
  );
}

type SpotNameProps = { name: string; corner?: Corner; chosen: boolean };

/** The ring's name, on that corner of it: 11 px aside and up or down from its middle. */
export function SpotName({ name, corner = upperRight, chosen }: SpotNameProps) {
  const x = 22 + 11 * corner.right;
  const y = 22 + 11 * corner.down;
  return (
    <svg viewBox="0 0 44 44" aria-hidden="true" className="size-11">
      <circle
        cx={x}
        cy={y}
        r="8.5"
        strokeWidth="1.5"
        className={classNames(chosen ? 'fill-(--lamp)' : 'fill-panel', 'stroke-ink')}
      />
      <text
        x={x}
        y={y + 4.5}
        textAnchor="middle"
        className={classNames(
          chosen ? 'fill-on-accent' : 'fill-ink',
          'text-[13px] font-semibold select-none',
        )}
      >
        {name}
      </text>
    </svg>
  );
}

import { contactRoom } from './bench-layout';

type BayContactsProps = { springTop: boolean; tight: boolean; width: number; height: number };

/** A spring for the minus end, a plate for the plus end. A cell presses the spring together. */
export function BayContacts({ springTop, tight, width, height }: BayContactsProps) {
  const long = tight ? contactRoom : contactRoom * 2;
  const turns = Array.from({ length: 5 }, (_, i) => {
    const depth = ((i + 0.5) / 5) * long;
    return `L${String(width / 2 + (i % 2 === 0 ? -9 : 9))} ${String(springTop ? depth : height - depth)}`;
  }).join(' ');
  return (
    <g fill="none" stroke="var(--on-sky-soft)" strokeWidth="2">
      <path d={`M${String(width / 2)} ${String(springTop ? 0 : height)} ${turns}`} />
      <path
        d={`M${String(width / 2 - 10)} ${String(springTop ? height - 4 : 4)} h20`}
        strokeWidth="4"
      />
    </g>
  );
}

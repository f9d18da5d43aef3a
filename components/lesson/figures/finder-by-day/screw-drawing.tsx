import type { FieldOffset } from '@/lib/optics/image-orientation';

/** Drawing's units an arcminute. */
const unit = 2;

/** The finder's window from behind: a spire whose tip is centred in the eyepiece, and the dot. */
export function ScrewDrawing({ dot, label }: { dot: FieldOffset; label: string }) {
  return (
    <svg
      viewBox="-110 -80 220 160"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[30rem]"
    >
      <rect
        x="-106"
        y="-76"
        width="212"
        height="152"
        rx="12"
        className="fill-sky stroke-strong"
        strokeWidth="3"
      />
      <path d="M-106 60H106V76H-106Z" className="fill-[var(--land)]" />
      <path d="M0 0 14 62H-14Z" className="fill-on-sky-soft stroke-on-sky" strokeWidth="1" />
      <path d="M-8 0H8M0-8V8" className="stroke-sky-line" strokeWidth="1" />
      <circle
        cx={(dot.rightArcmin * unit).toFixed(2)}
        cy={(-dot.upArcmin * unit).toFixed(2)}
        r="4.5"
        className="fill-sky-lamp stroke-sky"
        strokeWidth="1.2"
      />
      <text
        x={(dot.rightArcmin * unit).toFixed(2)}
        y={(-dot.upArcmin * unit - 8).toFixed(2)}
        textAnchor="middle"
        className="fill-sky-lamp stroke-sky text-[9px] font-bold [paint-order:stroke]"
        strokeWidth="2"
      >
        dot
      </text>
    </svg>
  );
}

/** Lines across, so that what is not right is told without colour and on paper. */
const hatched = 'repeating-linear-gradient(45deg, var(--strong) 0 2px, transparent 2px 6px)';

/** A share beside its number, which stands in the next cell: for the eye alone. */
export function ShareBar({ share, tone = 'good' }: { share: number; tone?: 'good' | 'wrong' }) {
  const percent = Math.min(100, Math.max(0, 100 * share));
  return (
    <span aria-hidden="true" className="block h-3.5 w-full min-w-16 border border-line bg-panel">
      <span
        className={
          tone === 'good'
            ? 'block h-full border-e-2 border-ink bg-accent [print-color-adjust:exact] print:bg-[#999999]'
            : 'block h-full border-e-2 border-ink [print-color-adjust:exact]'
        }
        style={{
          width: `${String(percent)}%`,
          ...(percent === 0 ? { display: 'none' } : {}),
          ...(tone === 'wrong' ? { backgroundImage: hatched } : {}),
        }}
      />
    </span>
  );
}

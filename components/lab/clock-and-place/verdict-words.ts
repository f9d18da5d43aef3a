import type { ClockVerdict } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';

/** How often the clocks of that night showed a time. */
export const verdictWords: Readonly<Record<ClockVerdict, string>> = {
  plain: 'once: it can be entered as it stands',
  skipped: 'never: the clocks jumped over it',
  twice: 'twice: it can mean two moments',
};

import { Notice } from './notice';

/**
 * The caution that stands wherever a telescope or a finder might be pointed.
 * `short` is for the foot of a lab, where the whole text has been read before.
 */
export function SunCaution({
  short = false,
  outside = false,
  className,
}: {
  short?: boolean;
  /** On a page that is used at the real telescope: the short text fits on one line of a phone. */
  outside?: boolean;
  className?: string;
}) {
  if (short) {
    return (
      <p className={`text-sm text-soft ${className ?? ''}`}>
        <strong className="font-semibold text-caution">Sun:</strong>{' '}
        {outside ? '' : 'at the real telescope, '}tube and finder stay capped until sunset.
      </p>
    );
  }
  return (
    <Notice tone="caution" title="The Sun blinds in an instant" className={className}>
      <p>
        Telescope and finder stay capped until the Sun has set. Never leave a telescope alone by
        day. Setting a finder by day is a job for an adult, or with an adult beside you: on a target
        well away from the Sun, with the telescope in the shadow of a building.
      </p>
    </Notice>
  );
}

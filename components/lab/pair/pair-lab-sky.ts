import type {
  CloudPatch,
  Eyepiece,
  HorizonPoint,
  ScenarioSettings,
  Telescope,
} from '@/lib/pointing/scenario';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import type { PairTemplate, PairVariant } from '@/lib/variants/pair-variant';

/** All that the lab and its result show of one variant. It holds no answer. */
export type PairLabSky = {
  catalogueVersion: string;
  frame: SkyFrame;
  horizon: readonly HorizonPoint[];
  clouds: readonly CloudPatch[];
  template: PairTemplate;
  givenHip: number | null;
  proposals: readonly number[] | null;
  kitName: string;
  placeName: string;
  /** "Saturday 5 December 2026, 19:30" at the place. */
  localTimeText: string;
  nakedEyeLimit: number;
  /** Magnitudes an air mass. */
  extinction: number;
  settings: ScenarioSettings;
  telescope: Telescope;
  eyepiece: Eyepiece;
};

/**
 * "2026-12-05T19:30" (an offset may follow) → "Saturday 5 December 2026, 19:30". The clock's own
 * figures are shown as they stand: reading them as UTC only serves to find the weekday.
 */
export function localTimeInWords(localTime: string): string {
  const [day = '', time = ''] = localTime.split('T');
  const at = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(at.getTime())) return localTime;
  const part = (options: Intl.DateTimeFormatOptions): string =>
    new Intl.DateTimeFormat('en-GB', { timeZone: 'UTC', ...options }).format(at);
  const date = [
    part({ weekday: 'long' }),
    part({ day: 'numeric' }),
    part({ month: 'long' }),
    part({ year: 'numeric' }),
  ].join(' ');
  return `${date}, ${time.slice(0, 5)}`;
}

/** What the lab needs of a variant, with the names that the variant does not carry. */
export function pairLabSky(
  variant: PairVariant,
  about: { kitName: string; placeName: string },
): PairLabSky {
  const { scenario } = variant;
  return {
    catalogueVersion: variant.catalogueVersion,
    frame: variant.frame,
    horizon: scenario.horizon,
    clouds: scenario.clouds,
    template: variant.template,
    givenHip: variant.givenHip,
    proposals: variant.proposals,
    kitName: about.kitName,
    placeName: about.placeName,
    localTimeText: localTimeInWords(scenario.localTime),
    nakedEyeLimit: variant.nakedEyeLimit,
    extinction: scenario.sky.extinction,
    settings: scenario.settings,
    telescope: scenario.telescope,
    eyepiece: scenario.eyepiece,
  };
}

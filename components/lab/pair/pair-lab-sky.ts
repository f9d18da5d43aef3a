import type {
  CloudPatch,
  Eyepiece,
  HorizonPoint,
  ScenarioSettings,
  Telescope,
} from '@/lib/pointing/scenario';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import type { PairTemplate, PairVariant } from '@/lib/variants/pair-variant';

/**
 * What the learner is asked. A night without any pair must not be told from one with, so to the
 * learner (and in the page's data) it is a free choice like the others.
 */
export type PairTask = Exclude<PairTemplate, 'none-usable' | 'cloud-bank'>;

const taskOfTemplate: Readonly<Record<PairTemplate, PairTask>> = {
  'free-pair': 'free-pair',
  'cloud-bank': 'free-pair',
  'none-usable': 'free-pair',
  partner: 'partner',
  'mount-proposes': 'mount-proposes',
};

/** All that the lab and its result show of one variant. It holds no answer. */
export type PairLabSky = {
  catalogueVersion: string;
  frame: SkyFrame;
  horizon: readonly HorizonPoint[];
  clouds: readonly CloudPatch[];
  task: PairTask;
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
    task: taskOfTemplate[variant.template],
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

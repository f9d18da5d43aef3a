import { rightSettings } from '@/lib/clock/entered-settings';
import type { Evidence, Landing, SettingsCard } from '@/lib/faults/evidence';
import { settingsCard } from '@/lib/faults/settings-card';
import { fieldRadiusArcmin } from '@/lib/pointing/field-radius';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { faultSeen, starPlaces, type FaultSeen } from '@/lib/variants/fault-seen';
import { looks, type FaultVariant, type Look } from '@/lib/variants/fault-variant';

/** What is certain of the evening: a right clock and a map, not what was entered. */
export type EveningFacts = {
  placeName: string;
  /** What a card without any mistake would say. */
  right: SettingsCard;
};

/**
 * What the lab shows of one variant, and all that its page holds: no answer, and of the evidence only
 * what lies open or has been asked for. The rest stays on the server.
 */
export type FaultView = Pick<FaultVariant, 'template' | 'open' | 'faults' | 'cures' | 'kit'> & {
  facts: EveningFacts;
  /** The stars that a test slew may be sent to, not where it would land. */
  testSlews: readonly Pick<Landing, 'hip' | 'name'>[];
  /** Of the eyepiece the targets are looked at with. */
  fieldRadiusArcmin: number;
  /** A computer that solves for the altitude zero tells what it found. */
  solvesForZero: boolean;
} & FaultSeen;

/** The same with all the evidence and where every test slew would land, for once it is answered. */
export type WholeFaultView = Omit<FaultView, 'evidence' | 'testSlews'> & {
  evidence: Evidence;
  testSlews: readonly Landing[];
};

type About = { placeName: string; catalogue: StarCatalogue };

/** What the lab needs of a variant, with what the variant does not carry. */
export function faultView(
  variant: FaultVariant,
  {
    seen = { looked: [], testSlew: null },
    ...about
  }: About & {
    /** What has been asked for so far, as the server knows it. */
    seen?: { looked: readonly Look[]; testSlew: number | null };
  },
): FaultView {
  const { testSlews, frame, open } = variant;
  const shown = faultSeen(
    variant,
    { looked: [...open, ...seen.looked], testSlew: seen.testSlew },
    about.catalogue,
  );
  const stars = testSlews.map(({ hip }) => hip);
  return {
    ...commonView(variant, about.placeName),
    ...shown,
    testSlews: testSlews.map(({ hip, name }) => ({ hip, name })),
    places: { ...shown.places, ...starPlaces(stars, frame, about.catalogue) },
  };
}

/** Everything, for the result. */
export function wholeFaultView(variant: FaultVariant, about: About): WholeFaultView {
  const { evidence, testSlews } = variant;
  const view = faultView(variant, { ...about, seen: { looked: looks, testSlew: null } });
  return { ...view, evidence, testSlews };
}

function commonView(variant: FaultVariant, placeName: string) {
  const { scenario, frame, template, open, faults, cures, kit } = variant;
  const { telescope, eyepiece, place } = scenario;
  return {
    template,
    open,
    faults,
    cures,
    kit,
    facts: {
      placeName,
      right: settingsCard(rightSettings(frame.instant, place, scenario.timeZone)),
    },
    fieldRadiusArcmin: fieldRadiusArcmin(telescope, eyepiece),
    solvesForZero: telescope.computer === 'solved-zero',
  };
}

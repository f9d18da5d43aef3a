import { rightSettings } from '@/lib/clock/entered-settings';
import type { FaultVariant } from '@/lib/variants/fault-variant';
import { fieldRadiusArcmin } from '@/lib/pointing/field-radius';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { placeCatalogue } from '@/lib/sky/star-places';
import type { Landing, SettingsCard } from '@/lib/faults/evidence';
import { settingsCard } from '@/lib/faults/settings-card';

/** Where a star stood when the evening began, for words and drawings. */
export type StarPlace = { azimuthDeg: number; altitudeDeg: number };

/** What is certain of the evening: a right clock and a map, not what was entered. */
export type EveningFacts = {
  placeName: string;
  /** What a card without any mistake would say. */
  right: SettingsCard;
};

/** All that the lab and its result show of one variant. It holds no answer. */
export type FaultView = Pick<
  FaultVariant,
  'template' | 'evidence' | 'open' | 'testSlews' | 'faults' | 'cures' | 'kit'
> & {
  facts: EveningFacts;
  /** By HIP number, for the stars that the telescope was sent to. */
  places: Readonly<Record<number, StarPlace>>;
  /** Of the eyepiece the targets are looked at with. */
  fieldRadiusArcmin: number;
  /** A computer that solves for the altitude zero tells what it found. */
  solvesForZero: boolean;
};

/** What the lab needs of a variant, with what the variant does not carry. */
export function faultView(
  variant: FaultVariant,
  about: { placeName: string; catalogue: StarCatalogue },
): FaultView {
  const { scenario, evidence, frame } = variant;
  const { telescope, eyepiece, place } = scenario;
  const landings: readonly Landing[] = [
    evidence.first,
    evidence.second,
    ...evidence.later,
    ...variant.testSlews,
  ];
  return {
    template: variant.template,
    evidence,
    open: variant.open,
    testSlews: variant.testSlews,
    faults: variant.faults,
    cures: variant.cures,
    kit: variant.kit,
    facts: {
      placeName: about.placeName,
      right: settingsCard(rightSettings(frame.instant, place, scenario.timeZone)),
    },
    places: placesOf(variant, about.catalogue, new Set(landings.map(({ hip }) => hip))),
    fieldRadiusArcmin: fieldRadiusArcmin(telescope, eyepiece),
    solvesForZero: telescope.computer === 'solved-zero',
  };
}

function placesOf(
  variant: FaultVariant,
  catalogue: StarCatalogue,
  wanted: ReadonlySet<number>,
): Record<number, StarPlace> {
  const { azimuthDeg, altitudeDeg } = placeCatalogue(catalogue, variant.frame);
  const places: Record<number, StarPlace> = {};
  catalogue.stars.forEach(({ hip }, index) => {
    if (!wanted.has(hip)) return;
    places[hip] = {
      azimuthDeg: azimuthDeg[index] ?? 0,
      altitudeDeg: altitudeDeg[index] ?? 0,
    };
  });
  return places;
}

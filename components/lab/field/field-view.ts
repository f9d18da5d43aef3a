import { blurArcmin } from '@/lib/optics/focus';
import { asSeen } from '@/lib/optics/image-orientation';
import { trueFieldArcmin } from '@/lib/optics/true-field';
import type { FieldDraft } from '@/lib/grading/bench/field/field-submission';
import { moonArcmin } from '@/lib/variants/bench/field/field-eyepieces';
import type { FieldEyepiece, FieldVariant } from '@/lib/variants/bench/field/field-variant';
import { randomFrom } from '@/lib/variants/random';

/** A light in the view: its place in radii of the field, right and up; its own radius alike. */
export type SeenLight = { right: number; up: number; radius: number };

export type EyepieceView = {
  fieldArcmin: number;
  /** How wide a star's disc is against the field's width, 0 when in focus. */
  blurShare: number;
  lights: readonly SeenLight[];
  /** Radius of the Moon's disc in radii of the field; null where it is no Moon. */
  moonRadius: number | null;
  /** The star that the question about the way is about. */
  asked: SeenLight | null;
};

/** The eyepiece that is looked through: the one without a label where there is one, else the chosen. */
export const eyepieceIn = (variant: FieldVariant, draft: FieldDraft): FieldEyepiece | null =>
  variant.eyepieces.find(({ id }) => id === (variant.unlabelled?.eyepieceId ?? draft.eyepieceId)) ??
  null;

/** Stars of the sky's own, brighter ones larger; in radii of the field. */
const starRadius = 0.012;
/** Other stars round about, over three degrees: one needs something to focus on. */
const aroundStars = 260;
const aroundArcmin = 180;

/** Drawn of a cluster: enough to show how far it reaches. */
const clusterStars = 60;

/** What the eye sees in the eyepiece; null without one. */
export function eyepieceView(variant: FieldVariant, draft: FieldDraft): EyepieceView | null {
  const eyepiece = eyepieceIn(variant, draft);
  if (eyepiece === null) return null;
  const { telescope, target, orientation } = variant;
  const fieldArcmin = trueFieldArcmin(telescope, eyepiece);
  const blur = blurArcmin(telescope, draft.focusMm - eyepiece.focusAtMm) / fieldArcmin;
  const seen = (light: { rightArcmin: number; upArcmin: number; radius: number }): SeenLight => {
    const place = asSeen(light, orientation);
    return {
      right: (2 * place.rightArcmin) / fieldArcmin,
      up: (2 * place.upArcmin) / fieldArcmin,
      radius: Math.hypot(light.radius, blur),
    };
  };
  const { starInView, asks } = variant;
  const asked = asks.includes('way')
    ? {
        right: starInView.right / 10,
        up: starInView.up / 10,
        radius: Math.hypot(1.6 * starRadius, blur),
      }
    : null;
  return {
    fieldArcmin,
    blurShare: blur,
    lights: [...starsAround(variant), ...lightsOf(variant)]
      .map(seen)
      .filter(({ right, up, radius }) => Math.hypot(right, up) < 1 + radius),
    moonRadius: target.kind === 'moon' ? moonArcmin / fieldArcmin : null,
    asked,
  };
}

function starsAround({ starsSeed }: FieldVariant) {
  const random = randomFrom(`${starsSeed} around`);
  return Array.from({ length: aroundStars }, () => ({
    rightArcmin: random.between(-aroundArcmin / 2, aroundArcmin / 2),
    upArcmin: random.between(-aroundArcmin / 2, aroundArcmin / 2),
    radius: starRadius * random.between(0.3, 0.7),
  }));
}

function lightsOf({ target, starsSeed }: FieldVariant) {
  const random = randomFrom(starsSeed);
  switch (target.kind) {
    case 'cluster':
      return Array.from({ length: clusterStars }, (_, index) => {
        // Denser inwards, and the outermost at its edge: that is how wide it is.
        const share = index === 0 ? 1 : random.next() ** 0.8;
        const turn = random.between(0, 2 * Math.PI);
        const away = (share * target.sizeArcmin) / 2;
        return {
          rightArcmin: away * Math.cos(turn),
          upArcmin: away * Math.sin(turn),
          radius: starRadius * random.between(0.4, 1.4),
        };
      });
    case 'double': {
      const turn = random.between(0, 2 * Math.PI);
      const away = target.separationArcsec / 120;
      return [1, -1].map((side) => ({
        rightArcmin: side * away * Math.cos(turn),
        upArcmin: side * away * Math.sin(turn),
        radius: starRadius * (side > 0 ? 0.8 : 0.6),
      }));
    }
    default:
      return [];
  }
}

import type { FigureData, FigureKit, FigureSky } from '@/components/lesson/figures/figure-data';
import type { LessonSky } from '@/lib/content/reckoning';
import { loadKits } from '@/lib/content/sky-catalogue';
import { fieldRadiusArcmin } from '@/lib/pointing/field-radius';

/** Fainter lights play no part in a figure. */
const faintestShown = 2.6;

function figureKits(): FigureKit[] {
  return loadKits().map((kit) => {
    const { id, name, tubeType, telescope, eyepieces, observingEyepieceId, bench } = kit;
    const eyepiece = eyepieces.find((one) => one.id === observingEyepieceId);
    if (eyepiece === undefined) throw new Error(`${id} has no observing eyepiece`);
    const radius = fieldRadiusArcmin(telescope, eyepiece);
    return { id, name, tubeType, telescope, eyepieces, bench, fieldRadiusArcmin: radius };
  });
}

function figureSky(name: string, sky: LessonSky): FigureSky {
  const lights = [...sky.places.values()]
    .filter((one) => one.altitudeDeg > 0 && (one.magnitude ?? 0) < faintestShown)
    .map(({ hip, name: light, azimuthDeg, altitudeDeg, magnitude }) => ({
      name: light,
      azimuthDeg,
      altitudeDeg,
      magnitude,
      kind: hip === null ? ('planet' as const) : ('star' as const),
    }));
  return { name, title: sky.title, lights };
}

/** The telescopes and the lesson's own evenings, as its figures need them. */
export const figureData = (skies: ReadonlyMap<string, LessonSky>): FigureData => ({
  kits: figureKits(),
  skies: [...skies].map(([name, sky]) => figureSky(name, sky)),
});

import type { CheckItemFace } from './check-item';
import { faceOf } from './grade-check-item';
import type { LessonFrontMatter } from './lesson-front-matter';
import type { LessonSky, Reckoning } from './reckoning';
import { fistsInFigures } from './lesson-quantities';

/** One line of a lesson's table of what is in the sky. */
export type SkyRow = {
  name: string;
  kind: 'star' | 'planet';
  altitudeDeg: number;
  fistsUp: string;
  azimuthDeg: number;
  compass: string;
  magnitude: number | null;
};

/** What the lesson's components show: the front matter without any answer, and the engine's words. */
export type LessonView = {
  slug: string;
  lesson: Omit<LessonFrontMatter, 'retrieval' | 'checks'>;
  retrieval: readonly CheckItemFace[];
  faded: readonly CheckItemFace[];
  checks: readonly CheckItemFace[];
  /** An expression of the lesson in words or figures. */
  text: (expression: string) => string;
  /** A sentence with its `{{expressions}}` filled in. */
  fill: (sentence: string) => string;
  skyTable: (sky: string, names: readonly string[]) => { title: string; rows: SkyRow[] };
};

export function lessonView(lesson: {
  slug: string;
  frontMatter: LessonFrontMatter;
  skies: ReadonlyMap<string, LessonSky>;
  reckoning: Reckoning;
}): LessonView {
  const { slug, frontMatter, skies, reckoning } = lesson;
  const { retrieval, checks, ...rest } = frontMatter;
  const faces = (stage: 'faded' | 'check') =>
    checks.filter((check) => check.stage === stage).map(({ item }) => faceOf(item, reckoning));
  return {
    slug,
    lesson: rest,
    retrieval: retrieval.map(({ item }) => faceOf(item, reckoning)),
    faded: faces('faded'),
    checks: faces('check'),
    text: reckoning.text,
    fill: reckoning.fill,
    skyTable: (skyName, names) => {
      const sky = skies.get(skyName);
      if (sky === undefined) throw new RangeError(`no sky named "${skyName}"`);
      return {
        title: sky.title,
        rows: names.map((name) => {
          const place = sky.places.get(name.toLowerCase());
          if (place === undefined) throw new RangeError(`"${name}" is not in the sky "${skyName}"`);
          const { azimuthDeg, altitudeDeg, magnitude } = place;
          return {
            name: place.name,
            kind: place.hip === null ? 'planet' : 'star',
            azimuthDeg,
            altitudeDeg,
            magnitude,
            fistsUp: fistsInFigures(altitudeDeg),
            compass: reckoning.text(`compass ${skyName}:${name}`),
          };
        }),
      };
    },
  };
}

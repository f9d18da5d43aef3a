import { capitalised } from '../wording/capital';
import 'server-only';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { z } from 'zod';
import { answerKeyFor } from '../pointing/answer-key-for';
import { parseScenario } from '../pointing/parse-scenario';
import { skyFrameAt } from '../sky/frame-at';
import { placeCatalogue } from '../sky/star-places';
import type { LessonSky } from './reckoning';
import { loadCatalogue, loadKits } from './sky-catalogue';

/** content/lessons/<slug>/skies.json: the evenings that a lesson talks about. */
const skiesSchema = z.record(
  z.string().regex(/^[a-z-]+$/),
  z.strictObject({
    title: z.string().min(1),
    kit: z.string(),
    latitudeDeg: z.number(),
    longitudeDeg: z.number(),
    localTime: z.string(),
    timeZone: z.string(),
  }),
);

/** Fainter stars play no part in a lesson. */
const faintestListed = 3;

/** @throws when the file is malformed, names no kit of ours or a time that does not exist. */
export async function loadLessonSkies(folder: string): Promise<ReadonlyMap<string, LessonSky>> {
  const file = path.join(folder, 'skies.json');
  const json: unknown = JSON.parse(await readFile(file, 'utf8'));
  const skies = skiesSchema.parse(json);
  return new Map(Object.entries(skies).map(([name, sky]) => [name, lessonSky(name, sky)]));
}

function lessonSky(name: string, sky: z.output<typeof skiesSchema>[string]): LessonSky {
  const kit = loadKits().find((one) => one.id === sky.kit);
  const eyepiece = kit?.eyepieces.find((one) => one.id === kit.observingEyepieceId);
  if (kit === undefined || eyepiece === undefined) {
    throw new RangeError(`the sky "${name}" names an unknown telescope: ${sky.kit}`);
  }
  const parsed = parseScenario({
    place: { latitudeDeg: sky.latitudeDeg, longitudeDeg: sky.longitudeDeg },
    localTime: sky.localTime,
    timeZone: sky.timeZone,
    telescope: kit.telescope,
    eyepiece: {
      focalLengthMm: eyepiece.focalLengthMm,
      apparentFieldDeg: eyepiece.apparentFieldDeg,
    },
  });
  if (!parsed.ok) {
    const said = parsed.problems
      .map((problem) => `${problem.field}: ${problem.message}`)
      .join('; ');
    throw new RangeError(`the sky "${name}" is no scenario: ${said}`);
  }
  const { scenario, instant } = parsed;
  const catalogue = loadCatalogue();
  const frame = skyFrameAt({ instant, place: scenario.place });
  const placed = placeCatalogue(catalogue, frame);

  const places = new Map<
    string,
    LessonSky['places'] extends ReadonlyMap<string, infer P> ? P : never
  >();
  catalogue.stars.forEach((star, i) => {
    const azimuthDeg = placed.azimuthDeg[i];
    const altitudeDeg = placed.altitudeDeg[i];
    if (star.name === null || azimuthDeg === undefined || altitudeDeg === undefined) return;
    const { name, hip, magnitude } = star;
    places.set(name.toLowerCase(), { name, hip, magnitude, azimuthDeg, altitudeDeg });
  });
  for (const { body, azimuthDeg, altitudeDeg, magnitude } of frame.planets) {
    const planet = capitalised(body);
    places.set(body, { name: planet, hip: null, magnitude, azimuthDeg, altitudeDeg });
  }
  return {
    title: sky.title,
    places,
    answerKey: answerKeyFor({ scenario, instant, frame, catalogue, faintestListed }),
  };
}

import 'server-only';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { eyepieceSchema, telescopeSchema } from '../pointing/scenario';
import { decodeCatalogue, type StarCatalogue } from '../sky/catalogue';
import { checkHorizon } from '../sky/horizon';
import { kitBenchSchema } from '../variants/bench/bench-kit';

/** Identifiers are the names of files and travel in page addresses. */
const id = z.string().regex(/^[a-z0-9-]+$/);

const kitSchema = z
  .strictObject({
    id,
    name: z.string().min(1),
    description: z.string().min(1),
    tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']),
    telescope: telescopeSchema,
    eyepieces: z.array(eyepieceSchema.extend({ id })).min(1),
    observingEyepieceId: id,
    centringEyepieceId: id,
    bench: kitBenchSchema,
  })
  .refine(
    (kit) =>
      [kit.observingEyepieceId, kit.centringEyepieceId].every((wanted) =>
        kit.eyepieces.some((eyepiece) => eyepiece.id === wanted),
      ),
    'the observing and the centring eyepiece must be among the eyepieces',
  );

const siteSchema = z.strictObject({
  id,
  name: z.string().min(1),
  description: z.string().min(1),
  horizon: z
    .array(z.strictObject({ azimuthDeg: z.number(), altitudeDeg: z.number() }))
    .superRefine((points, context) => {
      const check = checkHorizon(points);
      if (!check.ok) context.addIssue({ code: 'custom', message: check.message });
    }),
});

/** A telescope with its mount and eyepieces. */
export type Kit = z.infer<typeof kitSchema>;
/** An invented observing site: its skyline. */
export type SiteProfile = z.infer<typeof siteSchema>;

const contentFolder = (...parts: string[]): string => path.join(process.cwd(), 'content', ...parts);

function once<T>(read: () => T): () => T {
  let kept: { value: T } | undefined;
  return () => (kept ??= { value: read() }).value;
}

function readFolder<T extends { id: string }>(folder: string, schema: z.ZodType<T>): T[] {
  return readdirSync(contentFolder(folder))
    .filter((file) => file.endsWith('.json'))
    .map((file) => {
      const parsed = schema.safeParse(
        JSON.parse(readFileSync(contentFolder(folder, file), 'utf8')),
      );
      if (!parsed.success) {
        throw new Error(`content/${folder}/${file}: ${z.prettifyError(parsed.error)}`);
      }
      if (`${parsed.data.id}.json` !== file) {
        throw new Error(`content/${folder}/${file}: the id must be the file's name`);
      }
      return parsed.data;
    });
}

/** The file as the browser gets it. Everything in content/ is read once a process. */
export const loadCatalogueText = once(() =>
  readFileSync(contentFolder('stars', 'catalogue.json'), 'utf8'),
);

export const loadCatalogue: () => StarCatalogue = once(() =>
  decodeCatalogue(JSON.parse(loadCatalogueText())),
);

/** The telescopes, from the widest field to the narrowest. */
export const loadKits: () => readonly Kit[] = once(() =>
  readFolder('kits', kitSchema).sort(
    (a, b) => a.telescope.focalLengthMm - b.telescope.focalLengthMm,
  ),
);

/** The skylines, from the most open to the most closed. */
export const loadSites: () => readonly SiteProfile[] = once(() =>
  readFolder('sites', siteSchema).sort((a, b) => meanAltitudeDeg(a) - meanAltitudeDeg(b)),
);

function meanAltitudeDeg(site: SiteProfile): number {
  return site.horizon.reduce((sum, point) => sum + point.altitudeDeg, 0) / site.horizon.length;
}

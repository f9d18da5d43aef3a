import { z } from 'zod';
import {
  meanCurrentMistakes,
  powerCriteria,
  powerGates,
  runTimeMistakes,
  slewingVoltsMistakes,
  type PowerResult,
  type PowerSlip,
} from '../../../grading/bench/power/power-result';
import { cellKinds } from '../../../power/cell';
import { bayEnds } from '../../../power/holder';
import { powerPlans } from '../../../power/night';
import { supplyForms, supplyVerdicts } from '../../../power/supply';
import { computerStates } from '../../../power/terminals';
import { powerTemplates, type PowerVariant } from '../../../variants/bench/power/power-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Power". */

const template = z.enum(powerTemplates);
const cellKind = z.enum(cellKinds);
const centre = z.enum(['positive', 'negative']);
const verdict = z.enum(supplyVerdicts);
const bays = z.array(z.object({ cell: z.string(), plusEnd: z.enum(bayEnds) }).nullable());
const wiring = { plugged: z.string().nullable(), handControl: z.boolean(), on: z.boolean() };

const setup = z.object({
  needs: z.object({
    nominalV: number,
    centre,
    highestV: number,
    resetBelowV: number,
    trackingA: number,
    slewingA: number,
  }),
  temperatureC: number,
  springEnds: z.array(z.enum(bayEnds)),
  cells: z.array(z.object({ id: z.string(), kind: cellKind, left: number })),
  supplies: z.array(
    z.object({
      id: z.string(),
      form: z.enum(supplyForms),
      volts: number,
      ratedA: number,
      centre,
    }),
  ),
  start: z.object({ bays, ...wiring }),
});

export const powerVariantSchema: z.ZodType<PowerVariant> = z.object({
  lab: z.literal('power'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
  tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']),
  setup,
  night: z.object({ kind: cellKind, hours: number, slewingShare: number }).nullable(),
});

const numbered = z.array(z.int());

const slip: z.ZodType<PowerSlip> = z.discriminatedUnion('code', [
  z.object({ code: z.literal('mains-outdoors'), supply: z.string() }),
  z.object({ code: z.enum(['reverse-polarity', 'over-voltage']), volts: number }),
  z.object({
    code: z.enum([
      'hand-control-live',
      'hand-control-pulled-live',
      'hand-control-with-switch-on',
      'supply-with-switch-on',
      'supply-before-hand-control',
      'switch-not-last',
      'cells-moved-while-plugged',
    ]),
  }),
  z.object({ code: z.literal('cells-reversed'), bays: numbered, openV: number }),
  z.object({ code: z.literal('kinds-mixed'), kinds: z.array(cellKind) }),
  z.object({ code: z.literal('used-among-fresh'), cells: z.array(z.string()) }),
  z.object({ code: z.literal('bays-empty'), bays: numbered }),
  z.object({ code: z.literal('wrong-supply'), supply: z.string(), why: verdict }),
  z.object({ code: z.literal('verdict-wrong'), supply: z.string(), said: verdict, right: verdict }),
  z.object({ code: z.literal('slew-resets'), volts: number, resetBelowV: number }),
  z.object({ code: z.literal('not-running'), computer: z.enum(computerStates) }),
  z.object({ code: z.literal('count-wrong'), said: number, right: number, openV: number }),
  z.object({ code: z.literal('many-readings'), taken: number, enough: number }),
  z.object({
    code: z.literal('mean-current-off'),
    said: number,
    right: number,
    mistake: z.enum(meanCurrentMistakes).nullable(),
  }),
  z.object({
    code: z.literal('run-time-off'),
    said: number,
    right: number,
    mistake: z.enum(runTimeMistakes).nullable(),
  }),
  z.object({
    code: z.literal('slewing-volts-off'),
    said: number,
    right: number,
    mistake: z.enum(slewingVoltsMistakes).nullable(),
  }),
  z.object({
    code: z.literal('reset-misjudged'),
    resets: z.boolean(),
    volts: number,
    resetBelowV: number,
  }),
  z.object({ code: z.literal('plan-wrong'), said: z.enum(powerPlans), right: z.enum(powerPlans) }),
]);

export const powerResultSchema: z.ZodType<PowerResult> = z.object({
  lab: z.literal('power'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.enum(powerCriteria), earned: number, possible: number })),
  gates: z.array(z.object({ id: z.enum(powerGates) })),
  slips: z.array(slip),
  end: z.object({
    bays,
    ...wiring,
    volts: number.nullable(),
    computer: z.enum(computerStates),
    slewingV: number.nullable(),
  }),
  foretold: z.object({ runTimeHours: number, slewingVolts: number }).nullable(),
});

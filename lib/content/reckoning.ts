import type { AnswerKey } from '../pointing/answer-key';
import type { Kit } from './sky-catalogue';

/** Something that can be pointed at. Degrees; altitude refracted. */
export type SkyPlace = { azimuthDeg: number; altitudeDeg: number; magnitude: number | null };

/** One of the evenings that a lesson talks about. */
export type LessonSky = {
  title: string;
  /** By name, in small letters: stars with an IAU name and the planets, above the horizon or not. */
  places: ReadonlyMap<string, SkyPlace & { name: string; hip: number | null }>;
  answerKey: AnswerKey;
};

export type Reckoning = {
  /** The value of an expression. @throws {UnknownExpression} when it is none. */
  number: (expression: string) => number;
  /** The same in words or figures, as a sentence shows it. */
  text: (expression: string) => string;
  /** Whether a condition `left < right` or `left > right` holds. */
  holds: (condition: string) => boolean;
  /** A sentence with its `{{expressions}}` filled in. */
  fill: (sentence: string) => string;
};

export class UnknownExpression extends Error {
  override readonly name = 'UnknownExpression';
}

export type Quantity = {
  /** How the arguments are written, for messages: a word each; '' for none. */
  takes: string;
  digits: number;
  value: (words: readonly string[], sources: ReckoningSources) => number;
  /** Where figures alone would not read well. */
  words?: (value: number) => string;
};

export type ReckoningSources = {
  place: (word: string) => SkyPlace;
  star: (word: string) => { sky: LessonSky; hip: number };
  sky: (word: string) => LessonSky;
  kit: (word: string) => Kit;
  figure: (word: string) => number;
};

/**
 * The numbers of a lesson come from the engine, never from its author's memory. An expression is a
 * quantity and its arguments: `hit-rate wren evening:Vega evening:Capella`, `separation 130/40 220/35`
 * (azimuth/altitude), `air-mass 20`.
 */
export function reckoningFrom(
  quantities: Readonly<Record<string, Quantity>>,
  skies: ReadonlyMap<string, LessonSky>,
  kits: readonly Kit[],
): Reckoning {
  const refuse = (message: string): never => {
    throw new UnknownExpression(message);
  };

  const figure = (word: string): number => {
    const value = Number(word);
    return word !== '' && Number.isFinite(value) ? value : refuse(`"${word}" is no number`);
  };
  const sky = (word: string) => skies.get(word) ?? refuse(`there is no sky named "${word}"`);
  const named = (word: string) => {
    const [skyName = '', name = ''] = word.split(':');
    const of = sky(skyName);
    return {
      sky: of,
      entry: of.places.get(name.toLowerCase()) ?? refuse(`"${name}" is not in "${skyName}"`),
    };
  };
  const sources: ReckoningSources = {
    figure,
    sky,
    place: (word) => {
      if (word.includes(':')) return named(word).entry;
      const [azimuth = '', altitude = ''] = word.split('/');
      return { azimuthDeg: figure(azimuth), altitudeDeg: figure(altitude), magnitude: null };
    },
    star: (word) => {
      const { sky: of, entry } = named(word);
      return { sky: of, hip: entry.hip ?? refuse(`"${word}" is no star`) };
    },
    kit: (word) =>
      kits.find((kit) => kit.id === word) ?? refuse(`there is no telescope named "${word}"`),
  };

  const evaluate = (expression: string) => {
    const [name = '', ...words] = expression.trim().split(/\s+/);
    const quantity = Object.hasOwn(quantities, name) ? quantities[name] : undefined;
    if (quantity === undefined) return refuse(`"${name}" is no quantity of the lessons`);
    const taken = quantity.takes === '' ? 0 : quantity.takes.split(' ').length;
    if (words.length !== taken) {
      return refuse(`"${name}" takes ${quantity.takes}`);
    }
    return { quantity, value: quantity.value(words, sources) };
  };

  const number = (expression: string): number =>
    /^-?[\d.]+$/.test(expression.trim()) ? figure(expression.trim()) : evaluate(expression).value;

  const text = (expression: string): string => {
    const { quantity, value } = evaluate(expression);
    if (!Number.isFinite(value)) return 'undetermined';
    return quantity.words === undefined
      ? value
          .toFixed(quantity.digits)
          .replace(/^-(?=[0.]+$)/, '')
          .replace('-', '−')
      : quantity.words(value);
  };

  return {
    number,
    text,
    holds: (condition) => {
      const parts = /^(.+?)\s([<>])\s(.+)$/.exec(condition);
      if (parts === null) return refuse(`"${condition}" is no condition`);
      const [, left = '', sign, right = ''] = parts;
      return sign === '<' ? number(left) < number(right) : number(left) > number(right);
    },
    fill: (sentence) =>
      sentence.replaceAll(/\{\{(.+?)\}\}/g, (_, expression: string) => text(expression)),
  };
}

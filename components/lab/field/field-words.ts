import type { ImageOrientation } from '@/lib/optics/image-orientation';
import type {
  FieldAsk,
  FieldEyepiece,
  FieldVariant,
} from '@/lib/variants/bench/field/field-variant';
import type { FieldDraft, FieldWay } from '@/lib/grading/bench/field/field-submission';

export const eyepieceName = ({ focalLengthMm }: Pick<FieldEyepiece, 'focalLengthMm'>): string =>
  `${String(focalLengthMm)} mm eyepiece`;

/** What the unlabelled one is called until it is known. */
export const nameOf = (variant: FieldVariant, id: string | null): string => {
  const eyepiece = variant.eyepieces.find((one) => one.id === id);
  return eyepiece === undefined ? 'none of them' : `the ${eyepieceName(eyepiece)}`;
};

/** The task, in two sentences at most. */
export function taskInWords({
  template,
  target,
  unlabelled,
  starOnSky,
  kitName,
}: FieldVariant): string {
  switch (template) {
    case 'whole-cluster':
      return `Show ${target.name} whole and as large as that allows, in focus. ${sizeInWords(target)}`;
    case 'split-the-double':
      return `Show ${target.name} as two stars, in focus. ${sizeInWords(target)} If no eyepiece here can do it with ${kitName}, say so.`;
    case 'whole-moon':
      return 'Show the Moon whole and as large as that allows, in focus. It is about 31 arcminutes across, half a degree.';
    case 'by-the-drift':
      return `The label has rubbed off the eyepiece that is in. With the mount switched off, a star at declination ${degreesInWords(target.declinationDeg)} took ${String(unlabelled?.timedSeconds ?? 0)} seconds from edge to edge. Bring it into focus: which eyepiece is it?`;
    case 'lost-star': {
      const { along, up } = offsetInWords(starOnSky);
      return `The red dot is not set yet: on the sky the star stands ${along} of the dot and ${up} it. Choose the eyepiece that still has the star in its field and magnifies most, bring it into focus, and say where in it the star will appear.`;
    }
  }
}

const sizeInWords = (target: FieldVariant['target']): string => {
  switch (target.kind) {
    case 'cluster':
      return `It is ${String(target.sizeArcmin)} arcminutes across.`;
    case 'double':
      return `They stand ${String(target.separationArcsec)} arcseconds apart.`;
    default:
      return '';
  }
};

const offsetInWords = ({ rightArcmin, upArcmin }: FieldVariant['starOnSky']) => ({
  along: `${String(Math.abs(rightArcmin))} arcminutes to the ${rightArcmin > 0 ? 'right' : 'left'}`,
  up: `${String(Math.abs(upArcmin))} arcminutes ${upArcmin > 0 ? 'above' : 'below'}`,
});

export const degreesInWords = (degrees: number): string =>
  `${degrees < 0 ? '−' : '+'}${String(Math.abs(degrees))}°`;

/** "to the left and up" */
export const wayInWords = ({ along, up }: FieldWay): string => `to the ${along} and ${up}`;
export const placeInWords = ({ along, up }: FieldWay): string =>
  `${up === 'up' ? 'upper' : 'lower'} ${along}`;

export const orientationInWords: Readonly<Record<ImageOrientation, string>> = {
  true: 'as the eye sees it',
  mirrored: 'upright, with right and left exchanged',
  turned: 'turned upside down, right and left exchanged too',
};

/** What is still to be done, for the panel; empty when nothing is. */
export function missingInWords(draft: FieldDraft, { asks }: FieldVariant): string {
  const open = asks.filter((ask) => !isAnswered(ask, draft));
  const parts = [
    ...(draft.eyepieceId === null ? ['choose an eyepiece'] : []),
    ...open.map((ask) => toDo[ask]),
  ];
  return parts.length === 0 ? '' : `${parts.join(', ')}.`;
}

const toDo: Readonly<Record<FieldAsk, string>> = {
  field: 'say how much sky it shows',
  drift: 'say how long a star takes across',
  limit: 'say how close two stars may stand',
  way: 'say which way the tube must go',
  view: 'say where the star appears',
};

export function isAnswered(ask: FieldAsk, draft: FieldDraft): boolean {
  switch (ask) {
    case 'field':
      return draft.fieldArcmin !== null;
    case 'drift':
      return draft.driftSeconds !== null;
    case 'limit':
      return draft.limitArcsec !== null;
    default:
      return draft[ask] !== null && draft[ask].along !== null && draft[ask].up !== null;
  }
}

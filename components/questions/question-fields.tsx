import type { ItemAnswer } from '@/lib/items/item-answer';
import type { ItemFace } from '@/lib/items/item-face';
import { emptyAnswer } from './answers';
import { ChoiceFields } from './choice-fields';
import { ItemPicture } from './item-picture';
import { MatchFields } from './match-fields';
import { NumericField } from './numeric-field';
import { OrderFields } from './order-fields';
import { PointFields } from './point-fields';
import { SeveralFields } from './several-fields';

type QuestionFieldsProps = {
  face: ItemFace;
  answer: ItemAnswer;
  onAnswer: (answer: ItemAnswer) => void;
  name: string;
  disabled?: boolean;
  /** Says beside a numeric field that what stands there is no number. */
  numberNeeded?: boolean;
  /** Takes the focus when a new question comes up. */
  promptId?: string;
};

/** A question as it is asked: its words, its drawing and the way it is answered. */
export function QuestionFields({
  face,
  answer,
  onAnswer,
  name,
  disabled = false,
  numberNeeded = false,
  promptId,
}: QuestionFieldsProps) {
  return (
    <fieldset className="min-w-0">
      <legend id={promptId} tabIndex={-1} className="mb-1.5 max-w-measure text-lg font-semibold">
        {face.prompt}
      </legend>
      {/* A point's drawing carries its rings. */}
      {face.drawing === undefined || face.kind === 'point' ? null : (
        <ItemPicture drawing={face.drawing} />
      )}
      <Fields {...{ face, answer, onAnswer, name, disabled, numberNeeded }} />
    </fieldset>
  );
}

/** An answer of another kind than the question's is none. */
function Fields({
  face,
  answer: given,
  numberNeeded,
  ...rest
}: Required<Omit<QuestionFieldsProps, 'promptId'>>) {
  const answer = given.kind === face.kind ? given : emptyAnswer(face);
  switch (face.kind) {
    case 'choice':
      return answer.kind === 'choice' && <ChoiceFields {...{ face, answer, ...rest }} />;
    case 'several':
      return answer.kind === 'several' && <SeveralFields {...{ face, answer, ...rest }} />;
    case 'order':
      return answer.kind === 'order' && <OrderFields {...{ face, answer, ...rest }} />;
    case 'match':
      return answer.kind === 'match' && <MatchFields {...{ face, answer, ...rest }} />;
    case 'numeric':
      return (
        answer.kind === 'numeric' && <NumericField {...{ face, answer, numberNeeded, ...rest }} />
      );
    case 'point':
      return answer.kind === 'point' && <PointFields {...{ face, answer, ...rest }} />;
  }
}

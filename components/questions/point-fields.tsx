import { classNames } from '@/components/ui/class-names';
import { cornersOfNames } from '@/lib/items/ring-names';
import { ringNames, type AnswerFieldsProps } from './answers';
import { ItemPicture } from './item-picture';
import { OptionRow } from './option-row';
import { SpotName, SpotRing } from './spot-ring';

/** Lettered rings on the drawing, and the same as a list: each ring is a label of its answer in the list. */
export function PointFields({
  face,
  answer,
  onAnswer,
  name,
  disabled,
}: AnswerFieldsProps<'point'>) {
  const names = ringNames(face);
  const corners = cornersOfNames(face.drawing, face.spots);
  return (
    <>
      <ItemPicture drawing={face.drawing}>
        {face.spots.map((spot) => (
          // A reader takes the list below, which says where each ring is.
          <label
            key={spot.id}
            htmlFor={`${name}-${spot.id}`}
            aria-hidden="true"
            style={placeOf(spot, face.drawing)}
            className={classNames(overSpot, disabled && 'pointer-events-none')}
          >
            <SpotRing chosen={answer.option === spot.id} />
          </label>
        ))}
        {/* Above all rings, so that none of them hides a name. */}
        {face.spots.map((spot, index) => (
          <span
            key={spot.id}
            aria-hidden="true"
            style={placeOf(spot, face.drawing)}
            className={classNames(overSpot, 'pointer-events-none')}
          >
            <SpotName
              name={names.get(spot.id) ?? ''}
              corner={corners[index]}
              chosen={answer.option === spot.id}
            />
          </span>
        ))}
      </ItemPicture>
      {face.spots.map(({ id, where }) => (
        <OptionRow
          key={id}
          type="radio"
          id={`${name}-${id}`}
          name={name}
          value={id}
          checked={answer.option === id}
          disabled={disabled}
          onChange={() => {
            onAnswer({ kind: 'point', option: id });
          }}
        >
          <strong className="font-semibold">{names.get(id)}:</strong> {where}
        </OptionRow>
      ))}
    </>
  );
}

const overSpot = 'absolute grid size-11 -translate-x-1/2 -translate-y-1/2 place-content-center';

const placeOf = (spot: { x: number; y: number }, drawing: { width: number; height: number }) => ({
  left: `${String((100 * spot.x) / drawing.width)}%`,
  top: `${String((100 * spot.y) / drawing.height)}%`,
});

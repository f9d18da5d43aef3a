import type { FigureStills } from '../figure-registry';
import { momentWords } from './moment-words';
import { NeedleDrawing } from './needle-drawing';
import { needlePlaces } from './needle-places';
import { needleWords } from './needle-words';
import {
  startingError,
  startingLatitudeDeg,
  startingMs,
  startingPlace,
  startingStar,
} from './starts';
import { TurningSkyDrawing } from './turning-sky-drawing';
import { WrongClockDrawing } from './wrong-clock-drawing';
import { wrongClockFacts } from './wrong-clock-facts';
import { wrongClockWords } from './wrong-clock-words';

export const clockAndPlaceStills: FigureStills<'clock-and-place'> = {
  'turning-sky': () => (
    <TurningSkyDrawing
      ms={startingMs}
      latitudeDeg={startingLatitudeDeg}
      starName={startingStar}
      label={momentWords(startingMs, startingLatitudeDeg, startingStar)}
    />
  ),
  'wrong-clock': () => {
    const facts = wrongClockFacts(startingError, false);
    return <WrongClockDrawing facts={facts} label={wrongClockWords(startingError, facts, false)} />;
  },
  'needle-and-north': () => {
    const place = needlePlaces.find(({ name }) => name === startingPlace) ?? needlePlaces[0];
    return (
      <NeedleDrawing
        declinationDeg={place.declinationDeg}
        bearingDeg={0}
        label={needleWords(place, 0)}
      />
    );
  },
};

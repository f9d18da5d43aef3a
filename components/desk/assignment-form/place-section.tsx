'use client';

import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { TextInput } from '@/components/ui/text-input';
import type { Place } from '@/lib/data/places';
import { DecimalField } from '../decimal-field';
import type { AssignmentDraft } from './assignment-draft';
import { PlaceSearch, placeText } from '@/components/lab/place-search';
import { Fold } from './fold';
import type { SectionProps } from './section';
import { placeWords } from './set-words';

/** A minus sign before the number means south or west, whichever side was set before. */
function withSide<Side extends string>(
  text: string,
  side: Side,
  negative: Side,
): { text: string; side: Side } {
  const minus = /^\s*[-\u2212]\s*/;
  if (!minus.test(text)) return { text, side };
  return { text: text.replace(minus, ''), side: negative };
}

const fields = [
  'placeName',
  'scenario.place.latitudeDeg',
  'scenario.place.longitudeDeg',
  'scenario.place.elevationM',
];

export function PlaceSection({
  draft,
  change,
  problemAt,
  searchPlaces,
}: SectionProps<AssignmentDraft> & { searchPlaces: (query: string) => Promise<Place[]> }) {
  function take(place: Place): void {
    change({
      placeName: placeText(place),
      latitude: String(Math.abs(place.latitudeDeg)),
      latitudeSide: place.latitudeDeg < 0 ? 'S' : 'N',
      longitude: String(Math.abs(place.longitudeDeg)),
      longitudeSide: place.longitudeDeg < 0 ? 'W' : 'E',
      elevationM: String(place.elevationM),
      timeZone: place.timeZone,
    });
  }
  return (
    <Fold
      asSection
      id="section-place"
      title="Place"
      now={placeWords(draft)}
      startsOpen={draft.placeName === ''}
      hasProblem={fields.some((field) => problemAt(field) !== null)}
    >
      <p className="max-w-measure text-soft">
        Students see the name, and the coordinates rounded to a tenth of a degree.
      </p>
      <PlaceSearch search={searchPlaces} onTake={take} />
      <Field id="placeName" label="Name of the place" error={problemAt('placeName')}>
        {(control) => (
          <TextInput
            {...control}
            className="max-w-md"
            maxLength={120}
            value={draft.placeName}
            onChange={(event) => change({ placeName: event.target.value })}
          />
        )}
      </Field>
      <div className="flex flex-wrap gap-x-6 gap-y-4">
        <div className="flex items-end gap-2">
          <DecimalField
            id="scenario.place.latitudeDeg"
            label="Latitude"
            unit="°"
            error={problemAt('scenario.place.latitudeDeg')}
            value={draft.latitude}
            onChange={(typed) => {
              const { text, side } = withSide(typed, draft.latitudeSide, 'S');
              change({ latitude: text, latitudeSide: side });
            }}
          />
          <Select
            aria-label="North or south"
            className="max-w-24"
            value={draft.latitudeSide}
            onChange={(event) => change({ latitudeSide: event.target.value === 'S' ? 'S' : 'N' })}
          >
            <option value="N">N</option>
            <option value="S">S</option>
          </Select>
        </div>
        <div className="flex items-end gap-2">
          <DecimalField
            id="scenario.place.longitudeDeg"
            label="Longitude"
            unit="°"
            error={problemAt('scenario.place.longitudeDeg')}
            value={draft.longitude}
            onChange={(typed) => {
              const { text, side } = withSide(typed, draft.longitudeSide, 'W');
              change({ longitude: text, longitudeSide: side });
            }}
          />
          <Select
            aria-label="East or west"
            className="max-w-24"
            value={draft.longitudeSide}
            onChange={(event) => change({ longitudeSide: event.target.value === 'W' ? 'W' : 'E' })}
          >
            <option value="E">E</option>
            <option value="W">W</option>
          </Select>
        </div>
        <DecimalField
          id="scenario.place.elevationM"
          label="Elevation"
          unit="m"
          error={problemAt('scenario.place.elevationM')}
          value={draft.elevationM}
          onChange={(elevationM) => change({ elevationM })}
        />
      </div>
    </Fold>
  );
}

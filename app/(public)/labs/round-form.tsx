'use client';

import { useState } from 'react';
import { PlaceSearch, placeText } from '@/components/lab/place-search';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { RadioGroup } from '@/components/ui/radio-group';
import { TextInput } from '@/components/ui/text-input';
import type { Place } from '@/lib/data/places';
import { firstRound } from './first-round';

type Choice = { id: string; name: string; description: string };

type RoundFormProps = {
  action: string;
  kits: readonly Choice[];
  sites: readonly Choice[];
  chosen: {
    kitId: string;
    siteId: string;
    placeId: number | undefined;
    localTime: string | undefined;
  };
  placeName: string;
  findPlaces: (query: string) => Promise<Place[]>;
};

const options = (choices: readonly Choice[]) =>
  choices.map(({ id, name, description }) => ({ value: id, label: name, hint: description }));

/** Where, when and with what to practise. It makes a page address, so that a round can be kept and shared. */
export function RoundForm({ action, kits, sites, chosen, placeName, findPlaces }: RoundFormProps) {
  const [place, setPlace] = useState<Place | null>(null);
  const placeId = place?.id ?? chosen.placeId;
  return (
    <form action={action} method="get" className="space-y-8">
      <input type="hidden" {...firstRound} />
      {placeId === undefined ? null : <input type="hidden" name="place" value={placeId} />}
      <section aria-labelledby="where" className="space-y-3">
        <h2 id="where" className="text-xl font-semibold">
          Where and when
        </h2>
        <p>
          Under the sky of <strong>{place === null ? placeName : placeText(place)}</strong>.
        </p>
        <PlaceSearch search={findPlaces} onTake={setPlace} />
        <Field
          label="Date and time there"
          optional
          hint="Left empty: tonight, at the end of nautical twilight. Each round moves it a little."
        >
          {(control) => (
            <TextInput
              {...control}
              type="datetime-local"
              name="time"
              className="max-w-xs"
              defaultValue={chosen.localTime}
            />
          )}
        </Field>
      </section>
      <RadioGroup
        legend="Telescope"
        name="kit"
        options={options(kits)}
        defaultValue={chosen.kitId}
      />
      <RadioGroup
        legend="What stands round the place"
        name="site"
        options={options(sites)}
        defaultValue={chosen.siteId}
      />
      <Button type="submit" variant="primary" size="large">
        Go out under this sky
      </Button>
    </form>
  );
}

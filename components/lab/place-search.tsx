'use client';

import { useId, useRef, useState, type KeyboardEvent } from 'react';
import { Field } from '@/components/ui/field';
import { TextInput } from '@/components/ui/text-input';
import { StatusLine } from '@/components/ui/status-line';
import type { Place } from '@/lib/data/places';

const countryNames = new Intl.DisplayNames(['en'], { type: 'region' });

/** Region codes are letters in some countries ("IL", "BC") and mere numbers in most. */
const readableRegion = ({ region }: Place): string => (/^[A-Z]{2,3}$/.test(region) ? region : '');
const join = (...parts: readonly string[]): string =>
  parts.filter((part) => part !== '').join(', ');
const countryOf = (place: Place): string => countryNames.of(place.country) ?? place.country;

/** "Springfield, IL, United States". */
export const placeText = (place: Place): string =>
  join(place.name, readableRegion(place), countryOf(place));

/** Long enough that a word being typed asks once, short enough not to be noticed. */
const pauseMs = 220;

/** Finds a town in the built-in list of places. Arrow keys move, Enter takes, Escape closes. */
export function PlaceSearch({
  search,
  onTake,
}: {
  search: (query: string) => Promise<Place[]>;
  onTake: (place: Place) => void;
}) {
  const listId = useId();
  const [query, setQuery] = useState('');
  const [places, setPlaces] = useState<readonly Place[] | null>(null);
  const [active, setActive] = useState(0);
  const [said, setSaid] = useState('');
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const latest = useRef(0);

  function ask(text: string): void {
    setQuery(text);
    clearTimeout(timer.current);
    const number = (latest.current += 1);
    if (text.trim().length < 2) {
      setPlaces(null);
      setSaid('');
      return;
    }
    timer.current = setTimeout(() => {
      void find(text, number);
    }, pauseMs);
  }

  async function find(text: string, number: number): Promise<void> {
    try {
      const found = await search(text);
      // An answer that a later question has overtaken is dropped.
      if (number !== latest.current) return;
      setPlaces(found);
      setActive(0);
      setSaid(
        found.length === 0
          ? `No place of 3,000 people or more is called “${text.trim()}”. Try the nearest town, or type coordinates below.`
          : `${found.length} ${found.length === 1 ? 'place' : 'places'}, biggest first. Arrow keys choose, Enter takes.`,
      );
    } catch {
      if (number === latest.current)
        setSaid(
          'The list of places cannot be reached just now. Type coordinates below, or try again.',
        );
    }
  }

  function take(place: Place): void {
    latest.current += 1;
    clearTimeout(timer.current);
    setPlaces(null);
    setQuery(placeText(place));
    setSaid(`${placeText(place)} is set.`);
    onTake(place);
  }

  function onKeyDown(event: KeyboardEvent): void {
    const count = places?.length ?? 0;
    if (event.key === 'Enter') {
      // Enter must not send the form from here.
      event.preventDefault();
      const place = places?.[active];
      if (place !== undefined) take(place);
    } else if (event.key === 'Escape') {
      setPlaces(null);
    } else if (count > 0 && (event.key === 'ArrowDown' || event.key === 'ArrowUp')) {
      event.preventDefault();
      setActive((active + (event.key === 'ArrowDown' ? 1 : count - 1)) % count);
    }
  }

  const open = places !== null && places.length > 0;
  return (
    <div className="relative">
      <Field
        label="Search for a town"
        hint="Towns of 3,000 people and more, with or without accents."
      >
        {(control) => (
          <TextInput
            {...control}
            role="combobox"
            aria-expanded={open}
            aria-controls={open ? listId : undefined}
            aria-autocomplete="list"
            aria-activedescendant={open ? `${listId}-${active}` : undefined}
            autoComplete="off"
            spellCheck={false}
            className="max-w-md"
            value={query}
            onChange={(event) => ask(event.target.value)}
            onKeyDown={onKeyDown}
            onBlur={() => setPlaces(null)}
          />
        )}
      </Field>
      {open ? (
        <div
          id={listId}
          role="listbox"
          aria-label="Places found"
          className="absolute z-20 mt-1 max-h-80 w-full max-w-md overflow-y-auto rounded-md border border-strong bg-panel shadow-lg"
        >
          {places.map((place, index) => (
            // Keys are handled by the input, which keeps the focus, as the combobox pattern asks.
            // eslint-disable-next-line jsx-a11y/click-events-have-key-events
            <div
              key={place.id}
              id={`${listId}-${index}`}
              role="option"
              tabIndex={-1}
              aria-selected={index === active}
              className={`cursor-pointer px-3 py-2 ${index === active ? 'bg-accent-soft outline-2 -outline-offset-2 outline-focus' : 'hover:bg-sunken'}`}
              // Keeps the focus in the input, whose blur would close the list before the click.
              onPointerDown={(event) => event.preventDefault()}
              onClick={() => take(place)}
            >
              <span className="font-semibold">{place.name}</span>
              <span className="block text-sm text-soft">
                {join(readableRegion(place), countryOf(place))} ·{' '}
                {coordinateText(place.latitudeDeg, 'N', 'S')}{' '}
                {coordinateText(place.longitudeDeg, 'E', 'W')} · {place.elevationM} m
              </span>
            </div>
          ))}
        </div>
      ) : null}
      <StatusLine>{said}</StatusLine>
    </div>
  );
}

const coordinateText = (valueDeg: number, positive: string, negative: string): string =>
  `${Math.abs(valueDeg).toFixed(1)}° ${valueDeg < 0 ? negative : positive}`;

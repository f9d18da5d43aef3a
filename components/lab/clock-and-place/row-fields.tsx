'use client';

import { Select } from '@/components/ui/select';
import type { FormEntry } from '@/lib/clock/mount-form';
import type { FormDraft } from '@/lib/grading/bench/clock-and-place/clock-and-place-submission';
import { monthNames, offsetText } from './clock-words';
import { NumberField } from './number-field';

type RowFieldsProps = {
  row: FormEntry;
  form: FormDraft;
  onChange: (changes: Partial<FormDraft>) => void;
};

/** Offsets from UTC that zones of the world stand at without summer time (IANA time zone database). */
const offsets = [
  ...[-720, -660, -600, -570, -540, -480, -420, -360, -300, -240, -210, -180, -120, -60],
  ...[0, 60, 120, 180, 210, 240, 270, 300, 330, 345, 360, 390, 420, 480, 525],
  ...[540, 570, 600, 630, 660, 720, 765, 780, 840],
];

/** What a row of the mount's form is typed into. */
export function RowFields({ row, form, onChange }: RowFieldsProps) {
  switch (row) {
    case 'date':
      return (
        <>
          <NumberField
            {...{ label: 'Day', least: 1, most: 31, value: form.day }}
            onChange={(day) => {
              onChange({ day });
            }}
            className="w-16"
          />
          <Choice
            label="Month"
            className="w-36"
            value={form.month === null ? '' : String(form.month)}
            options={monthNames.map((name, index) => [String(index + 1), name])}
            onChange={(month) => {
              onChange({ month: month === '' ? null : Number(month) });
            }}
          />
          <NumberField
            {...{ label: 'Year', least: 1900, most: 2199, value: form.year }}
            onChange={(year) => {
              onChange({ year });
            }}
          />
        </>
      );
    case 'time':
      return (
        <>
          <NumberField
            {...{ label: 'Hour, 0 to 23', least: 0, most: 23, value: form.hour }}
            onChange={(hour) => {
              onChange({ hour });
            }}
            className="w-28"
          />
          <NumberField
            {...{ label: 'Minute', least: 0, most: 59, value: form.minute }}
            onChange={(minute) => {
              onChange({ minute });
            }}
          />
        </>
      );
    case 'zone':
      return (
        <Choice
          label="Without summer time"
          className="w-44"
          value={form.zoneMinutes === null ? '' : String(form.zoneMinutes)}
          options={offsetsWith(form.zoneMinutes).map((minutes) => [
            String(minutes),
            offsetText(minutes),
          ])}
          onChange={(minutes) => {
            onChange({ zoneMinutes: minutes === '' ? null : Number(minutes) });
          }}
        />
      );
    case 'summer-time':
      return (
        <Choice
          label="Is it in force?"
          className="w-32"
          value={form.summerTime === null ? '' : form.summerTime ? 'on' : 'off'}
          options={[
            ['on', 'on'],
            ['off', 'off'],
          ]}
          onChange={(on) => {
            onChange({ summerTime: on === '' ? null : on === 'on' });
          }}
        />
      );
    case 'latitude':
      return (
        <>
          <NumberField
            {...{ label: 'Degrees', least: 0, most: 90, value: form.latitudeDegrees, unit: '°' }}
            onChange={(latitudeDegrees) => {
              onChange({ latitudeDegrees });
            }}
          />
          <NumberField
            {...{ label: 'Minutes', least: 0, most: 59, value: form.latitudeMinutes, unit: '′' }}
            onChange={(latitudeMinutes) => {
              onChange({ latitudeMinutes });
            }}
          />
          <Choice
            label="Side"
            className="w-28"
            value={form.latitudeSide ?? ''}
            options={[
              ['N', 'north'],
              ['S', 'south'],
            ]}
            onChange={(side) => {
              onChange({ latitudeSide: side === 'N' || side === 'S' ? side : null });
            }}
          />
        </>
      );
    case 'longitude':
      return (
        <>
          <NumberField
            {...{ label: 'Degrees', least: 0, most: 180, value: form.longitudeDegrees, unit: '°' }}
            onChange={(longitudeDegrees) => {
              onChange({ longitudeDegrees });
            }}
          />
          <NumberField
            {...{ label: 'Minutes', least: 0, most: 59, value: form.longitudeMinutes, unit: '′' }}
            onChange={(longitudeMinutes) => {
              onChange({ longitudeMinutes });
            }}
          />
          <Choice
            label="Side"
            className="w-28"
            value={form.longitudeSide ?? ''}
            options={[
              ['E', 'east'],
              ['W', 'west'],
            ]}
            onChange={(side) => {
              onChange({ longitudeSide: side === 'E' || side === 'W' ? side : null });
            }}
          />
        </>
      );
  }
}

/** A rare offset of a given form is offered too. */
const offsetsWith = (given: number | null): readonly number[] =>
  given === null || offsets.includes(given)
    ? offsets
    : [...offsets, given].sort((one, other) => one - other);

type ChoiceProps = {
  label: string;
  value: string;
  options: readonly (readonly [string, string])[];
  onChange: (value: string) => void;
  className: string;
};

function Choice({ label, value, options, onChange, className }: ChoiceProps) {
  return (
    <label className={`flex flex-col text-sm ${className}`}>
      <span className="text-soft">{label}</span>
      <Select
        value={value}
        onChange={(event) => {
          onChange(event.target.value);
        }}
      >
        <option value="">–</option>
        {options.map(([key, text]) => (
          <option key={key} value={key}>
            {text}
          </option>
        ))}
      </Select>
    </label>
  );
}

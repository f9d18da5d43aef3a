/** IANA names that this computer's zone rules know, for a field to suggest. */
export const knownTimeZones = (): string[] => [
  'UTC',
  ...Intl.supportedValuesOf('timeZone').filter((zone) => zone !== 'UTC'),
];

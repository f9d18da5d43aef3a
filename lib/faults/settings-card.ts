import type { EnteredSettings } from '../clock/entered-settings';
import type { SettingsCard } from './evidence';

/** What was entered, as it stands on the card: signs of place as letters, as people write them. */
export const settingsCard = (entered: EnteredSettings): SettingsCard => ({
  localTime: entered.localTime,
  timeZoneOffset: offsetText(entered.zoneOffsetMinutes),
  summerTime: entered.summerTime,
  latitudeText: hemisphereText(entered.latitudeDeg, 'N', 'S'),
  longitudeText: hemisphereText(entered.longitudeDeg, 'E', 'W'),
});

const hemisphereText = (angleDeg: number, positive: string, negative: string): string =>
  `${Math.abs(angleDeg).toFixed(2)}° ${angleDeg < 0 ? negative : positive}`;

function offsetText(minutes: number): string {
  const size = Math.abs(minutes);
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${minutes < 0 ? '−' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

import type { CardPlace } from './clock-evening';

/**
 * Southern and western towns that a learner may be sent to; from the gazetteer of content/places
 * (GeoNames, CC BY 4.0), rounded to the arcminute. Their compasses err by 8° and more at the marked ones.
 */
const rows: readonly (readonly [string, number, number, string, 'needle-errs' | ''])[] = [
  ['Auckland', -36.849, 174.763, 'Pacific/Auckland', 'needle-errs'],
  ['Dunedin', -45.874, 170.504, 'Pacific/Auckland', 'needle-errs'],
  ['Hobart', -42.879, 147.329, 'Australia/Hobart', 'needle-errs'],
  ['Adelaide', -34.929, 138.599, 'Australia/Adelaide', 'needle-errs'],
  ['Perth, Australia', -31.952, 115.861, 'Australia/Perth', ''],
  ['Brisbane', -27.468, 153.028, 'Australia/Brisbane', 'needle-errs'],
  ['Cape Town', -33.926, 18.423, 'Africa/Johannesburg', 'needle-errs'],
  ['Windhoek', -22.559, 17.083, 'Africa/Windhoek', 'needle-errs'],
  ['Montevideo', -34.903, -56.188, 'America/Montevideo', 'needle-errs'],
  ['Santiago', -33.457, -70.648, 'America/Santiago', ''],
  ['Punta Arenas', -53.155, -70.911, 'America/Punta_Arenas', 'needle-errs'],
  ['Antofagasta', -23.652, -70.395, 'America/Santiago', ''],
  ['Halifax, Nova Scotia', 44.643, -63.577, 'America/Halifax', 'needle-errs'],
  ['St. John’s, Newfoundland', 47.565, -52.709, 'America/St_Johns', 'needle-errs'],
  ['Toronto', 43.7, -79.416, 'America/Toronto', 'needle-errs'],
  ['Denver', 39.739, -104.985, 'America/Denver', ''],
  ['Vancouver', 49.25, -123.119, 'America/Vancouver', 'needle-errs'],
  ['Anchorage', 61.218, -149.9, 'America/Anchorage', 'needle-errs'],
];

const placeOf = ([
  name,
  latitudeDeg,
  longitudeDeg,
  timeZone,
]: (typeof rows)[number]): CardPlace => ({
  name,
  timeZone,
  latitudeArcmin: Math.round(latitudeDeg * 60),
  longitudeArcmin: Math.round(longitudeDeg * 60),
});

export const awayPlaces: readonly CardPlace[] = rows.map(placeOf);

/** Where a compass points 8° and more beside true north. */
export const needlePlaces: readonly CardPlace[] = rows
  .filter((row) => row[4] === 'needle-errs')
  .map(placeOf);

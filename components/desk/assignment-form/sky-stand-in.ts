/**
 * What is stored as the evening of a task without one: any sound scenario will do, as nothing reads it.
 * The form shows none of it.
 */
export const skyStandIn = {
  placeName: 'Indoors',
  kitId: null,
  siteId: null,
  scenario: {
    place: { latitudeDeg: 0, longitudeDeg: 0, elevationM: 0 },
    horizon: [],
    localTime: '2026-01-01T20:00',
    timeZone: 'UTC',
    telescope: {
      focalLengthMm: 500,
      apertureMm: 80,
      computer: 'solved-zero',
      centringArcmin: 7.5,
      altitudeZeroArcmin: 30,
      coneArcmin: 8,
      axisSkewArcmin: 4,
    },
    eyepiece: { focalLengthMm: 9, apparentFieldDeg: 50 },
  },
};

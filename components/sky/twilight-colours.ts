export type Rgb = readonly [number, number, number];

/** What the sky dome is painted with, as display (sRGB) values from 0 to 1. */
export type TwilightColours = {
  zenith: Rgb;
  /** A third of the way up. */
  middle: Rgb;
  horizon: Rgb;
  /** Low in the sky on the Sun's side. */
  glow: Rgb;
  /** The paper the ground and the skyline are cut from. */
  ground: Rgb;
};

type Stop = TwilightColours & { sunAltitudeDeg: number };

const hex = (value: number): Rgb => [
  ((value >> 16) & 255) / 255,
  ((value >> 8) & 255) / 255,
  (value & 255) / 255,
];

/** Painted by eye, from full night to day; the altitudes are those that define the twilights. */
const stops: readonly Stop[] = [
  {
    sunAltitudeDeg: -18,
    zenith: hex(0x0d1424),
    middle: hex(0x17223a),
    horizon: hex(0x2b3650),
    glow: hex(0x2f3850),
    ground: hex(0x0b0e15),
  },
  {
    sunAltitudeDeg: -12,
    zenith: hex(0x121c33),
    middle: hex(0x20304f),
    horizon: hex(0x42506c),
    glow: hex(0x6a5a62),
    ground: hex(0x0d1119),
  },
  {
    sunAltitudeDeg: -9,
    zenith: hex(0x19294a),
    middle: hex(0x2e4670),
    horizon: hex(0x66779a),
    glow: hex(0xb07f63),
    ground: hex(0x11151e),
  },
  {
    sunAltitudeDeg: -6,
    zenith: hex(0x25406c),
    middle: hex(0x48679a),
    horizon: hex(0x8d9fbc),
    glow: hex(0xdf9d66),
    ground: hex(0x161a23),
  },
  {
    sunAltitudeDeg: 0,
    zenith: hex(0x4a78ad),
    middle: hex(0x7ba1c9),
    horizon: hex(0xc3ccd4),
    glow: hex(0xf4c38a),
    ground: hex(0x2a2d33),
  },
  {
    sunAltitudeDeg: 10,
    zenith: hex(0x5b90c8),
    middle: hex(0x92b8dc),
    horizon: hex(0xd3e0e8),
    glow: hex(0xf3ead8),
    ground: hex(0x4a4c4c),
  },
];

const mix = (a: Rgb, b: Rgb, share: number): Rgb => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
  a[2] + (b[2] - a[2]) * share,
];

/** The colours for a Sun at this (true) altitude in degrees. */
export function twilightColours(sunAltitudeDeg: number): TwilightColours {
  let below = stops[0];
  let above = stops[0];
  for (const stop of stops) {
    above = stop;
    if (stop.sunAltitudeDeg >= sunAltitudeDeg) break;
    below = stop;
  }
  if (below === undefined || above === undefined) throw new Error('there are no colours to mix');
  const span = above.sunAltitudeDeg - below.sunAltitudeDeg;
  const share =
    span > 0 ? Math.min(1, Math.max(0, (sunAltitudeDeg - below.sunAltitudeDeg) / span)) : 0;
  return {
    zenith: mix(below.zenith, above.zenith, share),
    middle: mix(below.middle, above.middle, share),
    horizon: mix(below.horizon, above.horizon, share),
    glow: mix(below.glow, above.glow, share),
    ground: mix(below.ground, above.ground, share),
  };
}

/** B−V of a star → the tint of its light, gentle as the eye sees it; white where unknown. */
export function starTint(colourIndex: number | null): Rgb {
  const tints: readonly (readonly [number, Rgb])[] = [
    [-0.3, hex(0x9dbdff)],
    [0.0, hex(0xc4d8ff)],
    [0.35, hex(0xf3f3ff)],
    [0.65, hex(0xffeccb)],
    [1.0, hex(0xffd499)],
    [1.5, hex(0xffb167)],
    [1.9, hex(0xff9550)],
  ];
  const value = colourIndex ?? 0.4;
  let below = tints[0];
  for (const above of tints) {
    if (below !== undefined && value <= above[0]) {
      const span = above[0] - below[0];
      return mix(below[1], above[1], span > 0 ? Math.max(0, (value - below[0]) / span) : 0);
    }
    below = above;
  }
  return hex(0xff9550);
}

import type { StarCatalogue } from '../../../sky/catalogue';

type Row = readonly [
  hip: number,
  name: string,
  raDeg: number,
  decDeg: number,
  pmRaMasYr: number,
  pmDecMasYr: number,
  magnitude: number,
];

/**
 * The stars that come out first at dusk: ICRS, epoch J2000.0, proper motion (μα cos δ), V. Copied from
 * `content/stars`, which the generator of a bench task is not given; a test compares the two. The two
 * stars of α Centauri look like one: the brighter stands for both.
 */
const rows: readonly Row[] = [
  [32349, 'Sirius', 101.2871554, -16.7161159, -546.04, -1223.11, -1.44],
  [30438, 'Canopus', 95.9879578, -52.6956614, 19.93, 23.24, -0.62],
  [69673, 'Arcturus', 213.9153003, 19.1824092, -1093.37, -2000.09, -0.05],
  [71683, 'Rigil Kentaurus', 219.9020553, -60.8339925, -3680.35, 474.86, -0.01],
  [91262, 'Vega', 279.2347348, 38.783689, 200.95, 286.24, 0.03],
  [24608, 'Capella', 79.1723279, 45.9979915, 75.25, -426.87, 0.08],
  [24436, 'Rigel', 78.6344671, -8.2016384, 1.31, 0.5, 0.18],
  [37279, 'Procyon', 114.8254979, 5.2249876, -714.6, -1036.82, 0.4],
  [7588, 'Achernar', 24.4285228, -57.2367528, 87, -38.24, 0.45],
  [27989, 'Betelgeuse', 88.792939, 7.407064, 27.54, 11.3, 0.45],
  [68702, 'Hadar', 210.9558556, -60.3730352, -33.27, -23.16, 0.61],
  [97649, 'Altair', 297.6958274, 8.8683212, 536.28, 385.32, 0.76],
  [60718, 'Acrux', 186.6495634, -63.0990929, -35.83, -14.86, 0.77],
  [21421, 'Aldebaran', 68.9801628, 16.5093024, 63.45, -188.93, 0.87],
  [65474, 'Spica', 201.2982474, -11.1613195, -42.35, -30.67, 0.98],
  [80763, 'Antares', 247.3519154, -26.4320026, -12.11, -23.3, 1.06],
  [37826, 'Pollux', 116.3289578, 28.0261989, -626.55, -45.81, 1.16],
  [113368, 'Fomalhaut', 344.4126927, -29.622237, 328.95, -164.66, 1.17],
  [102098, 'Deneb', 310.3579798, 45.2803388, 2.01, 1.85, 1.25],
  [49669, 'Regulus', 152.0929624, 11.9672088, -248.73, 5.59, 1.36],
];

export const duskStars: StarCatalogue = {
  version: 'first stars at dusk',
  figures: [],
  stars: rows.map(([hip, name, raDeg, decDeg, pmRaMasYr, pmDecMasYr, magnitude]) => ({
    hip,
    name,
    raDeg,
    decDeg,
    pmRaMasYr,
    pmDecMasYr,
    magnitude,
    hr: null,
    colourIndex: null,
    bayer: '',
    constellation: '',
    largeAmplitudeVariable: false,
  })),
};

/**
 * Everything lies on one sphere, so nothing is sorted by distance: the scene is painted from the
 * back to the front in this order, without a depth buffer.
 */
export const drawOrder = {
  dome: 0,
  figures: 5,
  stars: 10,
  planets: 11,
  clouds: 20,
  // The Moon shines through cloud.
  moon: 21,
  skyline: 30,
  skylineEdges: 31,
  fists: 40,
  signposts: 45,
  tube: 47,
  nameTags: 50,
  rings: 60,
  dot: 70,
} as const;

/** How the figure of a lean starts, on the server and in the browser alike. */
export const startingLeanDeg = 1;
export const startingFromHighDeg = 180;

/** Where a star is seen. Azimuth from north through east, altitude refracted; degrees. */
export type StarPosition = { azimuthDeg: number; altitudeDeg: number };

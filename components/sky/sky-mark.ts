/** Something the scene points out. */
export type SkyMark = {
  kind: 'selected' | 'kept' | 'proposed';
  azimuthDeg: number;
  altitudeDeg: number;
  /** Written beside a kept star; null while its name is not to be told. */
  label: string | null;
};

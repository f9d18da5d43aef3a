/** Something the scene points out. */
export type SkyMark = {
  kind: 'selected' | 'kept' | 'proposed' | 'asked';
  azimuthDeg: number;
  altitudeDeg: number;
  /** Written beside a kept star; null while its name is not to be told or would cover what is looked for. */
  label: string | null;
};

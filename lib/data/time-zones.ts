/** Whether the zone rules of this computer know the IANA name. */
export function isTimeZone(name: string): boolean {
  // Offsets such as "+02:00" are accepted by Intl but carry no summer time.
  if (!/^[A-Za-z]/.test(name)) return false;
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

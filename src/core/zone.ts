/** The name by which the machine knows a zone, of which people may use an older one; undefined when there is no such zone. */
export function knownZone(name: string): string | undefined {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone;
  } catch {
    return undefined;
  }
}

/** A zone as a person reads it; those of a fixed offset carry the other sign in their names. */
export const shownZone = (zone: string): string =>
  zone.replace(/^Etc\/GMT([+-])/, (_, sign: string) => `UTC${sign === '+' ? '-' : '+'}`);

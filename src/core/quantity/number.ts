/** A number with so many significant figures, as plain digits (never 1e5), trailing zeros after the point dropped. */
export function withFigures(value: number, figures: number): string {
  if (!Number.isFinite(value)) return Number.isNaN(value) ? 'unknown' : value > 0 ? 'never' : '−never';
  if (value === 0) return '0';
  const decimals = Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(value))));
  if (decimals > 12) return trimmed(value.toFixed(Math.min(decimals, 20)));
  return trimmed(Number(value.toPrecision(figures)).toFixed(decimals));
}

/** A number with so many decimals, trailing zeros kept. */
export const withDecimals = (value: number, decimals: number): string => tidyZero(value.toFixed(decimals));

const trimmed = (digits: string): string => tidyZero(digits.includes('.') ? digits.replace(/\.?0+$/, '') : digits);
const tidyZero = (digits: string): string => (/^-0(\.0*)?$/.test(digits) ? digits.slice(1) : digits);

/** Thousands marked with commas from 10,000 on; a minus sign that cannot be taken for a dash. */
export function forReading(digits: string): string {
  const [whole = '', decimals] = digits.replace('-', '').split('.');
  const marked = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, ',') : whole;
  return `${digits.startsWith('-') ? '−' : ''}${marked}${decimals === undefined ? '' : `.${decimals}`}`;
}

/** "a length", "an area". */
export const withArticle = (noun: string): string => `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;

/** Rounded to significant figures, as a number. */
export const roundedTo = (value: number, figures: number): number =>
  Number.isFinite(value) ? Number(value.toPrecision(figures)) : value;

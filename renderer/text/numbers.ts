/** Numbers and dates as people read them. One place for the language they are written in. */
const LANGUAGE = 'en-GB';

const formats = new Map<number, Intl.NumberFormat>();

/** A number with at most so many decimals, in the language's own marks. */
export function formatNumber(value: number, decimals = 2): string {
  const format = formats.get(decimals) ?? new Intl.NumberFormat(LANGUAGE, { maximumFractionDigits: decimals, useGrouping: 'min2' });
  formats.set(decimals, format);
  return format.format(value);
}

/** A belief as a whole percentage; never '0 %' or '100 %', which would claim certainty. */
export function formatBelief(belief: number): string {
  if (belief < 0.01) return 'under 1 %';
  if (belief > 0.99) return 'over 99 %';
  return `${Math.round(belief * 100)} %`;
}

const day = new Intl.DateTimeFormat(LANGUAGE, { dateStyle: 'long' });
const minute = new Intl.DateTimeFormat(LANGUAGE, { dateStyle: 'long', timeStyle: 'short' });

/** An ISO 8601 day or instant; as it stands when it is no date. */
export function formatDate(iso: string): string {
  const [year = 0, month = 1, date = 1] = iso.slice(0, 10).split('-').map(Number);
  const local = new Date(year, month - 1, date);
  return Number.isNaN(local.getTime()) ? iso : day.format(local);
}

export function formatInstant(iso: string): string {
  const instant = new Date(iso);
  return Number.isNaN(instant.getTime()) ? iso : minute.format(instant);
}

/** A number as it is put into a field: a point, no marks between thousands. */
export const plainNumber = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)));

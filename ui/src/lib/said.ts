import type { Interval, ProvenNumbers, Remark } from '../api/proofTypes';
import { between, withUnit, type UnitChoice } from './units';

/** Ends of the outside temperatures that are searched, in degC. */
export const LOWEST = -20;
export const HIGHEST = 80;

/** Both ends as numbers: where the search ended there is no more to know. */
export const ends = ([low, high]: Interval): { readonly low: number; readonly high: number } => ({
  low: low ?? LOWEST,
  high: high ?? HIGHEST,
});

type Height = Pick<ProvenNumbers, 'degC' | 'inside_searched_range'>;

export type Reach = 'found' | 'above' | 'below';

export function reachOf({ degC, inside_searched_range }: Height): Reach {
  return inside_searched_range ? 'found' : (degC ?? HIGHEST) >= (LOWEST + HIGHEST) / 2 ? 'above' : 'below';
}

/** Whether a build stands a day; null where the interval lies on both sides of it. */
export function holdsOn(day_degC: number, interval: Interval): boolean | null {
  const { low, high } = ends(interval);
  return low >= day_degC ? true : high < day_degC ? false : null;
}

/** As in "39.1 to 44.0 degC" or "below -20.0 to 44.0 degC". */
export function intervalWords(interval: Interval, choice: UnitChoice): string {
  const { low, high } = ends(interval);
  const [from, to] = [low <= LOWEST ? 'below ' : '', high >= HIGHEST ? 'above ' : ''];
  return from + between(low, high, 'degC', choice).replace(' to ', ` to ${to}`);
}

export function ceilingWords(numbers: Height, choice: UnitChoice): string {
  const reach = reachOf(numbers);
  const at = withUnit(numbers.degC ?? (reach === 'below' ? LOWEST : HIGHEST), 'degC', choice);
  return reach === 'found' ? at : `${reach} ${at}`;
}

const KINDS: Readonly<Record<string, string>> = {
  fan_on: 'fan on',
  fan_off: 'fan off',
  compressor_on: 'compressor on',
  compressor_off: 'compressor off',
  thermostat_open: 'thermostat opens',
  thermostat_closed: 'thermostat closes',
  heater_on: 'heater on',
  heater_off: 'heater off',
};

export const eventName = (kind: string): string => KINDS[kind] ?? kind.replaceAll('_', ' ');

/** Its letter in a picture, and whether the mark is filled: something began. */
export function eventMark(kind: string): { readonly letter: string; readonly filled: boolean } {
  return { letter: kind.charAt(0).toUpperCase(), filled: /_(on|open)$/.test(kind) };
}

/** A cause is named, however sure it is. */
export const namesCause = ({ values }: Pick<Remark, 'values'>): boolean => typeof values?.odds === 'number';

/** Asks for something to be done: a fault, a warning or a named cause. */
export const isLoud = (f: Pick<Remark, 'severity' | 'values'>): boolean => f.severity !== 'note' || namesCause(f);

/** Keys of findings by how often they come, as in "samples blank (2), time slips". */
export function kinds(keys: readonly string[]): string {
  const counts = new Map<string, number>();
  keys.forEach((key) => counts.set(key, (counts.get(key) ?? 0) + 1));
  return [...counts].map(([key, n]) => `${key.replaceAll('-', ' ')}${n > 1 ? ` (${n})` : ''}`).join(', ');
}

/** As in "3.2 MB". */
export function bytes(size: number): string {
  if (size < 1000) {
    return `${size} B`;
  }
  return size < 1e6 ? `${(size / 1e3).toFixed(0)} kB` : `${(size / 1e6).toFixed(1)} MB`;
}

export function minutes(s: number): string {
  return s < 90 ? `${Math.round(s)} s` : `${Math.round(s / 60)} min`;
}

const two = (n: number): string => String(n).padStart(2, '0');

/** A moment on this machine's clock, as in "2026-11-26 14:27". */
export function moment(stamp: string): string {
  const t = new Date(stamp);
  return `${t.getFullYear()}-${two(t.getMonth() + 1)}-${two(t.getDate())} ${two(t.getHours())}:${two(t.getMinutes())}`;
}

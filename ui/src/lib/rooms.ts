import type { CaseFigures } from '../api/scheduleTypes';
import type { Unit } from './units';

/** Room to one limit, in its unit; below 0 it gave way. */
export interface Room {
  readonly limit: string;
  readonly room: number;
  readonly unit: Unit;
  /** A fan at full speed keeps it. */
  readonly must: boolean;
}

/** In the order people look at them. */
const LIMITS = ['coolant', 'boiling', 'gearbox', 'charge-air', 'head-pressure', 'cabin-cooling', 'supply'];

const TITLES: Readonly<Record<string, string>> = {
  coolant: 'coolant', boiling: 'boiling', gearbox: 'gearbox fluid', 'charge-air': 'charge air', 'head-pressure': 'A/C high side', 'cabin-cooling': 'cabin cooling', supply: 'supply voltage',
};

export const limitTitle = (limit: string): string => TITLES[limit] ?? limit.replaceAll('-', ' ');

/** Margins come with their unit behind the name, as in head_pressure_kPa. */
export function roomsOf({ margins, must_hold }: Pick<CaseFigures, 'margins' | 'must_hold'>): readonly Room[] {
  const rooms = Object.entries(margins).map(([key, value]) => {
    const cut = key.lastIndexOf('_');
    const limit = key.slice(0, cut).replaceAll('_', '-');
    const unit = key.slice(cut + 1);
    const bar = unit === 'kPa';
    return { limit, room: bar ? value / 100 : value, unit: bar ? ('bar' as const) : (unit as Unit), must: must_hold.includes(limit) };
  });
  const place = (room: Room): number => (LIMITS.indexOf(room.limit) + LIMITS.length + 1) % (LIMITS.length + 1);
  return rooms.sort((a, b) => place(a) - place(b));
}

/** The limits that any of some cases has, in the order people look at them. */
export function limitsOf(cases: readonly Pick<CaseFigures, 'margins' | 'must_hold'>[]): readonly string[] {
  const there = new Set(cases.flatMap((c) => roomsOf(c).map((room) => room.limit)));
  return [...LIMITS.filter((limit) => there.has(limit)), ...[...there].filter((limit) => !LIMITS.includes(limit))];
}

/** All conversions of the page. The server speaks metric with the unit in the name; people read what they chose. */

export type UnitChoice = 'metric' | 'us' | 'mixed';
export type Unit = 'degC' | 'K' | 'mm' | 'mm2' | 'm/s' | 'km/h' | 'kPa' | 'bar' | 'V';

const MM_PER_IN = 25.4;
const KPA_PER_PSI = 6.894757293168;
const KMH_PER_MPH = 1.609344;
const M_S_PER_FT_MIN = 0.3048 / 60;

interface Shown {
  readonly unit: string;
  readonly digits: number;
  readonly of: (value: number) => number;
}

const same = (unit: string, digits: number): Shown => ({ unit, digits, of: (v) => v });

const METRIC: Readonly<Record<Unit, Shown>> = {
  degC: same('degC', 1),
  K: same('K', 1),
  mm: same('mm', 0),
  mm2: { unit: 'cm2', digits: 0, of: (v) => v / 100 },
  'm/s': same('m/s', 1),
  'km/h': same('km/h', 0),
  kPa: same('kPa', 0),
  bar: same('bar', 1),
  V: same('V', 1),
};

const WARM_AND_PRESSED: Partial<Record<Unit, Shown>> = {
  degC: { unit: 'degF', digits: 1, of: (v) => v * 1.8 + 32 },
  K: { unit: 'degF', digits: 1, of: (v) => v * 1.8 },
  kPa: { unit: 'psi', digits: 1, of: (v) => v / KPA_PER_PSI },
  bar: { unit: 'psi', digits: 0, of: (v) => (v * 100) / KPA_PER_PSI },
};

const US: Partial<Record<Unit, Shown>> = {
  ...WARM_AND_PRESSED,
  mm: { unit: 'in', digits: 2, of: (v) => v / MM_PER_IN },
  mm2: { unit: 'in2', digits: 1, of: (v) => v / (MM_PER_IN * MM_PER_IN) },
  'm/s': { unit: 'ft/min', digits: 0, of: (v) => v / M_S_PER_FT_MIN },
  'km/h': { unit: 'mph', digits: 0, of: (v) => v / KMH_PER_MPH },
};

function shown(unit: Unit, choice: UnitChoice): Shown {
  const own = choice === 'us' ? US[unit] : choice === 'mixed' ? WARM_AND_PRESSED[unit] : undefined;
  return own ?? METRIC[unit];
}

/** A rounded number never reads "-0.0". */
function rounded(value: number, digits: number): string {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? (0).toFixed(digits) : text;
}

export function withUnit(value: number, unit: Unit, choice: UnitChoice): string {
  const s = shown(unit, choice);
  return `${rounded(s.of(value), s.digits)} ${s.unit}`;
}

/** A temperature difference with its sign in front. */
export function change(kelvin: number, choice: UnitChoice): string {
  const s = shown('K', choice);
  const text = rounded(s.of(kelvin), s.digits);
  return `${Number(text) > 0 ? '+' : ''}${text} ${s.unit}`;
}

export function inUnit(value: number, unit: Unit, choice: UnitChoice): number {
  return shown(unit, choice).of(value);
}

/** Values of a limit carry their unit in the answer; an unknown one is shown as it came. */
export function anyUnit(value: number, unit: string, choice: UnitChoice): string {
  return unit in METRIC ? withUnit(value, unit as Unit, choice) : `${rounded(value, 1)} ${unit}`;
}

/** Room to a limit: of a temperature it is a difference. */
export function roomTo(value: number, unit: string, choice: UnitChoice): string {
  return anyUnit(value, unit === 'degC' ? 'K' : unit, choice);
}

/** How far a part moves with one press or at one catch of the pointer, in mm. */
export function step(choice: UnitChoice, fine: boolean): number {
  if (choice === 'us') {
    return (fine ? 0.05 : 0.2) * MM_PER_IN;
  }
  return fine ? 1 : 5;
}

/** A length as a person of these units would type it, true to a tenth of a millimetre. */
export function typedLength(mm: number, choice: UnitChoice): string {
  if (choice === 'us') {
    return `${Number((mm / MM_PER_IN).toFixed(3))} in`;
  }
  return `${Number(mm.toFixed(1))} mm`;
}

const LENGTHS: Readonly<Record<string, number>> = {
  mm: 1, cm: 10, m: 1000, in: MM_PER_IN, inch: MM_PER_IN, inches: MM_PER_IN, '"': MM_PER_IN, ft: 12 * MM_PER_IN,
};

/** Millimetres of a typed length, or null where the page cannot tell; the server has the last word. */
export function millimetres(typed: string): number | null {
  const parts = /^\s*(-?\d+(?:\.\d+)?)\s*([a-z"]+)\s*$/i.exec(typed);
  const factor = parts ? LENGTHS[(parts[2] ?? '').toLowerCase()] : undefined;
  return parts && factor !== undefined ? Number(parts[1]) * factor : null;
}

/** All conversions of the page. The server speaks metric with the unit in the name; people read what they chose. */

export type UnitChoice = 'metric' | 'us' | 'mixed';
export type Unit =
  | 'degC' | 'K' | 'mm' | 'mm2' | 'm' | 'm/s' | 'km/h' | 'kPa' | 'bar' | 'bar abs' | 'V' | 'A' | 'N' | 'g/s' | 'kg/s' | '%' | 'rpm' | 's'
  | 'W/K' | 'W/K/(m/s)' | 'J/K' | '1';

const MM_PER_IN = 25.4;
const KPA_PER_PSI = 6.894757293168;
const KMH_PER_MPH = 1.609344;
const M_PER_FT = 0.3048;
const M_S_PER_FT_MIN = M_PER_FT / 60;
const KG_PER_LB = 0.45359237;
const N_PER_LBF = KG_PER_LB * 9.80665;
const J_PER_BTU = 1055.05585262;
const W_K_PER_BTU_H_F = (J_PER_BTU / 3600) * 1.8;

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
  'bar abs': same('bar abs', 2),
  m: same('m', 0),
  V: same('V', 1),
  A: same('A', 1),
  N: same('N', 0),
  'g/s': same('g/s', 2),
  'kg/s': same('kg/s', 2),
  '%': same('%', 1),
  rpm: same('rpm', 0),
  s: same('s', 0),
  'W/K': same('W/K', 0),
  'W/K/(m/s)': same('W/K per m/s', 2),
  'J/K': { unit: 'kJ/K', digits: 1, of: (v) => v / 1000 },
  '1': same('', 2),
};

const WARM_AND_PRESSED: Partial<Record<Unit, Shown>> = {
  degC: { unit: 'degF', digits: 1, of: (v) => v * 1.8 + 32 },
  K: { unit: 'degF', digits: 1, of: (v) => v * 1.8 },
  kPa: { unit: 'psi', digits: 1, of: (v) => v / KPA_PER_PSI },
  bar: { unit: 'psi', digits: 0, of: (v) => (v * 100) / KPA_PER_PSI },
  'bar abs': { unit: 'psia', digits: 1, of: (v) => (v * 100) / KPA_PER_PSI },
};

const US: Partial<Record<Unit, Shown>> = {
  ...WARM_AND_PRESSED,
  mm: { unit: 'in', digits: 2, of: (v) => v / MM_PER_IN },
  mm2: { unit: 'in2', digits: 1, of: (v) => v / (MM_PER_IN * MM_PER_IN) },
  'm/s': { unit: 'ft/min', digits: 0, of: (v) => v / M_S_PER_FT_MIN },
  'km/h': { unit: 'mph', digits: 0, of: (v) => v / KMH_PER_MPH },
  m: { unit: 'ft', digits: 0, of: (v) => v / M_PER_FT },
  N: { unit: 'lbf', digits: 0, of: (v) => v / N_PER_LBF },
  'g/s': { unit: 'lb/min', digits: 2, of: (v) => (v * 0.06) / KG_PER_LB },
  'kg/s': { unit: 'lb/min', digits: 0, of: (v) => (v * 60) / KG_PER_LB },
  'W/K': { unit: 'Btu/h degF', digits: 0, of: (v) => v / W_K_PER_BTU_H_F },
  'W/K/(m/s)': { unit: 'Btu/h degF per mph', digits: 2, of: (v) => (v / W_K_PER_BTU_H_F) * (KMH_PER_MPH / 3.6) },
  'J/K': { unit: 'Btu/degF', digits: 1, of: (v) => v / J_PER_BTU / 1.8 },
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

/** The number alone, where its unit stands in the head of a table. */
export function bare(value: number, unit: Unit, choice: UnitChoice): string {
  const s = shown(unit, choice);
  return rounded(s.of(value), s.digits);
}

/** As in "39.1 to 44.0 degC". */
export function between(low: number, high: number, unit: Unit, choice: UnitChoice): string {
  const s = shown(unit, choice);
  return `${rounded(s.of(low), s.digits)} to ${rounded(s.of(high), s.digits)} ${s.unit}`;
}

/** The unit as people of these units write it. */
export function unitName(unit: string, choice: UnitChoice): string {
  return isKnown(unit) ? shown(unit, choice).unit : unit;
}

/** Digits that mean something in a figure of any size: 0.0053, 2.03, 144. */
export function threeDigits(value: number): string {
  const size = Math.abs(value);
  return size >= 100 ? value.toFixed(0) : String(Number(value.toPrecision(size < 0.01 ? 2 : 3)));
}

/** A value of an unknown, in three digits. */
export function figure(value: number, unit: string, choice: UnitChoice): string {
  const s = isKnown(unit) ? shown(unit, choice) : { unit, of: (v: number) => v };
  return `${threeDigits(s.of(value))} ${s.unit}`.trim();
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

/** The server may speak of units this page does not turn over; those are shown as they come. */
export const isKnown = (unit: string): unit is Unit => unit in METRIC;

/** Values of a limit carry their unit in the answer; an unknown one is shown as it came. */
export function anyUnit(value: number, unit: string, choice: UnitChoice): string {
  return isKnown(unit) ? withUnit(value, unit, choice) : `${rounded(value, 1)} ${unit}`;
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

const FAHRENHEIT = (v: number): number => (v - 32) / 1.8;
const by = (factor: number) => (v: number): number => v * factor;
const PSI_IN_BAR = KPA_PER_PSI / 100;

/** Units that a schedule is typed in, and what makes the page's own of them. */
const TYPED: Partial<Readonly<Record<Unit, Readonly<Record<string, (value: number) => number>>>>> = {
  degC: { degC: by(1), degF: FAHRENHEIT, K: (v) => v - 273.15 },
  K: { K: by(1), degC: by(1), degF: by(1 / 1.8) },
  'bar abs': { 'bar abs': by(1), 'kPa abs': by(0.01), psia: by(PSI_IN_BAR), 'psi abs': by(PSI_IN_BAR), 'MPa abs': by(10) },
  bar: { bar: by(1), kPa: by(0.01), psi: by(PSI_IN_BAR) },
  'km/h': { 'km/h': by(1), mph: by(KMH_PER_MPH), 'm/s': by(3.6) },
  '%': { '%': by(1), '': by(100) },
};

/** A typed value in a unit of the page, or null where the page cannot tell; the server has the last word. */
export function amount(typed: string, unit: Unit): number | null {
  const parts = /^\s*([+-]?\d+(?:\.\d+)?)\s*(.*?)\s*$/.exec(typed);
  const turn = parts ? TYPED[unit]?.[parts[2] ?? ''] : undefined;
  return parts && turn ? turn(Number(parts[1])) : null;
}

/** What a point of a curve catches on, coarse and fine, by the unit it is shown in. */
const GRIDS: Readonly<Record<string, readonly [number, number]>> = {
  degC: [0.5, 0.1], K: [0.5, 0.1], degF: [1, 0.2], 'bar abs': [0.1, 0.02], bar: [0.1, 0.01], psia: [1, 0.2], psi: [1, 0.2], 'km/h': [1, 0.5], mph: [1, 0.5], '%': [1, 0.5],
};

/** How far a point moves with one press, in the page's own unit. */
export function grid(unit: Unit, choice: UnitChoice, fine: boolean): number {
  const s = shown(unit, choice);
  const step = (GRIDS[s.unit] ?? [1, 0.1])[fine ? 1 : 0];
  return step / (s.of(1) - s.of(0));
}

/** The nearest round value to people of these units, in the page's own unit. */
export function caught(value: number, unit: Unit, choice: UnitChoice, fine: boolean): number {
  const s = shown(unit, choice);
  const scale = s.of(1) - s.of(0);
  const step = (GRIDS[s.unit] ?? [1, 0.1])[fine ? 1 : 0];
  return (Math.round(s.of(value) / step) * step - s.of(0)) / scale;
}

/** A value as a person of these units would type it into a curve. */
export function typedAmount(value: number, unit: Unit, choice: UnitChoice): string {
  const s = shown(unit, choice);
  return `${Number(s.of(value).toFixed(Math.max(1, s.digits)))} ${s.unit}`;
}

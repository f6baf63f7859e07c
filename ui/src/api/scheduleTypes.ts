/** The fan schedule of a build and what it does, as the server answers it. The unit stands at the end of a name. */
import type { Unit, UnitChoice } from '../lib/units';
import type { Change, Finding } from './types';

export const AIMS = ['quiet', 'balanced', 'cold'] as const;
export type Aim = (typeof AIMS)[number];

export interface ScheduleValue {
  readonly key: string;
  readonly typed: string;
}

/** A temperature, pressure or speed that a handle below a curve moves. */
export interface Mark {
  readonly key: string;
  readonly title: string;
}

export interface Bound {
  readonly title: string;
  readonly at: number;
}

export interface Curve {
  readonly key: string;
  readonly title: string;
  readonly unit: Unit;
  /** Two points must lie this far from each other. */
  readonly apart: number;
  /** It is taken off what the others ask for. */
  readonly taken_off: boolean;
  /** Key of how far below its first point it still counts, or null. */
  readonly hysteresis: string | null;
  readonly marks: readonly Mark[];
  readonly bounds: readonly Bound[];
}

/** A build whose sheet has faults has neither curves nor values. */
export interface ScheduleRead {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly units: UnitChoice;
  readonly version: string;
  readonly findings: readonly Finding[];
  readonly in_order: boolean;
  readonly day_degC?: number;
  readonly curves?: readonly Curve[];
  readonly values?: readonly ScheduleValue[];
}

export interface CaseFigures {
  readonly case: string;
  readonly title: string;
  readonly ambient_degC: number;
  /** 0: it must hold only. */
  readonly share_percent: number;
  readonly holds: boolean;
  /** Room to each limit, its unit at the end of the name; below 0 it gave way. */
  readonly margins: Readonly<Record<string, number>>;
  readonly must_hold: readonly string[];
  readonly cycling: { readonly amplitude_K: number; readonly period_s: number | null; readonly fan_swing_percent: number };
  readonly fan_percent: number;
  readonly energy_Wh_per_h: number;
  readonly starts_per_h: number;
}

/** What happens after key-off in the case with the least room. */
export interface AfterRun {
  readonly case: string;
  readonly title: string;
  readonly limit: string;
  readonly charge_Ah: number;
  readonly allowed_Ah: number;
  readonly time_s: number;
  /** Room to the limit, its unit at the end of the name. */
  readonly [room: `room_${string}`]: number;
}

export interface CoolingDown {
  readonly to_degC: number;
  /** Null: not within the time it was watched. */
  readonly time_s: number | null;
  readonly vent_after_10_min_degC: number;
}

/** What the compressor's rules do on the design day. */
export interface Conditioning {
  readonly cases: readonly {
    readonly case: string;
    readonly title: string;
    readonly clutch_per_min: number;
    /** Rule: share of the time. */
    readonly held_off_percent: Readonly<Record<string, number>>;
    readonly held_off_full_fan_percent: Readonly<Record<string, number>>;
  }[];
  readonly soaked_cabin: CoolingDown;
  readonly soaked_cabin_full_fan: CoolingDown;
}

export interface Report {
  readonly aim: Aim;
  readonly holds: boolean;
  readonly cost_W: number;
  readonly energy_Wh_per_h: number;
  readonly starts_per_h: number;
  readonly plain_switch: { readonly energy_Wh_per_h: number; readonly starts_per_h: number };
  readonly cases: readonly CaseFigures[];
  readonly reasons: readonly { readonly what: string; readonly why: string }[];
  readonly doubt?: { readonly vehicles: number; readonly held_percent: number; readonly worst_case: string };
  /** Null where no case switches the engine off. */
  readonly after_run: AfterRun | null;
  readonly findings: readonly Finding[];
  /** The schedule as a sheet has it. */
  readonly text?: string;
}

/** One after the other: what the sheet would then be, how many cases there are, case by case, the whole. */
export type Piece =
  | { readonly in_order: false; readonly findings: readonly Finding[] }
  | { readonly in_order: true; readonly values: readonly ScheduleValue[] }
  | { readonly vehicle: number; readonly cases: number; readonly first: number }
  | (CaseFigures & { readonly index: number })
  | { readonly report: Report }
  | { readonly air_conditioning: Conditioning; readonly findings: readonly Finding[] };

export interface Designed {
  readonly version: string;
  /** Another number for every vehicle, as long as the server runs. */
  readonly vehicle: number;
  readonly values: readonly ScheduleValue[];
  readonly report: Report;
}

export interface Question {
  readonly page: string;
  readonly aim: Aim;
  readonly units: UnitChoice;
  readonly changes: readonly Change[];
}

/** What the saved sheet of a build predicts, as the server answers it. The unit stands at the end of a name. */
import type { Interval } from './proofTypes';

export interface PredictedCase {
  readonly case: string;
  readonly title: string;
  readonly ambient_ceiling_degC: number;
  readonly interval90_degC: Interval;
  readonly inside_searched_range: boolean;
  readonly binding_title: string;
  /** 0..1, on the design day. */
  readonly chance_to_hold_there: number;
}

export interface ColdCase {
  readonly case: string;
  readonly title: string;
  readonly ambient_degC: number;
  readonly verdict: 'warm' | 'cools-out' | 'stays-cold';
  readonly warm_degC: number;
  readonly reach: readonly { readonly degC: number; readonly time_s: number | null }[];
  readonly coolant_at_end_degC: number;
  readonly cabin_at_end_degC: number;
}

export interface Intervals {
  readonly version: string;
  readonly day_degC: number;
  readonly cases: readonly PredictedCase[];
  readonly cold: readonly ColdCase[];
}

export interface MapPoint {
  /** Null where the engine has not the power. */
  readonly ambient_ceiling_degC: number | null;
  readonly reach: 'found' | 'above' | 'below';
  readonly binding_title: string | null;
}

/** Points by grade, then speed. */
export interface RoadMap {
  readonly version: string;
  readonly day_degC: number;
  readonly like: string;
  readonly speeds_km_h: readonly number[];
  readonly grades_percent: readonly number[];
  readonly points: readonly MapPoint[];
}

export interface MovedBy {
  readonly key: string;
  readonly value: string;
  readonly taken: string;
  readonly assumed: boolean;
  readonly change_K: Readonly<Record<string, number>>;
}

/** The value that moves most first. */
export interface Sensitivity {
  readonly version: string;
  readonly titles: Readonly<Record<string, string>>;
  readonly sensitivity: readonly MovedBy[];
}

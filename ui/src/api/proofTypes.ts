/** Recordings, jobs and the proof, as the server answers them. The unit stands at the end of a name. */
import type { UnitChoice } from '../lib/units';
import type { Aim } from './scheduleTypes';

/** What the server says of a recording, a job or a proof; a place is a file, a line, a column or a run. */
export interface Remark {
  readonly severity: 'fault' | 'warning' | 'note';
  readonly key: string;
  readonly message: string;
  readonly place?: string | null;
  /** Key of the setting of a map that can mend it, where the page has a control for it. */
  readonly control?: string;
  /** Of a cause that is named: how much speaks for it against a sound car. */
  readonly values?: { readonly odds?: number | null };
  readonly line?: number;
  readonly column?: number;
}

export interface Job {
  readonly id: string;
  readonly kind: 'prove' | 'map' | 'sensitivity' | 'intervals' | 'schedule';
  readonly build: string | null;
  readonly state: 'waiting' | 'running' | 'done' | 'failed' | 'cancelled';
  readonly what: string | null;
  readonly share: number;
  readonly running_s: number;
  readonly findings: readonly Remark[];
  readonly message: string | null;
}

export interface ProveWish {
  readonly kind: 'prove';
  readonly build: string;
  readonly fit: readonly string[];
  readonly predict: readonly string[];
  readonly observe_oil: boolean;
  readonly seed: number;
}

/** What the saved sheet of a build predicts, or the fan schedule it should have. */
export type StudyWish =
  | { readonly kind: 'intervals' | 'map' | 'sensitivity'; readonly build: string }
  | { readonly kind: 'schedule'; readonly build: string; readonly aim: Aim; readonly units: UnitChoice };

export interface Run {
  readonly name: string;
  /** The name it was sent with. */
  readonly title: string;
  readonly file: string;
  readonly bytes: number;
  /** Whose map reads it; `none`: a guess is offered. */
  readonly map: 'own' | 'shop' | 'none';
  readonly version: string;
}

export interface RunColumn {
  readonly position: number;
  readonly header: string;
  readonly unit: string | null;
  readonly examples: readonly string[];
}

export interface TimeMap {
  readonly position: number | null;
  readonly unit: string | null;
  readonly clock: string | null;
  /** From row to row, as typed, where no column holds time. */
  readonly step: string | null;
  readonly why?: string | null;
}

export interface ChannelTaken {
  readonly channel: string;
  readonly position: number | null;
  readonly unit: string | null;
  readonly constant: string | null;
  readonly why?: string | null;
}

export type Fact = 'on' | 'off' | 'unknown';
export type Facts = Readonly<Record<string, Fact>>;

export interface RunMap {
  readonly from: 'own' | 'shop' | 'guess';
  readonly time: TimeMap;
  readonly channels: readonly ChannelTaken[];
  readonly facts: Facts;
}

export interface PossibleChannel {
  readonly channel: string;
  readonly title: string;
  readonly units: readonly string[];
}

export interface RecordedChannel {
  readonly channel: string;
  readonly unit: string;
  readonly min: number | null;
  readonly max: number | null;
  readonly good: number;
  readonly samples: number;
}

/** Words of the controls of a map, as findings call them too. */
export interface MapControls {
  readonly time: string;
  readonly time_unit: string;
  readonly clock: string;
  /** Instead of a column for time. */
  readonly counted: string;
  readonly step: string;
  readonly taken_for: string;
  readonly unit: string;
  readonly constant: string;
  readonly known: string;
  /** By fact, in their order. */
  readonly facts: Readonly<Record<string, string>>;
}

export interface RunDetail extends Omit<Run, 'map'> {
  readonly columns: readonly RunColumn[];
  readonly map: RunMap;
  readonly possible: readonly PossibleChannel[];
  readonly controls: MapControls;
  readonly recording: { readonly rows: number; readonly duration_s: number; readonly channels: readonly RecordedChannel[] } | null;
  readonly findings: readonly Remark[];
}

/** What is sent to try or to save a map. */
export interface MapWish {
  readonly version: string;
  readonly time: TimeMap;
  readonly channels: readonly ChannelTaken[];
  readonly facts: Facts;
}

export type MapSaved =
  | { readonly kind: 'saved'; readonly run: RunDetail }
  | { readonly kind: 'changed-elsewhere'; readonly message: string }
  | { readonly kind: 'not-written'; readonly message: string }
  | { readonly kind: 'faults'; readonly findings: readonly Remark[] };

/** Every sample of one channel; NaN where there is none. */
export interface Samples {
  readonly unit: string;
  readonly time_s: Float64Array;
  readonly values: Float32Array;
}

/** Ends of 90 of 100; null where the search ended before one. */
export type Interval = readonly [number | null, number | null];

export interface ProvenNumbers {
  readonly degC: number | null;
  readonly interval90: Interval;
  readonly binding_limit: string;
  readonly binding_title: string;
  readonly inside_searched_range: boolean;
}

export interface ProvenCeiling extends ProvenNumbers {
  readonly case: string;
  readonly title: string;
  readonly design_ambient_degC: number;
  readonly without_run: ProvenNumbers;
}

export interface ProvenParameter {
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  readonly prior: { readonly value: number | null; readonly interval90: Interval };
  readonly posterior: { readonly value: number | null; readonly interval90: Interval };
  readonly informed: boolean;
}

export interface ProvenRun {
  readonly run: string;
  readonly role: 'fit' | 'predict';
  readonly single_number: boolean;
  readonly coolant: {
    readonly rmse_K: number | null;
    readonly bias_K: number | null;
    readonly max_error_K: number | null;
    readonly peak_degC: { readonly measured: number | null; readonly predicted: number | null; readonly interval90: Interval };
  };
  readonly coverage90: number | null;
  readonly null_rmse_K: number | null;
  readonly findings: readonly Remark[];
}

export interface SeenEvent {
  readonly run: string;
  readonly time_s: number;
  readonly kind: string;
  readonly value: number | null;
  readonly unit: string;
  readonly confidence: number | null;
  readonly evidence: string;
}

export interface NextTest {
  readonly test: string;
  readonly title: string;
  readonly duration_s: number;
  readonly case: string;
  readonly narrows_percent: number;
  readonly caution: string;
}

export interface Proven {
  readonly build: string;
  readonly converged: boolean;
  readonly runs: readonly ProvenRun[];
  readonly parameters: readonly ProvenParameter[];
  readonly ceilings: readonly ProvenCeiling[];
  readonly events: readonly SeenEvent[];
  readonly next_tests: readonly NextTest[];
  readonly findings: readonly Remark[];
}

type Column = readonly (number | null)[];

/** Coolant over one run, measured and as the fitted model has it. */
export interface FitTrace {
  readonly run: string;
  readonly role: 'fit' | 'predict';
  readonly time_s: readonly number[];
  readonly measured_degC: Column;
  readonly fitted_degC: Column;
  readonly low_degC: Column;
  readonly high_degC: Column;
  readonly residual_K: Column;
  readonly events: readonly { readonly time_s: number; readonly kind: string }[];
}

export interface ProofKept {
  readonly hotday: string;
  readonly made: string;
  readonly fit: readonly string[];
  readonly predict: readonly string[];
  readonly pdf: string;
  readonly proof: Proven;
  readonly traces: readonly FitTrace[];
  /** Sheet and recordings are as they were when it was made. */
  readonly current: boolean;
  readonly signed: boolean;
}

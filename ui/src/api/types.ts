/** What the server answers. The unit stands at the end of a name. */
import type { Turned } from '../lib/turned';
import type { UnitChoice } from '../lib/units';
import type { ProvenCeiling } from './proofTypes';

export interface Finding {
  readonly severity: 'fault' | 'warning' | 'note';
  readonly key: string;
  readonly message: string;
  readonly sheet_key: string | null;
  readonly line?: number;
  readonly column?: number;
}

export interface Stage {
  readonly sheet: boolean;
  readonly predicted: boolean;
  readonly commissioned: boolean;
  readonly proven: boolean;
  /** There is a proof, but the sheet or a recording has changed since. */
  readonly proof_old?: boolean;
  readonly signed: boolean;
}

export interface Worst {
  readonly case: string;
  readonly title: string;
  readonly ceiling_degC: number;
  readonly day_degC: number;
  readonly binding: string;
  readonly binding_title: string;
  readonly holds: boolean;
}

export interface ShopBuild {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly units: UnitChoice;
  readonly stage: Stage;
  readonly faults: readonly Finding[];
  readonly worst: Worst | null;
  /** Of the last proof, when it still is of this sheet and these recordings. */
  readonly proven: ProvenCeiling | null;
}

export interface Shop {
  readonly shop: string;
  readonly version: string;
  readonly builds: readonly ShopBuild[];
}

export interface TypedValue extends Turned {
  readonly line: number;
  readonly column: number;
}

export interface Assumption {
  readonly key: string;
  readonly value: string;
  readonly shown?: Turned['shown'];
  readonly reason: string;
}

/** Keys of the sheet behind the numbers of a part; a missing one cannot be changed. */
export type Edit = Readonly<Partial<Record<'left' | 'bottom' | 'width' | 'height' | 'depth' | 'layer' | 'gap', string>>>;

export interface Place {
  readonly left_mm: number;
  readonly bottom_mm: number;
  readonly width_mm: number;
  readonly height_mm: number;
}

export interface Core extends Place {
  readonly id: string;
  readonly title: string;
  readonly layer: number;
  readonly depth_mm: number;
  readonly air_speed_m_s: number;
  readonly air_degC: number;
  readonly edit: Edit;
}

export interface Opening extends Place {
  readonly id: string;
  readonly title: string;
  readonly edit: Edit;
}

export interface Shroud extends Place {
  readonly gap_mm2: number;
  readonly edit: Edit;
}

export interface Stack {
  readonly width_mm: number;
  readonly height_mm: number;
  readonly cores: readonly Core[];
  readonly openings: readonly Opening[];
  readonly shroud: Shroud;
  readonly fans: number;
  readonly fan_diameter_mm: number;
  readonly flap_area_mm2: number;
  readonly edit: Readonly<Partial<Record<'fans' | 'flap_area' | 'fan_diameter', string>>>;
}

export interface Ceiling {
  readonly case: string;
  readonly title: string;
  readonly ceiling_degC: number;
  readonly reach: 'found' | 'above' | 'below';
  readonly binding: string;
  readonly binding_title: string;
  readonly holds: boolean;
  readonly saved_degC: number | null;
}

export interface LimitNow {
  readonly limit: string;
  readonly title: string;
  readonly value: number;
  readonly bound: number;
  readonly unit: string;
  readonly room: number;
}

export interface GoodAnswer {
  readonly in_order: true;
  readonly took_ms: number;
  readonly findings: readonly Finding[];
  readonly day_degC: number;
  readonly stack: Stack;
  readonly ceilings: readonly Ceiling[];
  readonly now: readonly LimitNow[];
  /** What was tried; not there in the answer of the saved sheet. */
  readonly changed?: readonly Turned[];
}

export interface FaultyAnswer {
  readonly in_order: false;
  readonly findings: readonly Finding[];
}

export type Answer = GoodAnswer | FaultyAnswer;

export interface Build {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly units: UnitChoice;
  readonly version: string;
  readonly day_degC: number;
  readonly values: readonly TypedValue[];
  readonly assumptions: readonly Assumption[];
  readonly findings: readonly Finding[];
  readonly answer: Answer | null;
}

export interface Change {
  readonly key: string;
  readonly value: string;
}

export type Saved =
  | { readonly kind: 'saved'; readonly version: string; readonly answer: Answer }
  | { readonly kind: 'changed-elsewhere'; readonly message: string }
  | { readonly kind: 'not-written'; readonly message: string }
  | { readonly kind: 'faults'; readonly findings: readonly Finding[] };

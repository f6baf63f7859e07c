import type { UnitChoice } from './units';

/** A value as typed, and the same in units in which it reads otherwise. */
export interface Turned {
  readonly key: string;
  readonly typed: string;
  readonly shown?: Partial<Readonly<Record<UnitChoice, string>>> | undefined;
}

export type TurnedValues = ReadonlyMap<string, Turned['shown']>;

const name = (key: string, typed: string): string => `${key} ${typed}`;

export const turnedValues = (values: readonly Turned[]): TurnedValues => new Map(values.map((v) => [name(v.key, v.typed), v.shown]));

/** A value of the sheet in the units that were chosen; as typed without a choice, and where the server has not turned it over. */
export function inChosen(turned: TurnedValues, key: string, typed: string, chosen: UnitChoice | null): string {
  return (chosen === null ? undefined : turned.get(name(key, typed))?.[chosen]) ?? typed;
}

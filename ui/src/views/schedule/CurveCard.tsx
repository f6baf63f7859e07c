import { useSignal } from '@preact/signals';
import type { Curve } from '../../api/scheduleTypes';
import type { Finding } from '../../api/types';
import { CurveView, type Ghost, type Moved, type Rail } from '../../charts/CurveView';
import { useWidth } from '../../charts/frame';
import { inserted, pairsOf, pointsOf, textOf, withCell, withoutPair, type Point } from '../../lib/curve';
import type { Changes } from '../../lib/history';
import { amount, typedAmount, unitName, withUnit, type Unit, type UnitChoice } from '../../lib/units';
import type { ScheduleDesk } from '../../state/scheduleDesk';
import { units } from '../../state/settings';
import { Said, TypedField } from '../TypedField';

/** Fewest points that are still a curve. */
const FEWEST = 2;

/** One curve: dragged, or its numbers typed. */
export function CurveCard({ desk, curve }: { desk: ScheduleDesk; curve: Curve }) {
  const [ref, width] = useWidth();
  const choice = units.value;
  const { key, unit, apart } = curve;
  const points = desk.points(curve);
  const rails = railsOf(desk, curve, points);
  const put = (changes: Changes, held: boolean, move: string): void => (held ? desk.drag(changes) : desk.change(changes, move));
  const movePoint = (at: number, { to, x, y }: Moved, held: boolean): void => {
    const pairs = pairsOf(desk.history.value.now[key] ?? desk.typed(key));
    const across = x ? withCell(pairs, at, 0, typedAmount(to.x, unit, choice)) : pairs;
    put({ [key]: textOf(y ? withCell(across, at, 1, typedAmount(to.y, '%', choice)) : across) }, held, `${key} ${at}`);
  };
  const moveRail = (rail: Rail, to: number, held: boolean): void =>
    put(rail.key === curve.hysteresis ? { [rail.key]: typedAmount((points[0]?.x ?? to) - to, difference(unit), choice) } : { [rail.key]: typedAmount(to, unit, choice) }, held, rail.key);
  const open = useSignal(false);
  const keys = open.value ? [key] : [key, curve.hysteresis ?? '', ...curve.marks.map((m) => m.key)];
  const said = desk.inOrder.value ? [] : about(desk.findings.value, keys);
  return (
    <section class="card" data-curve={key} aria-labelledby={`curve:${key}`}>
      <h2 id={`curve:${key}`}>{curve.title}{curve.taken_off ? ', taken off' : ''} <span class="hint">over {unitName(unit, choice)}</span></h2>
      <div ref={ref}>
        {width > 0 && (
          <CurveView
            label={`${curve.title}: ${curve.taken_off ? 'what is taken off the demand' : 'how much of the fan is asked for'}`}
            unit={unit} units={choice} points={points} rails={rails} ghosts={ghostsOf(desk, curve)} bounds={curve.bounds}
            apart={apart} rises={!curve.taken_off} width={width}
            movePoint={movePoint} moveRail={moveRail} drop={() => desk.drop()} cancel={() => desk.cancelDrag()}
          />
        )}
      </div>
      <div class="said" aria-live="polite"><Said findings={said} /></div>
      {points.length === 0 && <p class="hint">The schedule has no such curve; the designed one has.</p>}
      <details hidden={points.length === 0} onToggle={(event) => { open.value = event.currentTarget.open; }}>
        <summary>Type the numbers</summary>
        <Numbers desk={desk} curve={curve} choice={choice} rails={rails} />
      </details>
    </section>
  );
}

export const about = (findings: readonly Finding[], keys: readonly string[]): readonly Finding[] => findings.filter((f) => keys.includes(f.sheet_key ?? ''));

/** How far below a value another one lies. */
const difference = (unit: Unit): Unit => (unit === 'bar abs' ? 'bar' : 'K');

function railsOf(desk: ScheduleDesk, curve: Curve, points: readonly Point[]): readonly Rail[] {
  const at = (key: string): number => desk.value(key, curve.unit) ?? NaN;
  const marks = curve.marks.map(({ key, title }) => ({ key, title, at: at(key), low: -Infinity, high: Infinity }));
  const step = curve.apart / 2;
  const limited = marks.map((mark) => {
    const named = (word: string): number => marks.find((m) => m.title === word)?.at ?? NaN;
    return mark.title === 'on' ? { ...mark, low: named('off') + step } : mark.title === 'off' ? { ...mark, high: named('on') - step } : mark;
  });
  const first = points[0]?.x;
  const below = curve.hysteresis === null ? null : desk.value(curve.hysteresis, difference(curve.unit));
  const counts = curve.hysteresis !== null && first !== undefined && below !== null
    ? [{ key: curve.hysteresis, title: 'off below', at: first - below, low: -Infinity, high: first - step }]
    : [];
  return [...limited, ...counts].filter((rail) => Number.isFinite(rail.at));
}

function ghostsOf(desk: ScheduleDesk, { key, unit }: Curve): readonly Ghost[] {
  const ghost = (kind: Ghost['kind'], typed: string | undefined): readonly Ghost[] => {
    const points = typed === undefined ? null : pointsOf(typed, unit);
    return points ? [{ kind, points }] : [];
  };
  return [...ghost('sheet', desk.savedValues.value.get(key)), ...ghost('designed', desk.designedValues.value.get(key))];
}

function Numbers({ desk, curve, choice, rails }: { desk: ScheduleDesk; curve: Curve; choice: UnitChoice; rails: readonly Rail[] }) {
  const { key, unit, apart } = curve;
  const typed = desk.typed(key);
  const pairs = pairsOf(typed);
  const was = pairsOf(desk.savedValues.value.get(key) ?? '');
  const points = pointsOf(typed, unit);
  const room = points && inserted(points, apart);
  const put = (next: readonly (readonly [string, string])[]): void => desk.change({ [key]: textOf(next) });
  const add = (): void => {
    if (room) {
      const pair = [typedAmount(room.point.x, unit, choice), typedAmount(room.point.y, '%', choice)] as const;
      put([...pairs.slice(0, room.at), pair, ...pairs.slice(room.at)]);
    }
  };
  const cell = (i: number, which: 0 | 1, of: Unit, label: string) => {
    const text = pairs[i]?.[which] ?? '';
    return (
      <TypedField
        id={`${key}:${i}:${which}`} label={label} value={inChosen(text, of, choice)} like={text} changed={was[i]?.[which] !== text} findings={[]}
        set={(value) => put(withCell(pairs, i, which, value))}
      />
    );
  };
  return (
    <>
      <ul class="points">
        {pairs.map((_, i) => (
          <li key={i}>
            {cell(i, 0, unit, `Point ${i + 1} at`)}
            {cell(i, 1, '%', curve.taken_off ? 'taken off' : 'fan')}
            <button type="button" disabled={pairs.length <= FEWEST} aria-label={`Take out point ${i + 1}`} onClick={() => put(withoutPair(pairs, i))}>Take out</button>
          </li>
        ))}
      </ul>
      <p><button type="button" disabled={room === null} onClick={add}>Add a point</button></p>
      <div class="fields">
        {rails.map((rail) => <Single key={rail.key} desk={desk} name={rail.key} label={rail.key === curve.hysteresis ? 'hysteresis below the first point' : rail.title} unit={rail.key === curve.hysteresis ? difference(unit) : unit} />)}
      </div>
      <p class="hint">Keys: arrows move a point, with Shift by less. Escape puts back what is in the hand.</p>
    </>
  );
}

/** In the units that were chosen, as far as the page can tell. */
function inChosen(text: string, unit: Unit | null, choice: UnitChoice): string {
  const value = unit === null ? null : amount(text, unit);
  return unit === null || value === null ? text : withUnit(value, unit, choice);
}

/** A single value of the schedule. */
export function Single({ desk, name, label, unit }: { desk: ScheduleDesk; name: string; label: string; unit: Unit | null }) {
  const text = desk.typed(name);
  return (
    <TypedField
      id={`value:${name}`} label={label} value={inChosen(text, unit, units.value)} like={text}
      changed={desk.savedValues.value.get(name) !== text} findings={desk.inOrder.value ? [] : about(desk.findings.value, [name])} set={(value) => desk.change({ [name]: value })}
    />
  );
}

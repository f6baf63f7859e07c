import type { Curve } from '../../api/scheduleTypes';
import { pairsOf } from '../../lib/curve';
import { amount, type Unit } from '../../lib/units';
import type { ScheduleDesk } from '../../state/scheduleDesk';
import { Single } from './CurveCard';

const TURNED: readonly Unit[] = ['degC', 'km/h'];

/** What no curve shows: floor, switching, slew, after-run. */
export function Other({ desk, curves }: { desk: ScheduleDesk; curves: readonly Curve[] }) {
  const drawn = new Set(curves.flatMap((c) => [c.key, c.hysteresis, ...c.marks.map((m) => m.key)]));
  const keys = [...new Set([...desk.savedValues.value.keys(), ...Object.keys(desk.changes.value)])].filter((key) => !drawn.has(key) && desk.typed(key) !== '');
  const changed = keys.filter((key) => desk.changes.value[key] !== undefined).length;
  return (
    <section class="card" aria-labelledby="other-title">
      <h2 id="other-title">Floor, switching, slew, after-run</h2>
      <details>
        <summary>{keys.length} values{changed > 0 ? `, ${changed} changed` : ''}</summary>
        <div class="fields">
          {keys.map((key) => (
            <Single key={key} desk={desk} name={key} label={key.replace('schedule.', '').replaceAll('.', ', ').replaceAll('_', ' ')} unit={unitOf(desk.typed(key))} />
          ))}
        </div>
      </details>
    </section>
  );
}

/** Curves among them are shown as they are typed. */
const unitOf = (typed: string): Unit | null => (pairsOf(typed).length > 0 ? null : (TURNED.find((unit) => amount(typed, unit) !== null) ?? null));

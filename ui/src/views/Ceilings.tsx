import type { Ceiling, LimitNow } from '../api/types';
import { Thermometer } from '../charts/Thermometer';
import { anyUnit, change, roomTo, withUnit, type UnitChoice } from '../lib/units';
import type { Desk } from '../state/desk';
import { units } from '../state/settings';
import { Verdict } from './Verdict';

export function Ceilings({ desk }: { desk: Desk }) {
  const answer = desk.good.value;
  const choice = units.value;
  return (
    <section class="card ceilings" aria-labelledby="ceilings-title">
      <h2 id="ceilings-title">Ambient ceilings</h2>
      {answer && !desk.inOrder.value && <p class="old">Of the last sheet in order.</p>}
      {!answer && <p>None before the sheet is in order.</p>}
      {answer && (
        <>
          <p class="day">
            <svg width="20" height="24" aria-hidden="true"><path class="day" d="M5 1V23" /><path class="flag" d="M5 1 18 6 5 11Z" /></svg>
            Design day {withUnit(answer.day_degC, 'degC', choice)}
          </p>
          <ul class="cases">
            {answer.ceilings.map((c) => <Case key={c.case} ceiling={c} day={answer.day_degC} choice={choice} />)}
          </ul>
        </>
      )}
    </section>
  );
}

function height(c: Ceiling, choice: UnitChoice): string {
  const at = withUnit(c.ceiling_degC, 'degC', choice);
  return c.reach === 'above' ? `above ${at}` : c.reach === 'below' ? `below ${at}` : at;
}

function against(c: Ceiling, choice: UnitChoice): string {
  if (c.saved_degC === null || Math.abs(c.ceiling_degC - c.saved_degC) < 0.05) {
    return '';
  }
  return `${change(c.ceiling_degC - c.saved_degC, choice)} from saved`;
}

function Case({ ceiling, day, choice }: { ceiling: Ceiling; day: number; choice: UnitChoice }) {
  const moved = against(ceiling, choice);
  const room = Math.abs(ceiling.ceiling_degC - day);
  const spare = `${change(room, choice).replace('+', '')} ${ceiling.holds ? 'to spare' : 'short of it'}`;
  return (
    <li>
      <h3>{ceiling.title}</h3>
      <p class="line"><b class="number">{height(ceiling, choice)}</b> <Verdict holds={ceiling.holds} />{ceiling.reach === 'found' && <span>{spare}</span>}</p>
      <Thermometer ceiling={ceiling.ceiling_degC} reach={ceiling.reach} saved={moved === '' ? null : ceiling.saved_degC} day={day} holds={ceiling.holds} units={choice} />
      <p class="line">
        <span><b>{ceiling.binding_title}</b> gives way first</span>
        {moved !== '' && <span class="moved">{moved}</span>}
      </p>
    </li>
  );
}

export function LimitsNow({ desk }: { desk: Desk }) {
  const choice = units.value;
  const now = desk.good.value?.now ?? [];
  if (now.length === 0) {
    return null;
  }
  return (
    <section class="card limits" aria-labelledby="limits-title">
      <h2 id="limits-title">What limits now</h2>
      <p class="hint">Hot idle on the design day, fan by its schedule.</p>
      <ul>{now.map((limit) => <Row key={limit.limit} limit={limit} choice={choice} />)}</ul>
    </section>
  );
}

function Row({ limit, choice }: { limit: LimitNow; choice: UnitChoice }) {
  return (
    <li class={limit.room < 0 ? 'short' : ''}>
      <p class="line">
        <b>{limit.title}</b>
        <b class="room">{roomTo(Math.abs(limit.room), limit.unit, choice)} {limit.room < 0 ? 'too far' : 'of room'}</b>
      </p>
      <p class="hint">{anyUnit(limit.value, limit.unit, choice)}, bound {anyUnit(limit.bound, limit.unit, choice)}</p>
    </li>
  );
}

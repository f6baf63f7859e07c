import type { ColdCase, PredictedCase } from '../../api/predictionTypes';
import { Thermometer } from '../../charts/Thermometer';
import { ceilingWords, ends, holdsOn, intervalWords, minutes, reachOf } from '../../lib/said';
import { withUnit, type UnitChoice } from '../../lib/units';
import type { PredictionDesk } from '../../state/predictionDesk';
import { units } from '../../state/settings';
import { Verdict } from '../Verdict';
import { Progress } from './Progress';

/** One row a case: design day, ceiling, and where it lies in 90 of 100. */
export function Rows({ desk }: { desk: PredictionDesk }) {
  const choice = units.value;
  const result = desk.intervals.result.value;
  return (
    <section class="card rows" aria-labelledby="rows-title">
      <h2 id="rows-title">How hot a day it stands</h2>
      <p class="hint">From the saved sheet alone. A wide band is honest: nothing has been driven yet; a recorded mild day narrows it.</p>
      <Progress work={desk.intervals} label="How far the intervals are" />
      {result && (
        <>
          <p class="day">
            <svg width="20" height="24" aria-hidden="true"><path class="day" d="M5 1V23" /><path class="flag" d="M5 1 18 6 5 11Z" /></svg>
            Design day {withUnit(result.day_degC, 'degC', choice)}
          </p>
          <ul class="cases predicted">{result.cases.map((c) => <Row key={c.case} predicted={c} day={result.day_degC} choice={choice} />)}</ul>
          {result.cold.map((c) => <Cold key={c.case} cold={c} choice={choice} />)}
        </>
      )}
    </section>
  );
}

function Row({ predicted, day, choice }: { predicted: PredictedCase; day: number; choice: UnitChoice }) {
  const numbers = { degC: predicted.ambient_ceiling_degC, interval90: predicted.interval90_degC, inside_searched_range: predicted.inside_searched_range };
  const reach = reachOf(numbers);
  const holds = holdsOn(day, numbers.interval90);
  return (
    <li>
      <div class="said-first">
        <h3>{predicted.title}</h3>
        <p class="line"><b class="number">{ceilingWords(numbers, choice)}</b> <Verdict holds={holds} /></p>
      </div>
      <Thermometer ceiling={predicted.ambient_ceiling_degC} reach={reach} saved={null} day={day} holds={holds} units={choice} band={ends(numbers.interval90)} />
      <p class="hint">
        90 of 100: {intervalWords(numbers.interval90, choice)}; holds on the design day in {Math.round(100 * predicted.chance_to_hold_there)} of 100.{' '}
        {reach === 'above' ? 'Nothing gives way in the range that was searched.' : <><b>{predicted.binding_title}</b> gives way first.</>}
      </p>
    </li>
  );
}

const COLD: Readonly<Record<ColdCase['verdict'], string>> = {
  warm: 'gets warm and stays so',
  'cools-out': 'gets warm and cools out again: look at thermostat and heater',
  'stays-cold': 'does not get warm in this time: look at thermostat, heater and air',
};

function Cold({ cold, choice }: { cold: ColdCase; choice: UnitChoice }) {
  const at = (v: number): string => withUnit(v, 'degC', choice);
  const reached = cold.reach.filter((r) => r.time_s !== null).map((r) => `${at(r.degC)} after ${minutes(r.time_s ?? 0)}`);
  return (
    <div class="cold">
      <h3>{cold.title}, {at(cold.ambient_degC)} outside</h3>
      <p><b>{COLD[cold.verdict]}</b></p>
      <p class="hint">
        {reached.length > 0 ? `Coolant reaches ${reached.join(', ')}. ` : ''}At the end coolant has {at(cold.coolant_at_end_degC)} and the cabin {at(cold.cabin_at_end_degC)}.
      </p>
    </div>
  );
}

import type { MapPoint, RoadMap } from '../../api/predictionTypes';
import { inUnit, unitName, withUnit, type UnitChoice } from '../../lib/units';
import type { PredictionDesk } from '../../state/predictionDesk';
import { units } from '../../state/settings';
import { Wide } from '../Table';
import { Progress } from './Progress';

/** Closer to the design day than this, in K, neither side is sure. */
const NEAR = 3;

/** Ceilings over speed and grade as a table that is also a picture. */
export function RoadMapView({ desk }: { desk: PredictionDesk }) {
  const choice = units.value;
  const map = desk.map.result.value;
  return (
    <section class="card roads" aria-labelledby="roads-title">
      <h2 id="roads-title">Over speed and grade</h2>
      <Progress work={desk.map} label="How far the map is" />
      {map && (
        <>
          <p class="hint">
            Ceiling in {unitName('degC', choice)} of driving on at one speed, cabin as in "{map.like}", fan at full speed; below it what gives way first. Design day {withUnit(map.day_degC, 'degC', choice)}.
          </p>
          <ul class="reading" aria-label="How to read the squares">
            <li><span class="square short">&#9660;</span> below the design day</li>
            <li><span class="square near">&#9670;</span> within {withUnit(NEAR, 'K', choice)} of it</li>
            <li><span class="square holds">&nbsp;</span> above it</li>
          </ul>
          <Wide label="Ceilings over speed and grade">
            <Squares map={map} choice={choice} />
          </Wide>
        </>
      )}
    </section>
  );
}

function Squares({ map, choice }: { map: RoadMap; choice: UnitChoice }) {
  const steepest = [...map.grades_percent.keys()].reverse();
  return (
    <table class="squares">
      <thead>
        <tr>
          <th scope="col">grade</th>
          {map.speeds_km_h.map((v) => <th key={v} scope="col">{withUnit(v, 'km/h', choice)}</th>)}
        </tr>
      </thead>
      <tbody>
        {steepest.map((row) => (
          <tr key={row}>
            <th scope="row">{map.grades_percent[row]} %</th>
            {map.speeds_km_h.map((v, column) => <Square key={v} point={map.points[row * map.speeds_km_h.length + column]} day={map.day_degC} choice={choice} />)}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Square({ point, day, choice }: { point: MapPoint | undefined; day: number; choice: UnitChoice }) {
  const at = point?.ambient_ceiling_degC ?? null;
  if (!point || at === null) {
    return <td class="square none">-<small>not the power</small></td>;
  }
  const kind = point.reach === 'above' ? 'holds' : at < day - NEAR ? 'short' : at < day + NEAR ? 'near' : 'holds';
  const mark = kind === 'short' ? '\u25bc ' : kind === 'near' ? '\u25c6 ' : '';
  const number = Math.round(inUnit(at, 'degC', choice));
  return (
    <td class={`square ${kind}`}>
      <span aria-hidden="true">{mark}</span>
      <b>{point.reach === 'found' ? number : `${point.reach === 'above' ? '>' : '<'} ${number}`}</b>
      <small>{point.binding_title ?? ''}</small>
    </td>
  );
}

import type { ProofKept, ProvenCeiling, ProvenRun } from '../../api/proofTypes';
import { Thermometer } from '../../charts/Thermometer';
import { ceilingWords, ends, holdsOn, HIGHEST, intervalWords, LOWEST, reachOf } from '../../lib/said';
import { change, withUnit, type UnitChoice } from '../../lib/units';
import { units } from '../../state/settings';
import { Table } from '../Table';
import { Verdict } from '../Verdict';
import { Remarks } from './Remarks';

/** Ceilings before and after the runs, how well the model met them, and what was found. */
export function Result({ kept }: { kept: ProofKept }) {
  const { proof } = kept;
  const choice = units.value;
  const day = proof.ceilings[0]?.design_ambient_degC;
  return (
    <section class="card result" aria-labelledby="result-title">
      <h2 id="result-title">Ambient ceilings after the runs</h2>
      {!proof.converged && <div class="notice bad"><p>The fit did not settle: read with care.</p></div>}
      {day !== undefined && (
        <p class="day">
          <svg width="20" height="24" aria-hidden="true"><path class="day" d="M5 1V23" /><path class="flag" d="M5 1 18 6 5 11Z" /></svg>
          Design day {withUnit(day, 'degC', choice)}
        </p>
      )}
      <ul class="reading" aria-label="How to read the bars">
        <li><svg width="46" height="24" aria-hidden="true" class="bar"><g class="band after"><line class="run" x1="4" x2="42" y1="12" y2="12" /><path class="end" d="M4 4V20M42 4V20" /></g></svg> where it lies in 90 of 100, after the runs</li>
        <li><svg width="46" height="24" aria-hidden="true" class="bar"><g class="band before"><line class="run" x1="4" x2="42" y1="12" y2="12" /><path class="end" d="M4 4V20M42 4V20" /></g></svg> the same from the sheet alone</li>
      </ul>
      <ul class="cases proven">{proof.ceilings.map((c) => <Case key={c.case} ceiling={c} choice={choice} />)}</ul>
      <Remarks findings={proof.findings} about="on the proof" />
      <Agreement runs={proof.runs} choice={choice} />
    </section>
  );
}

function Case({ ceiling, choice }: { ceiling: ProvenCeiling; choice: UnitChoice }) {
  const holds = holdsOn(ceiling.design_ambient_degC, ceiling.interval90);
  const sheet = ceiling.without_run;
  const reach = reachOf(ceiling);
  const height = ceiling.degC ?? (reach === 'below' ? LOWEST : HIGHEST);
  return (
    <li>
      <h3>{ceiling.title}</h3>
      <p class="line">
        <b class="number">{ceilingWords(ceiling, choice)}</b> <Verdict holds={holds} />
      </p>
      <p>90 of 100: {intervalWords(ceiling.interval90, choice)}</p>
      <Thermometer
        ceiling={height} reach={reach} saved={null} day={ceiling.design_ambient_degC} holds={holds} units={choice} band={ends(ceiling.interval90)}
        before={{ ceiling: sheet.degC ?? LOWEST, band: ends(sheet.interval90) }}
      />
      <p>{reach === 'above' ? 'Nothing gives way in the range that was searched' : <><b>{ceiling.binding_title}</b> gives way first</>}</p>
      <p class="hint">From the sheet alone: {ceilingWords(sheet, choice)} ({intervalWords(sheet.interval90, choice)})</p>
    </li>
  );
}

function Agreement({ runs, choice }: { runs: readonly ProvenRun[]; choice: UnitChoice }) {
  const kelvin = (v: number | null): string => (v === null ? '-' : change(v, choice));
  const size = (v: number | null): string => kelvin(v).replace('+', '');
  const at = (v: number | null): string => (v === null ? '-' : withUnit(v, 'degC', choice));
  return (
    <>
      <h3>How the model met coolant</h3>
      <Table
        label="Agreement of model and recordings"
        head={['recording', 'used to', 'rms', 'bias', 'worst', 'without a model', 'peak measured', 'peak of the model', 'inside its band']}
        rows={runs.map((r) => ({
          key: r.run,
          cells: [
            r.run,
            r.role,
            size(r.coolant.rmse_K),
            kelvin(r.coolant.bias_K),
            size(r.coolant.max_error_K),
            size(r.null_rmse_K),
            at(r.coolant.peak_degC.measured),
            r.single_number ? at(r.coolant.peak_degC.predicted) : `no single number: ${peakRange(r, choice)}`,
            r.coverage90 === null ? '-' : `${Math.round(100 * r.coverage90)} %`,
          ],
        }))}
      />
      {runs.map((r) => <Remarks key={r.run} findings={r.findings} about={`on ${r.run}`} />)}
    </>
  );
}

function peakRange(run: ProvenRun, choice: UnitChoice): string {
  const [low, high] = run.coolant.peak_degC.interval90;
  return low === null || high === null ? '-' : `${withUnit(low, 'degC', choice)} to ${withUnit(high, 'degC', choice)}`;
}

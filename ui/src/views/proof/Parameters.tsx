import type { ProvenParameter } from '../../api/proofTypes';
import { Range } from '../../charts/Range';
import { figure, withUnit, type UnitChoice } from '../../lib/units';
import { units } from '../../state/settings';

/** Temperatures of hundreds of kelvin are readings, small ones differences. */
const A_READING = 200;

/** What the runs told of the car, and what they did not. */
export function Parameters({ parameters, runs }: { parameters: readonly ProvenParameter[]; runs: number }) {
  const told = parameters.filter((p) => p.informed);
  const silent = parameters.filter((p) => !p.informed);
  const these = runs === 1 ? 'This run' : 'These runs';
  return (
    <section class="card parameters" aria-labelledby="parameters-title">
      <h2 id="parameters-title">What the {runs === 1 ? 'run' : 'runs'} told</h2>
      <p>{told.length === 0 ? `${these} told nothing new about the car.` : `${these} told about ${told.map((p) => p.label).join(', ')}.`}</p>
      <ul class="reading" aria-label="How to read the pictures">
        <li><svg width="46" height="24" aria-hidden="true" class="bar"><g class="band before"><line class="run" x1="4" x2="42" y1="12" y2="12" /><path class="end" d="M4 5V19M42 5V19" /></g></svg> before</li>
        <li><svg width="46" height="24" aria-hidden="true" class="bar"><g class="band after"><line class="run" x1="4" x2="42" y1="12" y2="12" /><path class="end" d="M4 5V19M42 5V19" /></g></svg> after</li>
      </ul>
      <List parameters={told} />
      {silent.length > 0 && (
        <details>
          <summary>Not told: {silent.length === 1 ? '1 value keeps' : `${silent.length} values keep`} about the doubt of the sheet</summary>
          <List parameters={silent} />
        </details>
      )}
    </section>
  );
}

function List({ parameters }: { parameters: readonly ProvenParameter[] }) {
  const choice = units.value;
  return <ul class="told">{parameters.map((p) => <Row key={p.name} parameter={p} choice={choice} />)}</ul>;
}

function Row({ parameter, choice }: { parameter: ProvenParameter; choice: UnitChoice }) {
  const { prior, posterior } = parameter;
  const say = (v: number | null): string => (v === null ? '-' : said(v, parameter, choice));
  const drawn = (r: ProvenParameter['prior']) => {
    const [low, high] = r.interval90;
    return r.value === null || low === null || high === null ? null : { value: r.value, low, high };
  };
  const [before, after] = [drawn(prior), drawn(posterior)];
  return (
    <li>
      <h3>{parameter.label}</h3>
      <p>now <b>{say(posterior.value)}</b> ({say(posterior.interval90[0])} to {say(posterior.interval90[1])})</p>
      <p class="hint">sheet {say(prior.value)} ({say(prior.interval90[0])} to {say(prior.interval90[1])})</p>
      {before && after && <Range before={before} after={after} />}
    </li>
  );
}

function said(value: number, { unit, prior }: ProvenParameter, choice: UnitChoice): string {
  if (unit !== 'K') {
    return figure(value, unit, choice);
  }
  return (prior.value ?? 0) > A_READING ? withUnit(value - 273.15, 'degC', choice) : withUnit(value, 'K', choice);
}

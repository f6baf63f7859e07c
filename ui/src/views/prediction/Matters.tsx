import type { MovedBy, Sensitivity } from '../../api/predictionTypes';
import { change } from '../../lib/units';
import type { PredictionDesk } from '../../state/predictionDesk';
import { units } from '../../state/settings';
import { Table } from '../Table';
import { Progress } from './Progress';

/** As many as somebody would measure. */
const SHOWN = 12;

/** Which values of the sheet are worth measuring again. */
export function Matters({ desk }: { desk: PredictionDesk }) {
  const result = desk.matters.result.value;
  const job = desk.matters.job.value;
  return (
    <section class="card matters" aria-labelledby="matters-title">
      <h2 id="matters-title">Which values matter</h2>
      <p class="hint">Every value is taken 10 % off (a temperature 5 K), one after the other; the one that moves a ceiling of a steady case most comes first. Measure those again.</p>
      {!job && !desk.matters.trouble.value && <button type="button" onClick={() => desk.rank()}>Rank the values</button>}
      <Progress work={desk.matters} label="How far the ranking is" />
      {result && <Ranked result={result} />}
    </section>
  );
}

const largest = (row: MovedBy): readonly [string, number] =>
  Object.entries(row.change_K).reduce((a, b) => (Math.abs(b[1]) > Math.abs(a[1]) ? b : a), ['', 0] as readonly [string, number]);

function Ranked({ result }: { result: Sensitivity }) {
  const choice = units.value;
  const rows = result.sensitivity.slice(0, SHOWN);
  const most = Math.abs(rows[0] ? largest(rows[0])[1] : 1) || 1;
  return (
    <Table
      label="Values by what they move" kind="ranked"
      head={['value', 'stands at', 'taken as', 'moves at most', 'in']}
      rows={rows.map((row) => {
        const [kase, moved] = largest(row);
        return {
          key: row.key,
          cells: [
            <>{row.key}{row.assumed && <small> filled in</small>}</>,
            row.value,
            row.taken,
            <>
              <b>{change(moved, choice)}</b>
              <svg width="100%" height="10" aria-hidden="true" class="amount"><rect x="0" y="2" height="6" width={`${(100 * Math.abs(moved)) / most}%`} /></svg>
            </>,
            result.titles[kase] ?? kase,
          ],
        };
      })}
    />
  );
}

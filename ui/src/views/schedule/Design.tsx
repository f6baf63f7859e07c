import { AIMS, type Aim } from '../../api/scheduleTypes';
import { underWay } from '../../lib/jobList';
import type { ScheduleDesk } from '../../state/scheduleDesk';
import { Progress } from '../prediction/Progress';

const SAID: Readonly<Record<Aim, string>> = {
  quiet: 'hear little of it',
  balanced: 'energy first, little noise, few starts',
  cold: 'head pressure and compressor power low, for more fan',
};

/** The cheapest schedule that holds, looked for by the machine. */
export function Design({ desk }: { desk: ScheduleDesk }) {
  const job = desk.design.job.value;
  const designed = desk.designed.value;
  return (
    <section class="card design" aria-labelledby="design-title">
      <h2 id="design-title">Design</h2>
      <p class="hint">The cheapest schedule for the saved vehicle that holds all a fan at full speed holds. Nothing is changed by it before you say so.</p>
      <div class="asking">
        <label>
          <span>Aim</span>
          <select value={desk.aim.value} onChange={(e) => { desk.aim.value = e.currentTarget.value as Aim; }}>
            {AIMS.map((aim) => <option key={aim} value={aim}>{aim}: {SAID[aim]}</option>)}
          </select>
        </label>
        <button type="button" class="main" disabled={job !== undefined && underWay(job)} onClick={() => void desk.design.ask()}>Design</button>
      </div>
      <Progress work={desk.design} label="How far the design is" />
      {designed && (
        <>
          <p>
            Designed, aim {designed.report.aim}: <b>{designed.report.energy_Wh_per_h.toFixed(0)} Wh/h</b>, {designed.report.starts_per_h.toFixed(1)} starts/h
            {designed.report.doubt && `; holds ${Math.floor(designed.report.doubt.held_percent)} of 100 in ${designed.report.doubt.vehicles} vehicles that the sheet leaves possible`}
            {designed.report.doubt && designed.report.doubt.worst_case !== '' && `, most at risk: ${designed.report.doubt.worst_case}`}.
          </p>
          <p><button type="button" onClick={() => desk.layDesigned()}>Take the designed schedule</button></p>
          <details>
            <summary>Why it is so</summary>
            <ul class="why">{designed.report.reasons.map((r) => <li key={r.what}><b>{r.what}:</b> {r.why}</li>)}</ul>
          </details>
        </>
      )}
    </section>
  );
}

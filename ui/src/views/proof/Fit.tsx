import type { Job } from '../../api/proofTypes';
import { withRole } from '../../lib/roles';
import { underWay } from '../../lib/jobList';
import { cancel, jobs, jobTrouble } from '../../state/jobs';
import type { ProofDesk } from '../../state/proofDesk';
import { runs } from '../../state/runs';
import { Remarks } from './Remarks';
import { TroubleNotice } from '../TroubleNotice';

/** Starts the fit and tells how far it is. */
export function Fit({ desk }: { desk: ProofDesk }) {
  const roles = desk.roles.value;
  const fit = withRole(roles, 'fit');
  const predict = withRole(roles, 'predict');
  const job = desk.job.value;
  const busy = job !== undefined && underWay(job);
  const unread = (runs.value ?? []).filter((r) => r.map === 'none' && roles[r.name] !== 'none').map((r) => r.name);
  const why = fit.length === 0 ? 'Choose at least one recording to fit to.' : unread.length > 0 ? `Say first what the columns of ${unread.join(', ')} are.` : '';
  return (
    <section class="card fit" aria-labelledby="fit-title">
      <h2 id="fit-title">Fit</h2>
      <p class="hint">
        The model of this build is fitted to the recordings under <b>fit to it</b>, checked on those under <b>predict it</b>, which it does not
        see, and carried to the hot day.
      </p>
      <dl class="facts-of">
        <div><dt>Fit to</dt><dd>{fit.join(', ') || 'none'}</dd></div>
        <div><dt>Predict</dt><dd>{predict.join(', ') || 'none'}</dd></div>
      </dl>
      <label class="tick">
        <input type="checkbox" checked={desk.oil.value} onChange={(e) => { desk.oil.value = e.currentTarget.checked; }} />
        Fit oil temperature too, where it was recorded
      </label>
      {!busy && (
        <div class="actions">
          <button type="button" class="main" disabled={why !== ''} aria-describedby={why === '' ? undefined : 'fit-why'} onClick={() => void desk.prove()}>Fit and prove</button>
          {why !== '' && <p id="fit-why">{why}</p>}
        </div>
      )}
      <TroubleNotice trouble={jobTrouble.value} />
      {job && <JobState job={job} />}
    </section>
  );
}

function JobState({ job }: { job: Job }) {
  if (underWay(job)) {
    const percent = Math.round(100 * job.share);
    const ahead = jobs.value.filter((j) => underWay(j) && j.id !== job.id).length;
    const words = job.state === 'waiting' ? (ahead === 0 ? 'waits' : `waits for ${ahead === 1 ? 'another job' : `${ahead} other jobs`}`) : `${job.what ?? 'working'}, ${percent} %`;
    return (
      <div class="job">
        <p class="line"><b>{words}</b>{job.state === 'running' && <span class="hint">{Math.round(job.running_s)} s so far</span>}</p>
        <progress aria-label="How far the fit is" max={100} value={percent} />
        <button type="button" onClick={() => void cancel(job.id)}>Cancel</button>
      </div>
    );
  }
  return (
    <div class="stacked" role="status">
      {job.state === 'done' && <p>Done in {Math.max(1, Math.round(job.running_s))} s; the result stands below and is kept.</p>}
      {job.state === 'cancelled' && <p>Cancelled; nothing was written.</p>}
      {job.state === 'failed' && (
        <>
          <div class="notice bad"><p>{job.message ?? 'The recordings cannot carry a fit.'}</p></div>
          <Remarks findings={job.findings} about="on the recordings" />
        </>
      )}
    </div>
  );
}

import { TroubleNotice } from '../TroubleNotice';
import type { Work } from '../../state/work';
import { underWay } from '../../lib/jobList';
import { cancel } from '../../state/jobs';

/** How far a question is, or why it has no answer. */
export function Progress<T>({ work, label }: { work: Work<T>; label: string }) {
  const job = work.job.value;
  if (work.trouble.value) {
    return <TroubleNotice trouble={work.trouble.value} />;
  }
  if (!job || (job.state === 'done' && work.result.value)) {
    return null;
  }
  if (underWay(job)) {
    return (
      <div class="job">
        <p class="line"><b>{job.state === 'waiting' ? 'waits for other work' : `${job.what ?? 'working'}, ${Math.round(100 * job.share)} %`}</b></p>
        <progress aria-label={label} max={100} value={Math.round(100 * job.share)} />
        <button type="button" onClick={() => void cancel(job.id)}>Cancel</button>
      </div>
    );
  }
  if (job.state === 'cancelled') {
    return <Failed words="Cancelled." work={work} />;
  }
  return job.state === 'failed' ? <Failed words={job.message ?? job.findings.map((f) => f.message).join(' ')} work={work} /> : null;
}

function Failed<T>({ words, work }: { words: string; work: Work<T> }) {
  return (
    <div class="notice bad" role="alert">
      <p>{words}</p>
      <button type="button" onClick={() => void work.ask()}>Work it out</button>
    </div>
  );
}

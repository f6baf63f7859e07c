import type { NextTest, ProvenCeiling } from '../../api/proofTypes';
import { minutes } from '../../lib/said';

/** Tests that narrow less than this are not worth a drive, in percent. */
const WORTH = 2;
const MOST = 3;

/** What to drive next, how long it takes and what to take care of. */
export function NextTests({ tests, ceilings }: { tests: readonly NextTest[]; ceilings: readonly ProvenCeiling[] }) {
  const worth = tests.filter((t) => t.narrows_percent >= WORTH);
  const title = (id: string): string => ceilings.find((c) => c.case === id)?.title ?? id;
  return (
    <section class="card next" aria-labelledby="next-title">
      <h2 id="next-title">What to drive next</h2>
      {worth.length === 0 && <p>No test of the list would narrow an interval by {WORTH} % or more.</p>}
      {worth[0] && <p>Expected to narrow the interval of <b>{title(worth[0].case)}</b>:</p>}
      <ol class="tests">{worth.slice(0, MOST).map((t) => <Test key={t.test} test={t} />)}</ol>
      {worth.length > MOST && (
        <details>
          <summary>{worth.length - MOST} more that would help less</summary>
          <ol class="tests">{worth.slice(MOST).map((t) => <Test key={t.test} test={t} />)}</ol>
        </details>
      )}
    </section>
  );
}

function Test({ test }: { test: NextTest }) {
  return (
    <li>
      <h3>{test.title}</h3>
      <p><b>by {test.narrows_percent.toFixed(0)} %</b>, takes {minutes(test.duration_s)}</p>
      <ul class="cautions" aria-label="Cautions">
        {test.caution.split('; ').filter(Boolean).map((c) => <li key={c}>{c}</li>)}
      </ul>
    </li>
  );
}

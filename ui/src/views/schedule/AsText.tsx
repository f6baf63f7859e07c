import { useSignal } from '@preact/signals';
import type { ScheduleDesk } from '../../state/scheduleDesk';

/** The schedule as a sheet or a file of its own has it, to copy. */
export function AsText({ desk }: { desk: ScheduleDesk }) {
  const said = useSignal('');
  const text = desk.report.value?.text ?? '';
  const copy = async (): Promise<void> => {
    await navigator.clipboard.writeText(text);
    said.value = 'Copied.';
  };
  return (
    <section class="card" aria-labelledby="text-title">
      <h2 id="text-title">For the car</h2>
      <p class="caution">Keep hands, hair and clothes away from a fan: it may start at any time, also with the engine off.</p>
      <details>
        <summary>The schedule as text</summary>
        <pre tabIndex={0} role="region" aria-label="The schedule as text">{text}</pre>
        {'clipboard' in navigator && <p><button type="button" onClick={() => void copy()}>Copy it</button> <span role="status">{said.value}</span></p>}
      </details>
    </section>
  );
}

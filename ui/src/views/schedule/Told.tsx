import type { ScheduleDesk } from '../../state/scheduleDesk';

/** What the server says of the schedule, in its own words. */
export function Told({ desk }: { desk: ScheduleDesk }) {
  // What cannot be stands at its curve; what has no place there stands here.
  const said = desk.said().filter((f) => f.severity !== 'note' && (desk.inOrder.value || f.sheet_key === null));
  const faulty = said.some((f) => f.severity === 'fault');
  return (
    <div aria-live="polite" class="told-of">
      {said.length > 0 && (
        <section class={`notice${faulty ? ' bad' : ''}`} aria-labelledby="told-title">
          <h2 id="told-title">{faulty ? 'What is wrong with it' : 'What to look at'}</h2>
          <ul>{said.map((f, i) => <li key={`${f.key} ${i}`}><b class={f.severity}>{f.severity}: </b>{f.line ? `line ${f.line}, column ${f.column}: ` : ''}{f.message}</li>)}</ul>
        </section>
      )}
    </div>
  );
}

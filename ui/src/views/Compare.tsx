import type { Desk } from '../state/desk';
import { Table } from './Table';

/** What is changed against the saved sheet. */
export function Compare({ desk }: { desk: Desk }) {
  const changed = Object.entries(desk.history.value.now);
  return (
    <section class="card compare" aria-labelledby="compare-title">
      <h2 id="compare-title">Against the saved sheet</h2>
      {changed.length === 0 && <p>Nothing is changed.</p>}
      {changed.length > 0 && (
        <Table
          label="Changes against the saved sheet"
          head={['key', 'saved', 'now', '(take back)']}
          rows={changed.map(([key, value]) => ({
            key,
            cells: [
              key,
              before(desk, key),
              <b>{desk.inChosenUnits(key, value)}</b>,
              <button type="button" aria-label={`Take back ${key}`} onClick={() => desk.takeBack(key)}>Take back</button>,
            ],
          }))}
        />
      )}
    </section>
  );
}

function before(desk: Desk, key: string): string {
  const typed = desk.saved.value.get(key) ?? desk.assumed.value.get(key);
  return typed === undefined ? 'left open' : desk.inChosenUnits(key, typed);
}

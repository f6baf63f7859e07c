import type { Desk } from '../state/desk';

/** What is changed against the saved sheet. */
export function Compare({ desk }: { desk: Desk }) {
  const changed = Object.entries(desk.history.value.now);
  return (
    <section class="card compare" aria-labelledby="compare-title">
      <h2 id="compare-title">Against the saved sheet</h2>
      {changed.length === 0 && <p>Nothing is changed.</p>}
      {changed.length > 0 && (
        <table>
          <thead><tr><th scope="col">key</th><th scope="col">saved</th><th scope="col">now</th><th scope="col"><span class="unseen">take back</span></th></tr></thead>
          <tbody>
            {changed.map(([key, value]) => (
              <tr key={key}>
                <th scope="row">{key}</th>
                <td>{desk.saved.value.get(key) ?? desk.assumed.value.get(key) ?? 'left open'}</td>
                <td><b>{value}</b></td>
                <td><button type="button" aria-label={`Take back ${key}`} onClick={() => desk.takeBack(key)}>Take back</button></td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

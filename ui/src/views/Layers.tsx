import type { Stack } from '../api/types';
import { partsOf, reordered } from '../lib/parts';
import { withUnit } from '../lib/units';
import type { Desk } from '../state/desk';
import { units } from '../state/settings';

/** Cores from the front, with their air, to be chosen and put in another order; openings and shroud to be chosen. */
export function Layers({ desk, stack }: { desk: Desk; stack: Stack }) {
  const parts = partsOf(stack);
  const choice = units.value;
  const move = (id: string, way: -1 | 1): void => {
    const changes = reordered(stack, id, way);
    if (changes) {
      desk.change(changes);
      desk.chosen.value = id;
    }
  };
  return (
    <>
      <h3>Layers from the front</h3>
      <ol class="layers">
        {parts.filter((part) => part.core).map((part, i) => (
          <li key={part.id}>
            <button type="button" class="pick" aria-pressed={desk.chosen.value === part.id} onClick={() => { desk.chosen.value = part.id; }}>
              <b>{i + 1} {part.title}</b>
              <span>
                layer {part.core?.layer === undefined || part.core.layer > 9 ? 'last' : part.core.layer}, {withUnit(part.core?.air_speed_m_s ?? 0, 'm/s', choice)}, {withUnit(part.core?.air_degC ?? 0, 'degC', choice)}
              </span>
            </button>
            {part.edit.layer !== undefined && (
              <span class="order">
                <button type="button" disabled={reordered(stack, part.id, -1) === null} aria-label={`${part.title} one layer forward`} onClick={() => move(part.id, -1)}>Forward</button>
                <button type="button" disabled={reordered(stack, part.id, 1) === null} aria-label={`${part.title} one layer back`} onClick={() => move(part.id, 1)}>Back</button>
              </span>
            )}
          </li>
        ))}
      </ol>
      <div class="others" role="group" aria-label="Openings and shroud">
        {parts.filter((part) => !part.core).map((part) => (
          <button key={part.id} type="button" class="pick" aria-pressed={desk.chosen.value === part.id} onClick={() => { desk.chosen.value = part.id; }}>
            <b>{part.title}</b>
          </button>
        ))}
      </div>
    </>
  );
}

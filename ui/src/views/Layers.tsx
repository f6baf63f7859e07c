import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Stack } from '../api/types';
import { layerName, partsOf, reordered } from '../lib/parts';
import { withUnit } from '../lib/units';
import type { Desk } from '../state/desk';
import { units } from '../state/settings';

/** Cores from the front, with their air, to be chosen and put in another order; openings and shroud to be chosen. */
export function Layers({ desk, stack }: { desk: Desk; stack: Stack }) {
  const parts = partsOf(stack);
  const choice = units.value;
  const list = useRef<HTMLOListElement>(null);
  const pressed = useRef<{ readonly id: string; readonly way: number } | null>(null);
  const move = (id: string, way: -1 | 1): void => {
    const changes = reordered(stack, id, way);
    if (changes) {
      desk.change(changes);
      desk.chosen.value = id;
      pressed.current = { id, way };
    }
  };
  // A row that changed its place takes the focus with it.
  useLayoutEffect(() => {
    if (pressed.current) {
      const { id, way } = pressed.current;
      pressed.current = null;
      const same = list.current?.querySelector<HTMLElement>(`[data-order="${id} ${way}"]:enabled`);
      (same ?? list.current?.querySelector<HTMLElement>(`[data-order="${id} ${-way}"]`))?.focus();
    }
  });
  return (
    <>
      <h3>Layers from the front</h3>
      <ol class="layers" ref={list}>
        {parts.filter((part) => part.core).map((part, i) => (
          <li key={part.id}>
            <button type="button" class="pick" aria-pressed={desk.chosen.value === part.id} onClick={() => { desk.chosen.value = part.id; }}>
              <b>{i + 1} {part.title}</b>
              <span>
                {part.core && layerName(part.core)}, {withUnit(part.core?.air_speed_m_s ?? 0, 'm/s', choice)}, {withUnit(part.core?.air_degC ?? 0, 'degC', choice)}
              </span>
            </button>
            {part.edit.layer !== undefined && (
              <span class="order">
                <button type="button" data-order={`${part.id} -1`} disabled={reordered(stack, part.id, -1) === null} aria-label={`${part.title} one layer forward`} onClick={() => move(part.id, -1)}>Forward</button>
                <button type="button" data-order={`${part.id} 1`} disabled={reordered(stack, part.id, 1) === null} aria-label={`${part.title} one layer back`} onClick={() => move(part.id, 1)}>Back</button>
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

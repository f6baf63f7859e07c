import type { Core, Edit, Finding, Place, Stack } from '../api/types';
import type { Changes } from './history';
import { millimetres, typedLength, type UnitChoice } from './units';

/** One thing of the stack that can be chosen and, where its keys allow, moved and resized. */
export interface Part extends Place {
  readonly id: string;
  readonly title: string;
  readonly kind: 'core' | 'opening' | 'shroud';
  readonly edit: Edit;
  readonly core: Core | null;
}

/** The radiator is always last and has no layer to choose. */
export const layerName = (core: Core): string => (core.edit.layer === undefined ? 'last layer' : `layer ${core.layer}`);

const SIDES = ['left', 'bottom', 'width', 'height'] as const;

/** Cores from the front, then openings, then the shroud. */
export function partsOf(stack: Stack): readonly Part[] {
  const cores = [...stack.cores].sort((a, b) => a.layer - b.layer);
  return [
    ...cores.map((core): Part => ({ ...core, kind: 'core', core })),
    ...stack.openings.map((opening): Part => ({ ...opening, kind: 'opening', core: null })),
    { ...stack.shroud, id: 'shroud', title: 'shroud', kind: 'shroud', core: null },
  ];
}

function laidPlace<T extends Place & { readonly edit: Edit }>(part: T, changes: Changes): T {
  const moved: Record<string, number> = {};
  for (const side of SIDES) {
    const typed = changes[part.edit[side] ?? ''];
    const mm = typed === undefined ? null : millimetres(typed);
    if (mm !== null && mm >= 0) {
      moved[`${side}_mm`] = mm;
    }
  }
  return { ...part, ...moved };
}

function laidCore(core: Core, changes: Changes): Core {
  const typed = changes[core.edit.layer ?? ''];
  const depth = millimetres(changes[core.edit.depth ?? ''] ?? '');
  return {
    ...laidPlace(core, changes),
    layer: typed !== undefined && /^[1-9]$/.test(typed) ? Number(typed) : core.layer,
    depth_mm: depth ?? core.depth_mm,
  };
}

/** What was typed, without sizes no part can have: one of them would push all others off the paper. */
export function drawable(changes: Changes, findings: readonly Finding[]): Changes {
  const refused = new Set(findings.filter((f) => f.key === 'out-of-range').map((f) => f.sheet_key));
  return Object.fromEntries(Object.entries(changes).filter(([key]) => !refused.has(key)));
}

/** The stack of the last answer with what was moved since: the drawing follows the hand, not the wire. */
export function laidOver(stack: Stack, changes: Changes): Stack {
  return {
    ...stack,
    cores: stack.cores.map((core) => laidCore(core, changes)),
    openings: stack.openings.map((opening) => laidPlace(opening, changes)),
    shroud: laidPlace(stack.shroud, changes),
  };
}

/** What to type for a part to stand at a place; sides that stay or cannot be changed are left out. */
export function changesTo(part: Part, place: Place, units: UnitChoice): Changes {
  const changes: Record<string, string> = {};
  for (const side of SIDES) {
    const key = part.edit[side];
    const name = `${side}_mm` as const;
    if (key !== undefined && Math.abs(part[name] - place[name]) > 0.05) {
      changes[key] = typedLength(place[name], units);
    }
  }
  return changes;
}

/** Layers from the front, each with the cores that stand in it. */
export function layersOf(stack: Stack): readonly (readonly Core[])[] {
  const numbers = [...new Set(stack.cores.map((core) => core.layer))].sort((a, b) => a - b);
  return numbers.map((n) => stack.cores.filter((core) => core.layer === n));
}

/**
 * What to type so that a core goes one layer towards the front (-1) or the back (+1); null where it cannot. A core that
 * shares its layer gets one of its own first.
 */
export function reordered(stack: Stack, id: string, way: -1 | 1): Changes | null {
  const layers = layersOf(stack).map((layer) => [...layer]);
  const from = layers.findIndex((layer) => layer.some((core) => core.id === id));
  const core = layers[from]?.find((c) => c.id === id);
  if (!core || core.edit.layer === undefined) {
    return null;
  }
  const rest = (layers[from] ?? []).filter((c) => c.id !== id);
  const neighbour = layers[from + way];
  if (rest.length === 0 && (!neighbour || neighbour.some((c) => c.edit.layer === undefined))) {
    return null;
  }
  if (rest.length > 0) {
    layers.splice(from, 1, ...(way < 0 ? [[core], rest] : [rest, [core]]));
  } else {
    layers.splice(from, 1);
    layers.splice(from + way, 0, [core]);
  }
  return numbered(layers);
}

function numbered(layers: readonly (readonly Core[])[]): Changes {
  const changes: Record<string, string> = {};
  layers.forEach((layer, index) => {
    for (const core of layer) {
      if (core.edit.layer !== undefined && core.layer !== index + 1) {
        changes[core.edit.layer] = String(index + 1);
      }
    }
  });
  return changes;
}

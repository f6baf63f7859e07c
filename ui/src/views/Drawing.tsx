import { useRef } from 'preact/hooks';
import type { Stack } from '../api/types';
import { useWidth, type Frame } from '../charts/frame';
import { FrontView } from '../charts/FrontView';
import { SideView, sideWidth } from '../charts/SideView';
import { reordered } from '../lib/parts';
import { withUnit, type UnitChoice } from '../lib/units';
import type { Desk } from '../state/desk';
import { units } from '../state/settings';
import { Layers } from './Layers';

const MARGIN = 26;
const BELOW = 44;
const TALLEST = 470;
/** Narrower than this the side view goes below the front view. */
const SIDE_BY_SIDE = 540;

interface Sheet {
  readonly frame: Frame;
  readonly front: number;
  readonly side: number;
  readonly height: number;
}

/** Both views in one scale. */
function sheetFor(stack: Stack, width: number): Sheet {
  const wide = Math.max(stack.width_mm, ...stack.cores.map((c) => c.left_mm + c.width_mm));
  const high = Math.max(stack.height_mm, ...stack.cores.map((c) => c.bottom_mm + c.height_mm));
  const beside = width >= SIDE_BY_SIDE;
  const gaps = beside ? sideWidth(stack, 0) : 0;
  const depth = beside ? sideWidth(stack, 1) - gaps : 0;
  const scale = Math.max(0.1, Math.min((width - gaps - 2 * MARGIN - 2) / (wide + depth), TALLEST / high));
  const frame = { scale, left: MARGIN, top: MARGIN + (high - stack.height_mm) * scale, height_mm: stack.height_mm };
  return { frame, front: wide * scale + 2 * MARGIN, side: sideWidth(stack, scale), height: high * scale + MARGIN + BELOW };
}

export function Drawing({ desk }: { desk: Desk }) {
  const [ref, width] = useWidth();
  const fixed = useRef<Sheet | null>(null);
  const stack = desk.stack.value;
  const dragging = Object.keys(desk.live.value).length > 0;
  // While a part is in the hand the paper stays where it is.
  const sheet = stack && width > 0 ? (dragging && fixed.current ? fixed.current : sheetFor(stack, width)) : null;
  fixed.current = sheet;
  const ghost = desk.comparing.value ? desk.savedStack.value : null;
  const choice = units.value;
  return (
    <section class="card drawing" aria-labelledby="drawing-title">
      <h2 id="drawing-title">Stack, to scale</h2>
      <div class="paper" ref={ref}>
        {!stack && <p>Nothing can be drawn before the sheet is in order.</p>}
        {stack && sheet && (
          <>
            <FrontView
              stack={stack} ghost={ghost} frame={sheet.frame} width={sheet.front} height={sheet.height} units={choice}
              chosen={desk.chosen.value}
              choose={(id) => { desk.chosen.value = id; }}
              drag={(changes) => desk.drag(changes)}
              drop={() => desk.drop()}
              cancel={() => desk.cancelDrag()}
              nudge={(changes, move) => desk.change(changes, move)}
            />
            <SideView
              stack={stack} ghost={ghost} frame={sheet.frame} width={sheet.side} height={sheet.height} units={choice}
              chosen={desk.chosen.value}
              choose={(id) => { desk.chosen.value = id; }}
              reorder={(id, way) => {
                const changes = reordered(stack, id, way);
                if (changes) {
                  desk.change(changes);
                }
              }}
            />
          </>
        )}
      </div>
      {stack && <Key stack={stack} choice={choice} ghost={ghost !== null} />}
      {stack && <Layers desk={desk} stack={stack} />}
      <p class="unseen" id="moving">Arrows move it by a step, Shift and arrows by a fine step, Alt and arrows change its size.</p>
      <p class="unseen" id="ordering">Left and right arrows move it one layer towards the front or the back.</p>
    </section>
  );
}

function Key({ stack, choice, ghost }: { stack: Stack; choice: UnitChoice; ghost: boolean }) {
  const fans = stack.fans === 1 ? 'fan' : `${stack.fans} fans`;
  return (
    <>
      <ul class="key">
        <li><svg width="30" height="20" aria-hidden="true"><rect class="opening" x="3" y="3" width="24" height="14" /></svg>opening</li>
        <li><svg width="30" height="20" aria-hidden="true"><rect class="shroud" x="3" y="3" width="24" height="14" /></svg>shroud</li>
        <li><svg width="30" height="20" aria-hidden="true"><g class="fan"><circle cx="15" cy="10" r="8" /></g></svg>{fans} {withUnit(stack.fan_diameter_mm, 'mm', choice)}</li>
        {ghost && <li><svg width="30" height="20" aria-hidden="true"><rect class="ghost" x="3" y="3" width="24" height="14" /></svg>as saved</li>}
      </ul>
      <p class="hint">Air at each core: hot idle on the design day, fan at full speed. From the side, gaps between layers are drawn open.</p>
      <details class="hint">
        <summary>How to move parts</summary>
        <p>
          Tap a part to choose it, tap again for the one behind it; then drag it or its handles. Openings and shroud are taken by
          their frame. Keys: arrows move {choice === 'us' ? '0.2 in' : '5 mm'}, with Shift {choice === 'us' ? '0.05 in' : '1 mm'}; with
          Alt they resize.
        </p>
      </details>
    </>
  );
}

import type { Finding, Stack } from '../api/types';
import { partsOf, type Part } from '../lib/parts';
import { typedLength, withUnit } from '../lib/units';
import type { Desk } from '../state/desk';
import { units } from '../state/settings';
import { Said, TypedField } from './TypedField';

const LENGTHS = [
  ['left', 'from the left'], ['bottom', 'from the bottom'], ['width', 'width'], ['height', 'height'],
] as const;

/** Numbers of the chosen part, in the chosen units; what is typed is sent as typed. */
export function PartPanel({ desk }: { desk: Desk }) {
  const stack = desk.stack.value;
  if (!stack) {
    return null;
  }
  const part = partsOf(stack).find((p) => p.id === desk.chosen.value);
  return (
    <section class="card part" aria-labelledby="part-title">
      <h2 id="part-title">{part ? part.title : 'Chosen part'}</h2>
      {!part && <p>Choose a part in the drawing or in the list of layers.</p>}
      {part && <div class="said"><Said findings={at(desk, blockOf(part))} /></div>}
      {part && (
        <div class="fields">
          {LENGTHS.map(([side, label]) => (
            <Length key={`${part.id} ${side}`} desk={desk} label={label} mm={part[`${side}_mm`]} sheetKey={part.edit[side]} id={`part-${side}`} />
          ))}
          {part.core && <Length key={`${part.id} depth`} desk={desk} label="depth" mm={part.core.depth_mm} sheetKey={part.edit.depth} id="part-depth" />}
          {part.edit.layer !== undefined && (
            <Plain key={`${part.id} layer`} desk={desk} label="layer, 1 to 9 from the front" value={String(part.core?.layer ?? '')} sheetKey={part.edit.layer} id="part-layer" />
          )}
        </div>
      )}
      {part && <Air part={part} />}
      <FanAndFlaps desk={desk} stack={stack} />
    </section>
  );
}

/** Block of the sheet that places a part: its keys without their last word. */
const blockOf = (part: Part): string | undefined => part.edit.left?.replace(/\.left$/, '');

interface OneProps {
  readonly desk: Desk;
  readonly id: string;
  readonly label: string;
  readonly sheetKey: string | undefined;
}

const at = (desk: Desk, key: string | undefined): readonly Finding[] =>
  key === undefined ? [] : desk.findings.value.filter((f) => f.sheet_key === key);

function Length({ desk, id, label, mm, sheetKey }: OneProps & { readonly mm: number }) {
  const typed = sheetKey === undefined ? undefined : desk.changes.value[sheetKey];
  const findings = at(desk, sheetKey);
  // A refused value stays as it was typed, so that it can be put right.
  const value = typed !== undefined && findings.some((f) => f.severity === 'fault') ? typed : typedLength(mm, units.value);
  return (
    <TypedField
      id={id} label={label} value={value} like={typedLength(1, units.value)}
      hint={sheetKey === undefined ? 'follows from the rest of the sheet' : undefined}
      readOnly={sheetKey === undefined}
      changed={typed !== undefined}
      findings={findings}
      set={(text) => { if (sheetKey !== undefined) { desk.change({ [sheetKey]: text }); } }}
    />
  );
}

function Plain({ desk, id, label, value, sheetKey }: OneProps & { readonly value: string }) {
  const key = sheetKey ?? '';
  return (
    <TypedField
      id={id} label={label} value={desk.changes.value[key] ?? value} changed={key in desk.changes.value} findings={at(desk, key)}
      set={(text) => desk.change({ [key]: text })}
    />
  );
}

function Air({ part }: { part: Part }) {
  return part.core && (
    <p class="air-words">
      Air at its face at hot idle on the design day, fan at full speed: <b>{withUnit(part.core.air_speed_m_s, 'm/s', units.value)}</b>,{' '}
      <b>{withUnit(part.core.air_degC, 'degC', units.value)}</b>
    </p>
  );
}

function FanAndFlaps({ desk, stack }: { desk: Desk; stack: Stack }) {
  const area = (mm2: number): string => withUnit(mm2, 'mm2', units.value);
  const { edit } = stack;
  return (
    <>
      <h3>Fan, shroud and flaps</h3>
      <div class="fields">
        <Length desk={desk} id="fan-diameter" label="fan diameter" mm={stack.fan_diameter_mm} sheetKey={edit.fan_diameter} />
        {edit.fans !== undefined && <Plain desk={desk} id="fans" label="fans side by side, 1 or 2" value={String(stack.fans)} sheetKey={edit.fans} />}
        {edit.flap_area !== undefined && <Plain desk={desk} id="flap-area" label="area of relief flaps" value={area(stack.flap_area_mm2)} sheetKey={edit.flap_area} />}
        {stack.shroud.edit.gap !== undefined && <Plain desk={desk} id="shroud-gap" label="open gaps of the shroud" value={area(stack.shroud.gap_mm2)} sheetKey={stack.shroud.edit.gap} />}
      </div>
    </>
  );
}

import { useRef } from 'preact/hooks';
import type { Finding } from '../api/types';
import type { Desk } from '../state/desk';

/** Everything the server says about the sheet, in its own words; each also stands at its field. */
export function Findings({ desk }: { desk: Desk }) {
  const shown = useRef<readonly Finding[]>([]);
  // While a part is in the hand nothing above the drawing may come or go.
  if (Object.keys(desk.live.value).length === 0) {
    shown.current = desk.findings.value;
  }
  const faults = shown.current.filter((f) => f.severity === 'fault');
  const others = shown.current.filter((f) => f.severity !== 'fault');
  return (
    <section aria-label="Findings" class="findings">
      <div aria-live="polite">
        {faults.length > 0 && (
          <div class="notice bad">
            <h2>{faults.length === 1 ? '1 fault in the sheet' : `${faults.length} faults in the sheet`}</h2>
            <List findings={faults} places={!desk.good.value} />
            {desk.good.value && <p>Drawing and ceilings are those of the last sheet in order.</p>}
          </div>
        )}
      </div>
      {others.length > 0 && (
        <details class="notice">
          <summary>{others.length === 1 ? '1 remark' : `${others.length} remarks`} on the sheet</summary>
          <List findings={others} />
        </details>
      )}
    </section>
  );
}

/** With places in the file where there is no drawing to show what is meant. */
function List({ findings, places = false }: { findings: readonly Finding[]; places?: boolean }) {
  return (
    <ul>
      {findings.map((f, i) => (
        <li key={`${f.key} ${i}`}>
          {places && !f.sheet_key && f.line && <>Line {f.line}, column {f.column}: </>}
          {f.message}
          {f.sheet_key && <> <button type="button" class="link" onClick={() => go(f.sheet_key ?? '')}>Go to {f.sheet_key}</button></>}
        </li>
      ))}
    </ul>
  );
}

/** The field of a key, or the nearest one of its block. */
function go(key: string): void {
  const fields = [...document.querySelectorAll<HTMLInputElement>('.values input[id^="value:"]')];
  const names = (part: string): HTMLInputElement | undefined =>
    fields.find((f) => f.id === `value:${part}`) ?? fields.find((f) => f.id.startsWith(`value:${part}.`));
  let part = key;
  let field = names(part);
  while (!field && part.includes('.')) {
    part = part.slice(0, part.lastIndexOf('.'));
    field = names(part);
  }
  field?.scrollIntoView({ block: 'center' });
  field?.focus({ preventScroll: true });
}

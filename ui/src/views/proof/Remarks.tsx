import type { Remark } from '../../api/proofTypes';
import { isLoud, kinds, namesCause } from '../../lib/said';

const RANK: Readonly<Record<Remark['severity'], number>> = { fault: 0, warning: 1, note: 2 };

/** What the server says, in its own words: what asks for something open, notes behind a line that counts them by kind. */
export function Remarks({ findings, about }: { findings: readonly Remark[]; about: string }) {
  const open = findings.filter(isLoud).sort((a, b) => RANK[a.severity] - RANK[b.severity]);
  const notes = findings.filter((f) => !isLoud(f));
  return (
    <>
      {open.length > 0 && <div class={`notice${open[0]?.severity === 'fault' ? ' bad' : ''}`}><List findings={open} /></div>}
      {notes.length > 0 && (
        <details class="notice">
          <summary>{notes.length === 1 ? '1 note' : `${notes.length} notes`} {about}: {kinds(notes.map((f) => f.key))}</summary>
          <List findings={notes} />
        </details>
      )}
    </>
  );
}

function List({ findings }: { findings: readonly Remark[] }) {
  return (
    <ul>
      {findings.map((f, i) => (
        <li key={`${f.key} ${i}`}>
          {f.severity !== 'note' && <b class={f.severity}>{f.severity}: </b>}
          {f.severity === 'note' && namesCause(f) && <b>possible cause: </b>}
          {placed(f)}{f.message}
          {f.control !== undefined && <> <button type="button" class="link" onClick={(event) => go(event.currentTarget, f.control ?? '')}>Go there</button></>}
        </li>
      ))}
    </ul>
  );
}

/** The control of a setting of the map the finding stands in, or the nearest of its kind. */
function go(from: Element, setting: string): void {
  const all = [...(from.closest('.mapping')?.querySelectorAll<HTMLElement>('[data-setting]') ?? [])];
  const named = (key: string): HTMLElement | undefined => all.find((e) => e.dataset['setting'] === key) ?? all.find((e) => e.dataset['setting']?.startsWith(`${key}.`));
  const block = setting.replace(/\.[a-z_]+$/, '');
  const control = named(setting.replace(/position$/, 'column')) ?? named(setting) ?? named(block) ?? named(block.replace(/\.[a-z_]+$/, ''));
  control?.scrollIntoView({ block: 'center' });
  control?.focus({ preventScroll: true });
}

function placed({ place, line, column }: Remark): string {
  if (line === undefined || line <= 0) {
    return place ? `${place}: ` : '';
  }
  return column !== undefined && column > 0 ? `line ${line}, column ${column}: ` : `line ${line}: `;
}

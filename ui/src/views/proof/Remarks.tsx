import type { Remark } from '../../api/proofTypes';

/** What the server says, in its own words: faults and warnings open, notes behind a line. */
export function Remarks({ findings, about }: { findings: readonly Remark[]; about: string }) {
  const loud = findings.filter((f) => f.severity !== 'note');
  const notes = findings.filter((f) => f.severity === 'note');
  const faulty = loud.some((f) => f.severity === 'fault');
  return (
    <>
      {loud.length > 0 && <div class={`notice${faulty ? ' bad' : ''}`}><List findings={loud} /></div>}
      {notes.length > 0 && (
        <details class="notice">
          <summary>{notes.length === 1 ? '1 remark' : `${notes.length} remarks`} {about}</summary>
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
          {placed(f)}{f.message}
        </li>
      ))}
    </ul>
  );
}

function placed({ place, line, column }: Remark): string {
  if (line === undefined || line <= 0) {
    return place ? `${place}: ` : '';
  }
  return column !== undefined && column > 0 ? `line ${line}, column ${column}: ` : `line ${line}: `;
}

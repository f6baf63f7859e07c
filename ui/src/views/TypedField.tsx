import { useEffect, useState } from 'preact/hooks';
import type { Finding } from '../api/types';
import { refusal } from '../lib/typed';

interface Props {
  readonly id: string;
  readonly label: string;
  /** What stands there now, as it is shown. */
  readonly value: string;
  /** A value whose unit a new one must have, when it is not the shown one. */
  readonly like?: string;
  readonly hint?: string | undefined;
  readonly changed: boolean;
  readonly findings: readonly Finding[];
  readonly readOnly?: boolean;
  readonly set: (value: string) => void;
}

/** What the server says about a field or a block, in its words. */
export function Said({ findings }: { findings: readonly Finding[] }) {
  return <>{findings.map((f) => <p key={f.message} class={f.severity}><b>{f.severity}:</b> {f.message}</p>)}</>;
}

/** One value of the sheet: taken over with Enter or on leaving, put back with Escape. */
export function TypedField({ id, label, value, like, hint, changed, findings, readOnly, set }: Props) {
  const [text, setText] = useState(value);
  const [refused, setRefused] = useState<string | null>(null);
  useEffect(() => {
    setText(value);
    setRefused(null);
  }, [value]);

  const take = (): void => {
    if (text === value) {
      setRefused(null);
      return;
    }
    const why = refusal(text, like ?? value);
    setRefused(why);
    if (why === null) {
      set(text.trim());
    }
  };
  const faulty = refused !== null || findings.some((f) => f.severity === 'fault');
  const described = [hint ? `${id}-hint` : '', refused !== null || findings.length > 0 ? `${id}-said` : ''].filter(Boolean).join(' ');

  return (
    <div class={`field${changed ? ' changed' : ''}${faulty ? ' faulty' : ''}`}>
      <label for={id}>{label}{changed && <span class="mark-changed"> (changed)</span>}</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        value={text}
        readOnly={readOnly ?? false}
        aria-invalid={faulty}
        aria-describedby={described === '' ? undefined : described}
        data-typing={text !== value ? '' : undefined}
        onInput={(event) => setText(event.currentTarget.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') {
            take();
          } else if (event.key === 'Escape') {
            setText(value);
            setRefused(null);
          }
        }}
      />
      {hint && <p class="hint" id={`${id}-hint`}>{hint}</p>}
      {(refused !== null || findings.length > 0) && (
        <div class="said" id={`${id}-said`}>
          {refused !== null && <p class="fault" role="alert"><b>Not taken.</b> {refused}</p>}
          <Said findings={findings} />
        </div>
      )}
    </div>
  );
}

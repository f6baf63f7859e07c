import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { pdfLink } from '../../api/proofClient';
import type { ProofKept } from '../../api/proofTypes';
import { moment } from '../../lib/said';
import type { ProofDesk } from '../../state/proofDesk';

/** The document, and a person's word that it goes out. */
export function SignOff({ desk, kept }: { desk: ProofDesk; kept: ProofKept }) {
  const asking = useSignal(false);
  const asked = useRef(false);
  const ask = useRef<HTMLButtonElement>(null);
  const leave = useRef<HTMLButtonElement>(null);
  const now = asking.value;
  // Whoever works by keys stays where the question is asked, and where it was.
  useEffect(() => {
    if (now) {
      leave.current?.focus();
    } else if (asked.current) {
      ask.current?.focus();
    }
    asked.current = now;
  }, [now]);
  return (
    <section class="card signoff" aria-labelledby="signoff-title">
      <h2 id="signoff-title">Sign-off</h2>
      <p>Made {moment(kept.made)} with Hotday {kept.hotday}; fitted to {kept.fit.join(', ')}{kept.predict.length > 0 ? `, checked on ${kept.predict.join(', ')}` : ''}.</p>
      {!kept.current && <div class="notice bad"><p>The sheet or a recording has changed since this proof was made. Fit again before signing off.</p></div>}
      {kept.signed && <p class="signed" role="status"><b>Signed off.</b> A copy of the document lies beside the sheet.</p>}
      <div class="actions">
        <a class="button" href={pdfLink(desk.id)} download={`${desk.id}-signoff.pdf`}>Download the PDF</a>
        {!kept.signed && !asking.value && <button type="button" ref={ask} disabled={!kept.current} onClick={() => { asking.value = true; }}>Sign off ...</button>}
      </div>
      {asking.value && !kept.signed && (
        <div
          class="notice" role="group" aria-labelledby="asking"
          onKeyDown={(event) => {
            if (event.key === 'Escape') {
              asking.value = false;
            }
          }}
        >
          <p id="asking">
            Signing off keeps a copy of this document beside the sheet as what the shop gives out. It is advice with an interval, not a
            warranty: it says what was measured, what was worked out from it and on which assumptions. Local codes and licensed practice
            come first.
          </p>
          <div class="actions">
            <button type="button" class="main" disabled={desk.signing.value} onClick={() => void desk.sign()}>Yes, sign off</button>
            <button type="button" ref={leave} onClick={() => { asking.value = false; }}>Not yet</button>
          </div>
        </div>
      )}
    </section>
  );
}

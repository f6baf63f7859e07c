import { useSignal } from '@preact/signals';
import { pdfLink } from '../../api/proofClient';
import type { ProofKept } from '../../api/proofTypes';
import { moment } from '../../lib/said';
import type { ProofDesk } from '../../state/proofDesk';

/** The document, and a person's word that it goes out. */
export function SignOff({ desk, kept }: { desk: ProofDesk; kept: ProofKept }) {
  const asking = useSignal(false);
  return (
    <section class="card signoff" aria-labelledby="signoff-title">
      <h2 id="signoff-title">Sign-off</h2>
      <p>Made {moment(kept.made)} with Hotday {kept.hotday}; fitted to {kept.fit.join(', ')}{kept.predict.length > 0 ? `, checked on ${kept.predict.join(', ')}` : ''}.</p>
      {!kept.current && <div class="notice bad"><p>The sheet or a recording has changed since this proof was made. Fit again before signing off.</p></div>}
      {kept.signed && <p class="signed"><b>Signed off.</b> A copy of the document lies beside the sheet.</p>}
      <div class="actions">
        <a class="button" href={pdfLink(desk.id)} download={`${desk.id}-signoff.pdf`}>Download the PDF</a>
        {!kept.signed && !asking.value && <button type="button" disabled={!kept.current} onClick={() => { asking.value = true; }}>Sign off ...</button>}
      </div>
      {asking.value && !kept.signed && (
        <div class="notice" role="group" aria-labelledby="asking">
          <p id="asking">
            Signing off keeps a copy of this document beside the sheet as what the shop gives out. It is advice with an interval, not a
            warranty: it says what was measured, what was worked out from it and on which assumptions. Local codes and licensed practice
            come first.
          </p>
          <div class="actions">
            <button type="button" class="main" disabled={desk.signing.value} onClick={() => void desk.sign()}>Yes, sign off</button>
            <button type="button" onClick={() => { asking.value = false; }}>Not yet</button>
          </div>
        </div>
      )}
    </section>
  );
}

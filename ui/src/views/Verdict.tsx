/** Holds, does not, or not certain: a word and a shape, never a colour alone. */
export function Verdict({ holds }: { holds: boolean | null }) {
  return (
    <span class={`verdict ${holds === null ? 'unsure' : holds ? 'holds' : 'short'}`}>
      <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
        {holds === null && <><path class="plate" d="M10 1 19.500 18.500H.500Z" /><path d="M10 7V12.500M10 14.500V17" /></>}
        {holds === true && <><circle cx="10" cy="10" r="9" /><path d="M5.500 10.500 9 14l5.500-8" /></>}
        {holds === false && <><path class="plate" d="M10 1 19 10 10 19 1 10Z" /><path d="M6.800 6.800 13.200 13.200M13.200 6.800 6.800 13.200" /></>}
      </svg>
      {holds === null ? 'not certain' : holds ? 'holds' : 'does not hold'}
    </span>
  );
}

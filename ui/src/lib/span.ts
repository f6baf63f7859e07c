/** A stretch of time that is shown, in s. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Closer than this there is nothing more to see, in s. */
const SHORTEST = 0.5;

/** One press of a key or a button. */
export const CLOSER = 1.6;

const length = (span: Span): number => span.to - span.from;

/** Moved and cut so that it lies within the whole. */
export function inside(span: Span, whole: Span): Span {
  const long = Math.min(Math.max(length(span), Math.min(SHORTEST, length(whole))), length(whole));
  const from = Math.min(Math.max(span.from, whole.from), whole.to - long);
  return { from, to: from + long };
}

export function panned(span: Span, by_s: number, whole: Span): Span {
  return inside({ from: span.from + by_s, to: span.to + by_s }, whole);
}

/** `factor` below 1 comes closer; the time `around` stays where it is. */
export function zoomed(span: Span, factor: number, around: number, whole: Span): Span {
  const long = Math.min(Math.max(factor * length(span), SHORTEST), length(whole));
  const share = (around - span.from) / Math.max(length(span), 1e-9);
  return inside({ from: around - share * long, to: around + (1 - share) * long }, whole);
}

/** The span in which two times stand at two shares of the width, as two fingers hold them. */
export function pinched(times: readonly [number, number], shares: readonly [number, number], whole: Span): Span {
  const apart = shares[1] - shares[0];
  if (Math.abs(apart) < 0.02) {
    return whole;
  }
  const long = Math.max((times[1] - times[0]) / apart, SHORTEST);
  const from = times[0] - shares[0] * long;
  return inside({ from, to: from + long }, whole);
}

/** What a key makes of a span; null for keys that mean nothing here. */
export function keyed(key: string, span: Span, whole: Span): Span | null {
  const middle = (span.from + span.to) / 2;
  switch (key) {
    case 'ArrowLeft': return panned(span, -length(span) / 10, whole);
    case 'ArrowRight': return panned(span, length(span) / 10, whole);
    case 'PageUp': return panned(span, -length(span), whole);
    case 'PageDown': return panned(span, length(span), whole);
    case 'Home': return panned(span, whole.from - span.from, whole);
    case 'End': return panned(span, whole.to - span.to, whole);
    case '+':
    case '=': return zoomed(span, 1 / CLOSER, middle, whole);
    case '-': return zoomed(span, CLOSER, middle, whole);
    case '0': return whole;
    default: return null;
  }
}

const two = (n: number): string => String(n).padStart(2, '0');

/** 4:05 or 1:04:05; parts of a second where they are asked for. */
export function clock(time_s: number, digits = 0): string {
  const scale = 10 ** digits;
  const ticks = Math.round(Math.abs(time_s) * scale);
  const seconds = Math.floor(ticks / scale);
  const part = digits > 0 ? `.${String(ticks % scale).padStart(digits, '0')}` : '';
  const sign = time_s < 0 && ticks > 0 ? '-' : '';
  const [h, m, s] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  return h > 0 ? `${sign}${h}:${two(m)}:${two(s)}${part}` : `${sign}${m}:${two(s)}${part}`;
}

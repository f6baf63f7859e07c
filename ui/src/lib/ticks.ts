const NICE = [1, 2, 4, 5, 10];

/** Round numbers from one end to the other, at most so many steps of one of 1, 2, 4 or 5 and its tens. */
export function roundTicks(low: number, high: number, most: number): readonly number[] {
  const least = (high - low) / most;
  const ten = 10 ** Math.floor(Math.log10(least));
  // Ends that were turned over from other units are not exact.
  const step = ten * (NICE.find((n) => n * ten >= least * (1 - 1e-9)) ?? 10);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}

import { overlap, type Box } from './frame';

export interface Label {
  readonly x: number;
  readonly y: number;
  readonly lines: readonly string[];
}

const LINE = 19;
const PAD = 6;
const PX_PER_LETTER = 8.8;

const widest = (lines: readonly string[]): number => PX_PER_LETTER * Math.max(...lines.map((line) => line.length));

function spots(box: Box, w: number, h: number): readonly Box[] {
  const left = box.x + PAD;
  const right = box.x + box.w - PAD - w;
  const top = box.y + PAD;
  const low = box.y + box.h - PAD - h;
  const middle = box.x + (box.w - w) / 2;
  const xs = [left, middle, right];
  const ys = [top, (top + low) / 2, low];
  return ys.flatMap((y) => xs.map((x) => ({ x, y, w, h })));
}

/**
 * Puts words on boxes that lie over each other, front box first: inside their own box, clear of words already put, and
 * rather where no box in front covers them. Where the long words do not fit the short ones are tried.
 *
 * @param words of each box, longest choice first
 */
export function labels(boxes: readonly Box[], words: readonly (readonly (readonly string[])[])[]): readonly Label[] {
  const taken: Box[] = [];
  return boxes.map((box, i) => {
    const inFront = boxes.slice(0, i);
    for (const lines of words[i] ?? []) {
      const w = widest(lines);
      const h = lines.length * LINE;
      if (w > box.w - PAD || h > box.h - PAD) {
        continue;
      }
      const free = spots(box, w, h).filter((spot) => taken.every((t) => overlap(t, spot) === 0));
      const cost = (spot: Box): number => inFront.reduce((sum, f) => sum + overlap(f, spot), 0);
      const best = [...free].sort((a, b) => cost(a) - cost(b))[0];
      if (best) {
        taken.push(best);
        return { x: best.x, y: best.y + LINE - 5, lines };
      }
    }
    return { x: box.x + box.w / 2, y: box.y + box.h / 2, lines: [] };
  });
}

export const LINE_HEIGHT = LINE;

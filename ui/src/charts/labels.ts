import { overlap, type Box } from './frame';

export interface Label {
  readonly x: number;
  readonly y: number;
  readonly lines: readonly string[];
}

export const LINE_HEIGHT = 21;
const PAD = 6;
/** More of a label than this share over a box in front would seem to belong to that box. */
const MOST_COVERED = 0.08;

const pen = document.createElement('canvas').getContext('2d');

function widest(lines: readonly string[]): number {
  if (pen) {
    pen.font = `bold 18px ${getComputedStyle(document.body).fontFamily}`;
  }
  return Math.max(...lines.map((line) => pen?.measureText(line).width ?? 10 * line.length));
}

function spots(box: Box, w: number, h: number): readonly Box[] {
  const left = box.x + PAD;
  const right = box.x + box.w - PAD - w;
  const top = box.y + PAD;
  const low = box.y + box.h - PAD - h;
  const xs = [left, (left + right) / 2, right];
  const ys = [top, (top + low) / 2, low];
  return ys.flatMap((y) => xs.map((x) => ({ x, y, w, h })));
}

/** Words for a box, some of which own up to standing over a box in front of it. */
export interface Words {
  readonly lines: readonly string[];
  readonly behind: boolean;
}

/** Where the words stand inside their box, clear of words already put and of the boxes in front; null where they do not fit. */
function spotFor(box: Box, { lines, behind }: Words, inFront: readonly Box[], taken: readonly Box[]): Box | null {
  const w = widest(lines);
  const h = lines.length * LINE_HEIGHT;
  if (w > box.w - 2 * PAD || h > box.h - PAD) {
    return null;
  }
  const covered = (spot: Box): number => inFront.reduce((sum, front) => sum + overlap(front, spot), 0);
  const free = spots(box, w, h).filter((spot) => taken.every((t) => overlap(t, spot) === 0));
  const best = [...free].sort((a, b) => covered(a) - covered(b))[0];
  return best && (behind || covered(best) <= MOST_COVERED * w * h) ? best : null;
}

/**
 * Puts words on boxes that lie over each other, front box first: where a box has no room left to be seen, it stays
 * without.
 *
 * @param words of each box, best choice first
 */
export function labels(boxes: readonly Box[], words: readonly (readonly Words[])[]): readonly Label[] {
  const taken: Box[] = [];
  return boxes.map((box, i) => {
    for (const choice of words[i] ?? []) {
      const { lines } = choice;
      const spot = spotFor(box, choice, boxes.slice(0, i), taken);
      if (spot) {
        taken.push(spot);
        return { x: spot.x, y: spot.y + LINE_HEIGHT - 5, lines };
      }
    }
    return { x: box.x, y: box.y, lines: [] };
  });
}

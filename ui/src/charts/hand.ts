import { panned, pinched, zoomed } from '../lib/span';
import type { Time } from './Plot';

/** One turn of the wheel. */
const TURN = 1.25;

/** Time under a finger when it came down, and where it is now as a share of the width. */
interface Finger {
  readonly time: number;
  share: number;
}

/** A plot follows the hand: dragged sideways, pinched, and by the wheel once it has the focus or with Ctrl. */
export function holdBy(over: HTMLElement, time: Time): () => void {
  const fingers = new Map<number, Finger>();
  const share = (event: { readonly clientX: number }): number => {
    const box = over.getBoundingClientRect();
    return (event.clientX - box.left) / Math.max(box.width, 1);
  };
  const timeAt = (s: number): number => {
    const { from, to } = time.span.peek();
    return from + s * (to - from);
  };
  const again = (): void => {
    for (const [id, finger] of fingers) {
      fingers.set(id, { time: timeAt(finger.share), share: finger.share });
    }
  };
  const down = (event: PointerEvent): void => {
    if (event.button !== 0) {
      return;
    }
    over.setPointerCapture(event.pointerId);
    over.closest<HTMLElement>('.plot')?.focus({ preventScroll: true });
    over.classList.add('held');
    fingers.set(event.pointerId, { time: 0, share: share(event) });
    again();
  };
  const move = (event: PointerEvent): void => {
    const finger = fingers.get(event.pointerId);
    if (!finger) {
      return;
    }
    finger.share = share(event);
    const [one, other] = [...fingers.values()];
    if (one && other) {
      time.span.value = pinched([one.time, other.time], [one.share, other.share], time.whole.peek());
    } else if (one) {
      time.span.value = panned(time.span.peek(), one.time - timeAt(one.share), time.whole.peek());
    }
  };
  const up = (event: PointerEvent): void => {
    fingers.delete(event.pointerId);
    over.classList.toggle('held', fingers.size > 0);
    again();
  };
  const wheel = (event: WheelEvent): void => {
    if (!event.ctrlKey && !over.closest('.plot')?.contains(document.activeElement)) {
      return;
    }
    event.preventDefault();
    time.span.value = zoomed(time.span.peek(), event.deltaY > 0 ? TURN : 1 / TURN, timeAt(share(event)), time.whole.peek());
  };
  over.addEventListener('pointerdown', down);
  over.addEventListener('pointermove', move);
  over.addEventListener('pointerup', up);
  over.addEventListener('pointercancel', up);
  over.addEventListener('wheel', wheel, { passive: false });
  return () => {
    over.removeEventListener('pointerdown', down);
    over.removeEventListener('pointermove', move);
    over.removeEventListener('pointerup', up);
    over.removeEventListener('pointercancel', up);
    over.removeEventListener('wheel', wheel);
  };
}

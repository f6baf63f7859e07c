import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Place } from '../api/types';

/** Width of an element in px, followed as the window changes. */
export function useWidth(): [{ current: HTMLDivElement | null }, number] {
  const ref = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) {
      return undefined;
    }
    const observer = new ResizeObserver(() => setWidth(Math.floor(element.clientWidth)));
    observer.observe(element);
    setWidth(Math.floor(element.clientWidth));
    return () => observer.disconnect();
  }, []);
  return [ref, width];
}

/** Where millimetres of the face land on the screen: x from the left, y down from the top. */
export interface Frame {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
  readonly height_mm: number;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export function boxOf(place: Place, frame: Frame): Box {
  return {
    x: frame.left + place.left_mm * frame.scale,
    y: frame.top + (frame.height_mm - place.bottom_mm - place.height_mm) * frame.scale,
    w: place.width_mm * frame.scale,
    h: place.height_mm * frame.scale,
  };
}

export function overlap(a: Box, b: Box): number {
  const w = Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x);
  const h = Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y);
  return w > 0 && h > 0 ? w * h : 0;
}

import { type RefObject, useLayoutEffect, useRef, useState } from "react";

/** The width of an element in whole pixels; 0 until it is known. */
export function useWidth(): readonly [RefObject<HTMLDivElement | null>, number] {
  const ref = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const place = ref.current;
    if (!place) return;
    const measure = () => setWidth(Math.floor(place.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(place);
    return () => observer.disconnect();
  }, []);
  return [ref, width];
}

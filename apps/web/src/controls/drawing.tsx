import { useLayoutEffect, useRef } from "react";
import styles from "./drawing.module.css";
import { redraw } from "./redraw.js";

export interface DrawingProps {
  /** A stand-alone SVG made by the app: from numbers and escaped names, without script, style or address. */
  readonly svg: string;
}

/** A drawing that changes where its SVG does. */
export const Drawing = ({ svg }: DrawingProps) => {
  const place = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (place.current) redraw(place.current, svg);
  }, [svg]);
  return <div ref={place} className={styles.drawing} />;
};

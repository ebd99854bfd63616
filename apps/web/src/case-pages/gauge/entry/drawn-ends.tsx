import { Button } from "react-aria-components";
import type { ScreenSide } from "../model/ends.js";
import styles from "./reading-entry.module.css";

export interface DrawnEndsProps {
  readonly names: Readonly<Record<ScreenSide, string>>;
  readonly onPress: (hand: ScreenSide) => void;
}

/** The halves of the drawing can be pressed: that end is lower. The buttons below do the same for keys and for reading aloud. */
export const DrawnEnds = ({ names, onPress }: DrawnEndsProps) => (
  <>
    {(["left", "right"] as const).map((hand) => (
      <Button
        key={hand}
        className={`${styles.drawnEnd} ${styles[hand]}`}
        aria-label={names[hand]}
        excludeFromTabOrder
        preventFocusOnPress
        onPress={() => onPress(hand)}
      />
    ))}
  </>
);

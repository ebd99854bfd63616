import { Button } from "react-aria-components";
import { useLatest } from "../../../controls/use-latest.js";
import type { ScreenSide } from "../model/ends.js";
import styles from "./reading-entry.module.css";

export interface DrawnEndsProps {
  readonly names: Readonly<Record<ScreenSide, string>>;
  readonly onPress: (hand: ScreenSide) => void;
}

/** The halves of the drawing can be pressed: that end is lower. The buttons below do the same for keys and for reading aloud. */
export const DrawnEnds = ({ names, onPress }: DrawnEndsProps) => {
  const press = useLatest(onPress);
  return (
    <>
      <DrawnEnd hand="left" name={names.left} onPress={press} />
      <DrawnEnd hand="right" name={names.right} onPress={press} />
    </>
  );
};

interface DrawnEndProps {
  readonly hand: ScreenSide;
  readonly name: string;
  readonly onPress: (hand: ScreenSide) => void;
}

const DrawnEnd = ({ hand, name, onPress }: DrawnEndProps) => (
  <Button
    className={`${styles.drawnEnd} ${styles[hand]}`}
    aria-label={name}
    excludeFromTabOrder
    preventFocusOnPress
    onPress={() => onPress(hand)}
  />
);

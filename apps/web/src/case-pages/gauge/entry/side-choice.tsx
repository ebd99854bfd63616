import type { VehicleSide } from "@halfturn/casefile";
import { useState } from "react";
import { Button as Pressable } from "react-aria-components";
import { Button } from "../../../controls/button.js";
import { useWords } from "../../../words/use-words.js";
import { gaugeWords } from "../words/gauge-catalogue.js";
import styles from "./side-choice.module.css";

export interface SideChoiceProps {
  readonly side: VehicleSide;
  /** The side that the readings so far were taken from. */
  readonly standing: VehicleSide;
  readonly onSide: (side: VehicleSide) => void;
}

/** The standing reminder of the side; another one asks first, since the gauge's zero then counts the other way. */
export function SideChoice({ side, standing, onSide }: SideChoiceProps) {
  const words = useWords(gaugeWords);
  const [isAsking, setAsking] = useState(false);
  const other: VehicleSide = standing === "left" ? "right" : "left";
  const choose = (of: VehicleSide) => () => {
    onSide(of);
    setAsking(false);
  };
  return (
    <>
      <Pressable className={styles.side ?? ""} data-odd={side !== standing || undefined} onPress={() => setAsking(!isAsking)}>
        {side === standing ? words.alwaysFrom[side] : words.fromSide[side]}
      </Pressable>
      {isAsking ? (
        <div className={styles.ask} role="alert">
          <p>{words.otherSideAsk[other]}</p>
          <div className={styles.answers}>
            <Button kind="main" onPress={choose(standing)}>
              {words.staySide[standing]}
            </Button>
            <Button onPress={choose(other)}>{words.otherSideOnce[other]}</Button>
          </div>
        </div>
      ) : null}
    </>
  );
}

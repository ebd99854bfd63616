import { memo } from "react";
import { Button as Pressable } from "react-aria-components";
import styles from "./number-pad.module.css";
import type { PadKey } from "./pad-text.js";
import { useLatest } from "./use-latest.js";

export interface NumberPadWords {
  readonly pad: string;
  readonly point: string;
  readonly back: string;
  readonly clear: string;
  readonly keep: string;
}

export interface NumberPadProps {
  readonly words: NumberPadWords;
  readonly decimalSign: "." | ",";
  readonly onKey: (key: PadKey) => void;
  readonly onKeep: () => void;
  /** Keys for fractions of an inch. */
  readonly withFractions?: boolean;
}

const DIGITS = ["1", "2", "3", "4", "5", "6", "7", "8", "9"] as const;

/** Large keys of our own: no sign to mistype, both decimal signs understood, and a glove does not miss them. A keyboard types into the field beside it. */
export function NumberPad({ onKey, onKeep, ...looks }: NumberPadProps) {
  // What a key does changes with every reading, how it looks does not: the keys ask when they are pressed.
  return <PadKeys {...looks} onKey={useLatest(onKey)} onKeep={useLatest(onKeep)} />;
}

const PadKeys = memo(({ words, decimalSign, onKey, onKeep, withFractions = false }: NumberPadProps) => {
  const key = (of: PadKey, face: string, name: string, place: string) => (
    <Pressable
      key={of}
      className={`${styles.key} ${styles[place] ?? ""}`}
      aria-label={name}
      excludeFromTabOrder
      preventFocusOnPress
      onPress={() => onKey(of)}
    >
      {face}
    </Pressable>
  );
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would ask for a legend in sight, and there is no room for one
    <div className={`${styles.pad} ${withFractions ? styles.fractions : ""}`} role="group" aria-label={words.pad}>
      {DIGITS.map((digit) => key(digit, digit, digit, `d${digit}`))}
      {key("point", decimalSign, words.point, "point")}
      {key("0", "0", "0", "d0")}
      {withFractions ? key("blank", "␣", "␣", "blank") : null}
      {withFractions ? key("slash", "⁄", "/", "slash") : null}
      {key("back", "⌫", words.back, "back")}
      {key("clear", words.clear, words.clear, "clear")}
      <Pressable className={`${styles.key} ${styles.keep}`} excludeFromTabOrder preventFocusOnPress onPress={onKeep}>
        {words.keep}
      </Pressable>
    </div>
  );
});

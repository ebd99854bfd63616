import { useEffect, useEffectEvent, useRef } from "react";
import styles from "./readout.module.css";

export interface ReadoutProps {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly onKeep: () => void;
  readonly onHand?: (hand: "left" | "right") => void;
  /** Shown where nothing is typed yet. */
  readonly placeholder: string;
  readonly isWrong: boolean;
  readonly describedBy: string;
  /** Degrees unless another is given. */
  readonly unit?: string;
  /** Takes the keys again when it changes. */
  readonly stepKey: string;
}

const TYPES = /^[\d.,]$/;
const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches("input, textarea, select, [contenteditable]");

/**
 * The number that is being typed. Our own pad, a keyboard and a gauge that types all write here; the screen keyboard stays away.
 * Digits typed anywhere on the page land here, so that a gauge that types needs no finger.
 */
export function Readout({ label, text, onText, onKeep, onHand, placeholder, isWrong, describedBy, unit, stepKey }: ReadoutProps) {
  const field = useRef<HTMLInputElement>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the next place takes the keys, and only that
  useEffect(() => {
    // To focus what has the focus asks for the layout all the same.
    if (document.activeElement !== field.current) field.current?.focus({ preventScroll: true });
  }, [stepKey]);

  const typed = useEffectEvent((event: KeyboardEvent): void => {
    if (!TYPES.test(event.key) || event.ctrlKey || event.metaKey || event.altKey || isField(event.target)) return;
    event.preventDefault();
    field.current?.focus({ preventScroll: true });
    onText(text + event.key);
  });
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => typed(event);
    window.addEventListener("keydown", pressed);
    return () => window.removeEventListener("keydown", pressed);
  }, []);

  return (
    <label className={styles.readout} data-wrong={isWrong || undefined}>
      <input
        ref={field}
        className={styles.field}
        type="text"
        inputMode="none"
        autoComplete="off"
        enterKeyHint="next"
        aria-label={label}
        aria-invalid={isWrong}
        aria-describedby={describedBy}
        placeholder={placeholder}
        value={text}
        onChange={(event) => onText(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter") {
            event.preventDefault();
            onKeep();
          } else if (onHand && (event.key === "ArrowLeft" || event.key === "ArrowRight")) {
            event.preventDefault();
            onHand(event.key === "ArrowLeft" ? "left" : "right");
          } else if (event.key === "Escape") onText("");
        }}
      />
      <span className={unit === undefined ? styles.degree : styles.unit} aria-hidden="true">
        {unit ?? "°"}
      </span>
    </label>
  );
}

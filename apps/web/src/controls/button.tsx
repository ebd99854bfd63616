import type { ReactNode } from "react";
import { Button as Pressable } from "react-aria-components";
import styles from "./button.module.css";
import { useLatest } from "./use-latest.js";

export interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress?: () => void;
  /** main: the one thing to do next. plain: anything else. quiet: beside other things. danger: takes something away. */
  readonly kind?: "main" | "plain" | "quiet" | "danger";
  readonly size?: "normal" | "large";
  readonly type?: "button" | "submit";
  readonly isDisabled?: boolean;
  readonly label?: string;
}

export const Button = ({ children, onPress, kind = "plain", size = "normal", type = "button", isDisabled = false, label }: ButtonProps) => {
  const press = useLatest(() => onPress?.());
  return (
    <Pressable
      className={`${styles.button} ${styles[kind]} ${styles[size]}`}
      type={type}
      isDisabled={isDisabled}
      {...(onPress ? { onPress: press } : {})}
      {...(label === undefined ? {} : { "aria-label": label })}
    >
      {children}
    </Pressable>
  );
};

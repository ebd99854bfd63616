import { type ReactNode, useEffect, useId, useRef } from "react";
import { Button } from "./button.js";
import { Icon } from "./icon.js";
import styles from "./sheet.module.css";

export interface SheetProps {
  readonly title: string;
  /** What the button that closes it is called. */
  readonly close: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** Something beside the work: over the page, from below on a phone. It is there as long as it is drawn; Escape and a press beside it close it. */
export function Sheet({ title, close, onClose, children }: SheetProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useId();
  useEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keyboard closes a dialog with Escape, and with the button in it
    <dialog
      ref={dialog}
      className={styles.sheet}
      aria-labelledby={heading}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onClick={(event) => {
        if (event.target === event.currentTarget) onClose();
      }}
    >
      <div className={styles.inside}>
        <div className={styles.head}>
          <h2 id={heading}>{title}</h2>
          <Button kind="quiet" label={close} onPress={onClose}>
            <Icon name="close" />
          </Button>
        </div>
        {children}
      </div>
    </dialog>
  );
}

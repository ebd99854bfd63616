import styles from "./meter.module.css";

/** A share from 0 to 1 as a bar; the number stands beside it. */
export const Meter = ({ share, label }: { readonly share: number; readonly label: string }) => (
  <meter className={styles.meter} value={share} aria-label={label} />
);

import { Link } from "@tanstack/react-router";
import type { ReactNode } from "react";
import styles from "./button.module.css";

export interface LinkButtonProps {
  readonly to: "/cases" | "/cases/new" | "/settings" | "/pair";
  readonly children: ReactNode;
  readonly kind?: "main" | "plain" | "quiet";
  readonly size?: "normal" | "large";
  readonly label?: string;
}

/** Looks like a button, leads to a place. */
export const LinkButton = ({ to, children, kind = "plain", size = "normal", label }: LinkButtonProps) => (
  <Link to={to} className={`${styles.button} ${styles[kind]} ${styles[size]}`} {...(label === undefined ? {} : { "aria-label": label })}>
    {children}
  </Link>
);

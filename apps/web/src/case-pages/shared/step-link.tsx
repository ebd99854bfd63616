import type { Step } from "@halfturn/words";
import { Link } from "@tanstack/react-router";
import button from "../../controls/button.module.css";

export interface StepLinkProps {
  /** Of the case. */
  readonly id: string;
  readonly step: Step;
  readonly label: string;
  readonly kind?: "main" | "plain";
}

/** Leads to another step of the same case. */
export const StepLink = ({ id, step, label, kind = "plain" }: StepLinkProps) => (
  <Link to="/cases/$id/$step" params={{ id, step }} className={`${button.button} ${button[kind]} ${button.normal}`}>
    {label}
  </Link>
);

import { type ReactNode, useContext } from "react";
import { DraftPlace } from "./kept-draft.js";

/** Drafts inside belong to this part of what is around it: two sections of a shaft have a length each. */
export const DraftScope = ({ part, children }: { readonly part: string; readonly children: ReactNode }) => {
  const around = useContext(DraftPlace);
  return <DraftPlace value={`${around}/${part}`}>{children}</DraftPlace>;
};

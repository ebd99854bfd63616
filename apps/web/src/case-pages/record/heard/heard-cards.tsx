import type { Case } from "@halfturn/casefile";
import { useEffect, useRef } from "react";
import type { Settings } from "../../../device/settings.js";
import type { Heard, HearResult, Look, ReadChannels } from "../../../worker/listening/listening-types.js";
import { accessoryNames } from "../part-names.js";
import { PicturesCard } from "../pictures/pictures-card.js";
import styles from "../record-page.module.css";
import type { SpeedForm } from "../set-up/speed-form.js";
import { ContributionsCard } from "./contributions-card.js";
import { FindingsCard } from "./findings-card.js";
import { RefusedCard } from "./refused-card.js";
import { VerdictCard } from "./verdict-card.js";

export interface HeardCardsProps {
  readonly document: Case;
  readonly settings: Settings;
  readonly look: Look;
  /** null while nothing is read. */
  readonly read: ReadChannels | null;
  readonly result: HearResult | null;
  /** An answer that was asked for comes into sight by itself. */
  readonly isFresh: boolean;
  readonly form: SpeedForm;
  readonly stretch: readonly [number, number] | null;
  /** While another answer is worked out, the one in sight is out of date. */
  readonly isBusy: boolean;
  readonly onStretch: (stretch: readonly [number, number] | null) => void;
  readonly onKeep: (heard: Heard) => void;
  readonly isKept: boolean;
}

/** What was found in a recording, its pictures, and what to know about it. */
export function HeardCards({
  document,
  settings,
  look,
  read,
  result,
  isFresh,
  form,
  stretch,
  isBusy,
  onStretch,
  onKeep,
  isKept,
}: HeardCardsProps) {
  const nameOf = accessoryNames(document);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (result && isFresh) place.current?.scrollIntoView({ block: "start" });
  }, [result, isFresh]);
  const heard = result?.ok ? result.heard : null;
  return (
    <>
      <div ref={place} className={`${styles.opened} ${isBusy ? styles.busy : ""}`} aria-busy={isBusy}>
        {heard ? <VerdictCard {...{ heard, nameOf, settings, form, onKeep, isKept }} /> : null}
        {result && !result.ok ? <RefusedCard result={result} settings={settings} /> : null}
        {heard ? <ContributionsCard heard={heard} nameOf={nameOf} settings={settings} /> : null}
      </div>
      {read ? <PicturesCard {...{ look, read, heard, stretch, onStretch, nameOf, settings }} /> : null}
      <FindingsCard findings={heard?.json.findings ?? read?.findings ?? []} document={document} settings={settings} />
    </>
  );
}

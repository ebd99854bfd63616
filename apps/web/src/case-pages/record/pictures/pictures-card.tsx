import { catalogueOf, type NameOf } from "@halfturn/words";
import { useState } from "react";
import { Card } from "../../../controls/card.js";
import { Choice } from "../../../controls/choice.js";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import type { Heard, Look, ReadChannels } from "../../../worker/listening/listening-types.js";
import { channelText } from "../set-up/channel-text.js";
import { recordWords } from "../words/record-catalogue.js";
import { amplitudeText } from "./amplitude-text.js";
import { OrderMap } from "./order-map.js";
import { SpectrumView } from "./spectrum-view.js";
import { Waveform } from "./waveform.js";

export interface PicturesCardProps {
  readonly look: Look;
  readonly read: ReadChannels;
  readonly heard: Heard | null;
  readonly stretch: readonly [number, number] | null;
  readonly onStretch: (stretch: readonly [number, number] | null) => void;
  readonly nameOf: NameOf;
  readonly settings: Settings;
}

/** The recording to look at: over time, by frequency, by order. */
export function PicturesCard({ look, read, heard, stretch, onStretch, nameOf, settings }: PicturesCardProps) {
  const words = useWords(recordWords).heard;
  const catalogue = catalogueOf(settings.language, settings.units);
  const { numbers } = catalogue;
  const [wanted, setWanted] = useState<string | null>(null);
  const shown = wanted !== null && read.ids.includes(wanted) ? wanted : (read.ids.at(-1) ?? "");
  const channel = read.ids.indexOf(shown);
  const writerOf = (channelId: string) => amplitudeText(look.channels.find(({ id }) => id === channelId)?.quantity, numbers);
  return (
    <Card title={words.pictures}>
      {read.ids.length > 1 ? (
        <Choice
          label={words.shown}
          options={look.channels.filter(({ id }) => read.ids.includes(id)).map((one) => ({ value: one.id, label: channelText(one) }))}
          value={shown}
          onChange={setWanted}
        />
      ) : null}
      <Waveform {...{ read, channel, stretch, onStretch, numbers }} theme={settings.theme} />
      <SpectrumView
        {...{ read, channel, stretch, heard, nameOf, catalogue }}
        amplitudeText={writerOf(shown)}
        speedText={(kmh) => numbers.roadSpeed(kmh, 0)}
      />
      {heard?.picture ? (
        <OrderMap
          picture={heard.picture}
          ground={settings.theme === "dark" ? "dark" : "light"}
          numbers={numbers}
          amplitudeText={writerOf(heard.picture.channel)}
        />
      ) : null}
      {heard && !heard.picture ? <p>{words.noMap}</p> : null}
    </Card>
  );
}

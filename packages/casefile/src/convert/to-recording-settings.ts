import type { Case, CaseRecording } from "../schema/case.js";

/** What a case says of one channel: the file's name of it, what it is called instead, its unit, and what a raw 1 stands for. */
export interface RecordedScale {
  readonly id: string;
  readonly name?: string;
  readonly unit?: string;
  readonly fullScale?: number;
  readonly sensitivity?: number;
}

/** What a case says of a recording. */
export interface RecordingSettings {
  /** Its place in `recordings`; null where the case does not know the file. */
  readonly index: number | null;
  readonly gear: string | undefined;
  readonly pulsesPerTurn: number;
  /** Hz. */
  readonly filter: number | null;
  /** For the channels asked about, those of which something is known. */
  readonly channels: readonly RecordedScale[];
}

const baseName = (path: string): string => path.split(/[/\\]/).at(-1) ?? path;

/**
 * What a case says of a recording's file, found by its name as written or without folders. channelIds: the file's channels, which take the recording's own
 * unit and full scale unless they are channels of which the case says them apart. Before a file is opened its channels are not known: leave them out then.
 */
export function toRecordingSettings(
  { recordings = [] }: Pick<Case, "recordings">,
  file: string,
  channelIds: readonly string[] = [],
): RecordingSettings {
  const exact = recordings.findIndex((one) => one.file === file);
  const index = exact >= 0 ? exact : recordings.findIndex((one) => baseName(one.file) === baseName(file));
  const recording = recordings[index];
  if (recording === undefined) return { index: null, gear: undefined, pulsesPerTurn: 1, filter: null, channels: [] };
  const { gear, pulsesPerTurn = 1, filterHz = null, channels = [] } = recording;
  const own = channels.map((channel) => scaleOf(channel.id, channel, recording));
  const others = channelIds.filter((id) => !channels.some((channel) => channel.id === id)).map((id) => scaleOf(id, {}, recording));
  return { index, gear, pulsesPerTurn, filter: filterHz, channels: [...own, ...others.filter((scale) => Object.keys(scale).length > 1)] };
}

function scaleOf(id: string, channel: Omit<Partial<RecordedScale>, "id">, recording: CaseRecording): RecordedScale {
  const { name, sensitivity, unit = recording.unit, fullScale = recording.fullScale } = channel;
  return {
    id,
    ...(name === undefined ? {} : { name }),
    ...(unit === undefined ? {} : { unit }),
    ...(fullScale === undefined ? {} : { fullScale }),
    ...(sensitivity === undefined ? {} : { sensitivity }),
  };
}

export { type ByteSource, memorySource } from "./bytes/byte-source.js";
export type { ChannelScale } from "./channels/channel-scale.js";
export type { ChannelQuantity } from "./channels/unit-table.js";
export { writtenUnit } from "./channels/written-unit.js";
export { greatestValues, roundedUp } from "./convert/greatest-values.js";
export { type EvenRecording, onEvenSteps } from "./convert/on-even-steps.js";
export { partOfRecording, type Stretch } from "./convert/part-of-recording.js";
export { type TableForm, writeCsv } from "./csv/write-csv.js";
export { type ChannelPlace, channelPlaces, findChannel } from "./find-channel.js";
export { type MemoryTrack, memoryRecording } from "./memory-recording.js";
export { openRecording } from "./open-recording.js";
export type { Block, Channel, Clock, Recording, RecordingFormat, Selection, Track } from "./recording.js";
export type { RecordingResult } from "./recording-result.js";
export { type Followed, followedSpeed, middleSpeed, type SpeedRange } from "./road-test/followed-speed.js";
export {
  type HeardChannel,
  type HeardChannels,
  hearablePlaces,
  heardChannels,
  recordedChannel,
} from "./road-test/heard-channels.js";
export { type HeardReader, heardReaders } from "./road-test/heard-readers.js";
export { isHeard } from "./road-test/on-one-clock.js";
export { type RecordedSpeed, recordedSpeed, speedKindOf, speedPlaces, type Tachometer, tachoPart } from "./road-test/recorded-speed.js";
export { type EvenChannel, evenChannel } from "./timing/even-channel.js";
export type { EvenMethod, EvenReaders } from "./timing/even-readers.js";
export type { SampleSpool, SpoolRoom } from "./timing/sample-spool.js";
export { type SlowChannel, slowChannel } from "./timing/slow-channel.js";
export { type UffForm, writeUff } from "./uff/write-uff.js";
export type { WavEncoding } from "./wav/wav-encoding.js";
export { type WavForm, writeWav } from "./wav/write-wav.js";

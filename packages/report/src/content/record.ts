import { type Case, type CaseRecording, FOLLOWED_SPEED, type OrdersJson, ordersToJson, toPowertrain } from "@halfturn/casefile";
import type { Abstained } from "@halfturn/engine/attribution";
import { toSi } from "@halfturn/engine/units";
import { type Catalogue, type CommonPart, type NameOf, noteText, probabilityText } from "@halfturn/words";
import type { ReportWords } from "../words/index.js";
import type { Block, Cell, Column, Section, Table } from "./blocks.js";
import { dayText } from "./day-text.js";

type Heard = NonNullable<CaseRecording["heard"]>;
type OrderName = Pick<Heard["contributions"][number], "part" | "order">;

/** What the section is said with. */
interface Saying {
  readonly document: Case;
  readonly catalogue: Catalogue;
  readonly words: ReportWords;
}

/** What turned at the speed of the complaint, and what was heard in recordings; nothing where neither is known. */
export function recordSections(document: Case, catalogue: Catalogue, words: ReportWords): readonly Section[] {
  const saying = { document, catalogue, words };
  const blocks = [...turningBlocks(saying), ...(document.recordings ?? []).flatMap((recording) => heardBlocks(recording, saying))];
  return blocks.length === 0 ? [] : [{ title: catalogue.labels.steps.record, level: 1, blocks }];
}

const column = (label: string, weight: number, align: Column["align"] = "end"): Column => ({ label, align, weight });
const cell = (text: string): Cell => ({ text });

function accessoryNames({ vehicle }: Case): NameOf {
  const labels = new Map((vehicle?.accessories ?? []).map(({ id, label }) => [id, label ?? id]));
  return (id) => labels.get(id) ?? id;
}

const orderText = (order: number, { numbers }: Catalogue): string => numbers.plain(order, Number.isInteger(order) ? 0 : 1);

const partText = (part: string, { document, catalogue: { orders } }: Saying): string =>
  orders.parts[part as CommonPart] ?? accessoryNames(document)(part);

/** Every order over the speeds of the complaint. */
function turningBlocks(saying: Saying): readonly Block[] {
  const { document, catalogue, words } = saying;
  const { orders, numbers } = catalogue;
  const [from, to] = document.complaint?.speedKmh ?? [0, 0];
  const [low, high] = [turningAt(document, from > 0 ? from : to), turningAt(document, to)];
  if (low === null || high === null) return [];
  const rows = high.json.parts.flatMap(({ part, orders: own }, k) =>
    own.map(({ order, frequencyHz, cause }, i): readonly Cell[] => {
      const slow = low.json.parts[k]?.orders[i]?.frequencyHz?.value ?? 0;
      return [
        cell(i === 0 ? partText(part, saying) : ""),
        cell(orderText(order, catalogue)),
        cell(numbers.plainInterval(slow, frequencyHz?.value ?? 0, 1)),
        cell(orders.causes[cause]),
      ];
    }),
  );
  const caption = words.record.turning(numbers.bareRoadSpeed(from, 0), numbers.roadSpeed(to, 0), high.gear);
  return [
    {
      kind: "table",
      caption,
      columns: [column(orders.part, 3, "start"), column(orders.order, 1), column("Hz", 2), column(orders.cause, 4, "start")],
      rows,
      notes: high.notes.map((note) => noteText(orders, note, numbers)),
    },
  ];
}

interface TurningAt {
  readonly json: OrdersJson;
  readonly gear: string | null;
  readonly notes: Extract<ReturnType<typeof toPowertrain>, { readonly ok: true }>["notes"];
}

/** null where the case does not say what turns, or nothing turns. */
function turningAt(document: Case, speedKmh: number): TurningAt | null {
  if (!(speedKmh > 0)) return null;
  const found = toPowertrain(document, { speed: toSi(speedKmh, "km/h") });
  return found.ok ? { json: ordersToJson(found.powertrain, { speedKmh, wheelTurns: 1 }), gear: found.gear, notes: found.notes } : null;
}

/** An order that explains less is left out, unless it is the largest. */
const LEAST_SHARE = 0.01;

function heardBlocks({ file, label, heard }: CaseRecording, saying: Saying): readonly Block[] {
  if (heard === undefined) return [];
  const { catalogue, words } = saying;
  const { numbers } = catalogue;
  const name = label ?? file;
  return [
    {
      kind: "facts",
      items: [
        { label: words.record.recording, value: name },
        { label: words.record.heardOn, value: dayText(heard.at, catalogue.language) },
        { label: words.record.channel, value: heard.channel },
        { label: words.record.speedFrom, value: heard.speedFrom === FOLLOWED_SPEED ? words.record.theVibration : heard.speedFrom },
        ...(heard.gear === undefined ? [] : [{ label: words.facts.gear, value: heard.gear }]),
        {
          label: words.record.length,
          value: words.record.lengthOf(numbers.plain(heard.durationS, 0), numbers.plain(heard.sampleRateHz, 0)),
        },
      ],
    },
    verdictNotice(heard, saying),
    heardTable(name, heard, saying),
  ];
}

function verdictNotice(heard: Heard, saying: Saying): Block {
  const { catalogue, words } = saying;
  const { vibration, numbers } = catalogue;
  if (heard.verdict === null) {
    const between = numbers.any((heard.abstained?.between ?? []).map((one) => nameOf(one, saying)));
    // A record may come from a later version: a reason that is not known is said as none.
    const reason = heard.abstained?.reason ?? "nothing";
    const known = Object.hasOwn(vibration.abstained, reason) ? (reason as Abstained["reason"]) : "nothing";
    return { kind: "notice", tone: "unsure", title: words.record.noVerdict, lines: [vibration.abstained[known](between)] };
  }
  const share = shareOf(heard, heard.verdict);
  const line = words.record.follows(
    nameOf(heard.verdict, saying),
    probabilityText(heard.verdict.probability, numbers),
    numbers.share(share),
  );
  return { kind: "notice", tone: "over", title: words.record.verdict, lines: [line] };
}

const nameOf = ({ part, order }: OrderName, { document, catalogue }: Saying): string =>
  catalogue.orders.orderOf(part, order, accessoryNames(document));

const shareOf = ({ contributions }: Heard, { part, order }: OrderName): number =>
  contributions.find((one) => one.part === part && one.order === order)?.share ?? 0;

function heardTable(name: string, heard: Heard, saying: Saying): Table {
  const { catalogue, words } = saying;
  const { numbers, orders, vibration, labels } = catalogue;
  const seen = heard.contributions.filter(({ observable }) => observable).toSorted((a, b) => (b.share ?? 0) - (a.share ?? 0));
  const unseen = heard.contributions.filter(({ observable }) => !observable);
  const rows = seen
    .filter(({ share }, k) => k === 0 || (share ?? 0) >= LEAST_SHARE)
    .map(({ part, order, frequencyHz, amplitudeMS2, share, probability }): readonly Cell[] => [
      cell(partText(part, saying)),
      cell(orderText(order, catalogue)),
      cell(numbers.plainInterval(frequencyHz[0], frequencyHz[1], 1)),
      amplitudeMS2 === null
        ? cell(labels.notKnown)
        : { text: numbers.plain(amplitudeMS2.value, 3), detail: numbers.plainInterval(...amplitudeMS2.interval95, 3) },
      cell(share === null ? labels.notKnown : numbers.share(share)),
      cell(probability === null ? labels.notKnown : probabilityText(probability, numbers)),
    ]);
  return {
    kind: "table",
    caption: words.record.heardIn(name),
    columns: [
      column(orders.part, 3, "start"),
      column(orders.order, 1),
      column("Hz", 2),
      column(`${vibration.amplitude}, m/s²`, 3),
      column(vibration.share, 1),
      column(vibration.probability, 2),
    ],
    rows,
    notes: [
      words.record.unexplained(numbers.share(heard.unexplainedShare)),
      ...(unseen.length === 0
        ? []
        : [words.record.unseen(numbers.all(unseen.map((one) => nameOf(one, saying))), numbers.plain(heard.bandHz, 0))]),
    ],
  };
}

import { DESK, type DeviceSettings, PHONE } from "../support/device.js";

/** One picture: what is opened, on what device, and how far down. */
export interface Shot {
  readonly name: string;
  readonly path: string;
  readonly settings: DeviceSettings;
  /** Texts that are pressed first, one after the other. */
  readonly press?: readonly string[];
  /** A text that is brought to the top; the page stays at its beginning without one. */
  readonly from?: string;
}

/** Invented vehicles: one that was gauged, corrected and gauged again, one whose plans are still to be chosen from, one that just came in. */
const [DONE, OPEN, NEW] = ["skerry-water-0031", "skerry-rescue-0177", "skerry-post-0203"] as const;

const PAGES: readonly Omit<Shot, "settings">[] = [
  { name: "cases", path: "/cases" },
  { name: "new-case", path: "/cases/new" },
  { name: "settings", path: "/settings" },
  { name: "describe", path: `/cases/${DONE}/describe` },
  { name: "record", path: `/cases/${DONE}/record`, from: "Turning at" },
  { name: "gauge", path: `/cases/${NEW}/gauge`, press: ["On the ground", "Start reading"] },
  { name: "explain", path: `/cases/${DONE}/explain` },
  { name: "drawing", path: `/cases/${DONE}/explain`, from: "How it stands" },
  { name: "correct", path: `/cases/${OPEN}/correct` },
  { name: "prove", path: `/cases/${DONE}/prove` },
  { name: "report", path: `/cases/${DONE}/report` },
];

const SIZES = { phone: PHONE, desk: DESK } as const;

/** Every page on a phone and on a desk, and one picture for each other way to show things. */
export const SHOTS: readonly Shot[] = [
  ...PAGES.flatMap(({ name, ...page }) =>
    Object.entries(SIZES).map(([device, size]) => ({ name: `${device}-${name}`, ...page, settings: { size } })),
  ),
  { name: "phone-explain-dark", path: `/cases/${DONE}/explain`, settings: { theme: "dark" } },
  { name: "desk-explain-contrast", path: `/cases/${DONE}/explain`, settings: { theme: "contrast", size: DESK } },
  { name: "phone-explain-spanish", path: `/cases/${DONE}/explain`, settings: { language: "es" } },
  { name: "phone-correct-us-units", path: `/cases/${OPEN}/correct`, settings: { units: "us" } },
];

import type { Sheet } from "../figure-options.js";
import { type DrivelinePicture, shaftName } from "./driveline-picture.js";
import { jointLines } from "./joint-labels.js";
import type { LabelledPlace } from "./labelled-places.js";
import type { View } from "./projection.js";
import { shaftLines } from "./shaft-labels.js";

const LETTERS = "ABCDEFG";
const LONGEST_SIGN = 2;

/** Shafts carry letters where they are listed, so that nobody takes one for a joint. */
export const shaftPlaces = (picture: DrivelinePicture, view: View, sheet: Sheet): readonly LabelledPlace[] =>
  Array.from({ length: picture.driveline.joints.length + 1 }, (_, k) => ({
    sign: LETTERS[k] as string,
    name: shaftName(picture, k),
    lines: shaftLines(picture, k, view, sheet),
  }));

export const jointPlaces = (picture: DrivelinePicture, sheet: Sheet): readonly LabelledPlace[] => {
  const short = picture.driveline.joints.every(({ id }) => id.length <= LONGEST_SIGN);
  return picture.driveline.joints.map((joint, k) => ({
    sign: short ? joint.id : String(k + 1),
    name: joint.id,
    lines: jointLines(picture, joint, sheet),
  }));
};

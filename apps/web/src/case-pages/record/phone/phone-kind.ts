/** What a device can record of itself. */
export type PhoneKind = "motion" | "sound";

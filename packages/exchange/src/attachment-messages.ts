import { z } from "zod";

/** The kinds of picture that are taken; what counts is the content, not what a header claims. */
export const ATTACHMENT_TYPES = ["image/jpeg", "image/png", "image/webp"] as const;

/** 10 MB: a photograph of a workshop's phone at full size. */
export const MAX_ATTACHMENT_BYTES = 10_000_000;

/** 64 million: the full picture of most phones; more fills the memory of a screen that shows it. */
export const MAX_PICTURE_PIXELS = 64_000_000;

/** A file's name that is a name everywhere: no path, no blank, no leading dot. */
export const ATTACHMENT_NAME = /^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/;

/** A picture that belongs to a case. */
export const attachment = z
  .object({
    name: z.string().regex(ATTACHMENT_NAME),
    /** SHA-256 of the content, in 64 small hexadecimal digits. */
    hash: z.string().regex(/^[0-9a-f]{64}$/),
    type: z.enum(ATTACHMENT_TYPES),
    bytes: z.int().min(1).max(MAX_ATTACHMENT_BYTES),
    savedAt: z.string(),
    savedBy: z.string(),
  })
  .meta({ id: "Attachment" });

export const attachmentList = z.object({ attachments: z.array(attachment) }).meta({ id: "AttachmentList" });

export type Attachment = Readonly<z.infer<typeof attachment>>;
export type AttachmentType = Attachment["type"];

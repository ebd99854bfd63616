import { createHash } from "node:crypto";
import {
  ATTACHMENT_NAME,
  ATTACHMENT_TYPES,
  attachment,
  attachmentList,
  MAX_ATTACHMENT_BYTES,
  MAX_PICTURE_PIXELS,
} from "@halfturn/exchange";
import { createRoute, z } from "@hono/zod-openapi";
import type { Context } from "hono";
import { type Api, addRoute } from "../app/add-route.js";
import type { ServerParts } from "../app/server-parts.js";
import { readBody } from "../http/read-body.js";
import { refuse } from "../http/refuse.js";
import { type ReadPicture, readPicture } from "../pictures/read-picture.js";
import { by, deviceHeader, idParam, json, refused } from "./shared.js";

const HASH = /^[0-9a-f]{64}$/;

const nameParam = idParam.extend({
  name: z
    .string()
    .min(1)
    .max(200)
    .openapi({ param: { name: "name", in: "path" }, description: "The picture's name, or the SHA-256 of its content." }),
});
const pictureBytes = Object.fromEntries(ATTACHMENT_TYPES.map((type) => [type, { schema: z.string().openapi({ format: "binary" }) }]));
const path = "/api/cases/{id}/attachments/{name}";

const listRoute = createRoute({
  method: "get",
  path: "/api/cases/{id}/attachments",
  summary: "The pictures of a case, oldest first",
  request: { params: idParam },
  responses: { 200: { description: "The pictures.", content: json(attachmentList) }, ...refused(400, 404, 503) },
});

const getRoute = createRoute({
  method: "get",
  path,
  summary: "A picture, by its name or its hash",
  request: { params: nameParam },
  responses: {
    200: { description: "The picture; its ETag is its hash.", content: pictureBytes },
    304: { description: "Still the picture that If-None-Match names." },
    ...refused(400, 404, 503),
  },
});

const putRoute = createRoute({
  method: "put",
  path,
  summary: "Add a picture; under a hash it must be the picture of that hash",
  request: { params: nameParam, headers: deviceHeader },
  responses: {
    200: { description: "The case had it already.", content: json(attachment) },
    201: { description: "Kept.", content: json(attachment) },
    ...refused(400, 404, 409, 410, 413, 415, 422, 503, 507),
  },
});

const deleteRoute = createRoute({
  method: "delete",
  path,
  summary: "Take a picture away; its content is deleted when no other case has it",
  request: { params: nameParam },
  responses: { 204: { description: "Gone." }, ...refused(400, 404, 503, 507) },
});

export function addAttachmentRoutes(app: Api, parts: ServerParts): void {
  const { store } = parts;
  addRoute(app, listRoute, async (c) => {
    const { id } = c.req.valid("param");
    const attachments = await store.attachments(id);
    if (attachments === null) return refuse(c, "case-unknown", { id });
    c.header("cache-control", "no-store");
    return c.json({ attachments: [...attachments] }, 200);
  });
  addRoute(app, getRoute, async (c) => {
    const { id, name } = c.req.valid("param");
    const picture = await store.picture(id, name);
    if (picture === null) return refuse(c, "picture-unknown", { name });
    const { hash, type } = picture.attachment;
    c.header("etag", `"${hash}"`);
    // A name may be given to another picture once this one is taken away; a hash never.
    c.header("cache-control", name === hash ? "private, max-age=31536000, immutable" : "private, no-cache");
    if (c.req.header("if-none-match") === `"${hash}"`) return c.body(null, 304);
    return c.body(new Uint8Array(picture.content), 200, { "content-type": type });
  });
  addRoute(app, putRoute, (c) => put(c, c.req.valid("param"), parts), { required: true, content: pictureBytes });
  addRoute(app, deleteRoute, async (c) => {
    const { id, name } = c.req.valid("param");
    return (await store.detach(id, name)) ? c.body(null, 204) : refuse(c, "picture-unknown", { name });
  });
}

async function put(c: Context, { id, name }: { readonly id: string; readonly name: string }, parts: ServerParts): Promise<Response> {
  const body = await readBody(c, MAX_ATTACHMENT_BYTES);
  if (!body.ok) return refuse(c, "body-too-large", { limit: MAX_ATTACHMENT_BYTES });
  if (!ATTACHMENT_NAME.test(name)) return refuse(c, "picture-name-unusable", { name });
  const who = by(c, parts);
  if (who instanceof Response) return who;
  if (body.bytes.byteLength === 0) return refuse(c, "body-missing", { what: ATTACHMENT_TYPES.join(", ") });
  const picture = readPicture(body.bytes);
  if (!picture.ok) return refusePicture(c, picture);
  const { type } = picture;
  const hash = createHash("sha256").update(body.bytes).digest("hex");
  if (HASH.test(name) && name !== hash) return refuse(c, "picture-hash-differs", { expected: name, got: hash });
  const attached = await parts.store.attach(id, { name, hash, type, content: body.bytes }, who);
  if (attached.ok) return c.json(attached.attachment, attached.isNew ? 201 : 200);
  if (attached.why === "unknown") return refuse(c, "case-unknown", { id });
  if (attached.why === "put-away") return refuse(c, "case-put-away", { id, revision: attached.revision });
  return attached.why === "taken" ? refuse(c, "picture-name-taken", { name }) : refuse(c, "too-many-pictures", { id });
}

function refusePicture(c: Context, picture: Extract<ReadPicture, { readonly ok: false }>): Response {
  if (picture.why === "too-many-pixels") return refuse(c, "picture-too-large", { pixels: picture.pixels, limit: MAX_PICTURE_PIXELS });
  return picture.why === "unknown" ? refuse(c, "picture-kind-unknown", { allowed: ATTACHMENT_TYPES }) : refuse(c, "picture-damaged", {});
}

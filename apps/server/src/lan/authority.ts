import { webcrypto } from "node:crypto";
import { chmodSync, lstatSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
// The certificate library asks for this before it is loaded.
import "reflect-metadata";
import { StoreFault } from "@halfturn/store";
import {
  BasicConstraintsExtension,
  KeyUsageFlags,
  KeyUsagesExtension,
  PemConverter,
  SubjectKeyIdentifierExtension,
  X509CertificateGenerator,
} from "@peculiar/x509";

export const KEY_ALGORITHM = { name: "ECDSA", namedCurve: "P-256", hash: "SHA-256" };

const VALID_YEARS = 10;
const CERTIFICATE_FILE = "authority.crt";
const KEY_FILE = "authority.key";
const OWN_FOLDER = 0o700;

/** What signs the certificates of this one installation. */
export interface Authority {
  /** PEM; devices may be given it. */
  readonly certificate: string;
  readonly key: webcrypto.CryptoKey;
}

/**
 * The authority of an installation, made where there is none. The key stays in a file that only this user can read, and is never served. Links in its folder are
 * not followed: one could lead the key out, or have another file handed out as the certificate. Throws a StoreFault where the folder itself is none.
 */
export async function authorityOf(folder: string, now: Date): Promise<Authority> {
  const files = { certificate: join(folder, CERTIFICATE_FILE), key: join(folder, KEY_FILE) };
  makeFolder(folder);
  if (!isFile(files.certificate) || !isFile(files.key)) await makeAuthority(files, now);
  const [der] = PemConverter.decode(readFileSync(files.key, "utf8"));
  if (der === undefined) throw new Error(`${files.key} holds no key`);
  return {
    certificate: readFileSync(files.certificate, "utf8"),
    key: await webcrypto.subtle.importKey("pkcs8", der, KEY_ALGORITHM, false, ["sign"]),
  };
}

async function makeAuthority(files: { readonly certificate: string; readonly key: string }, now: Date): Promise<void> {
  const keys = await webcrypto.subtle.generateKey(KEY_ALGORITHM, true, ["sign", "verify"]);
  const until = new Date(now);
  until.setUTCFullYear(until.getUTCFullYear() + VALID_YEARS);
  const certificate = await X509CertificateGenerator.createSelfSigned({
    serialNumber: serialNumber(),
    name: `CN=Halfturn shop ${serialNumber().slice(0, 6)}`,
    notBefore: now,
    notAfter: until,
    keys,
    signingAlgorithm: KEY_ALGORITHM,
    extensions: [
      // It may sign servers, and no other authority.
      new BasicConstraintsExtension(true, 0, true),
      new KeyUsagesExtension(KeyUsageFlags.keyCertSign | KeyUsageFlags.cRLSign, true),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  const key = PemConverter.encode(await webcrypto.subtle.exportKey("pkcs8", keys.privateKey), "PRIVATE KEY");
  // The certificate comes last: once it is there, so is the key.
  writeWhole(files.key, key, 0o600);
  writeWhole(files.certificate, certificate.toString("pem"), 0o644);
}

const isFile = (path: string): boolean => lstatSync(path, { throwIfNoEntry: false })?.isFile() === true;

function makeFolder(folder: string): void {
  const found = lstatSync(folder, { throwIfNoEntry: false });
  if (found === undefined) mkdirSync(folder, { recursive: true, mode: OWN_FOLDER });
  else if (!found.isDirectory()) throw new StoreFault("not-a-folder", folder);
  else chmodSync(folder, OWN_FOLDER);
}

function writeWhole(file: string, content: string, mode: number): void {
  rmSync(`${file}.new`, { force: true });
  writeFileSync(`${file}.new`, content, { mode, flag: "wx" });
  renameSync(`${file}.new`, file);
}

/** 127 random bits, positive, as RFC 5280 (section 4.1.2.2) wants it. */
export const serialNumber = (): string => {
  const bytes = webcrypto.getRandomValues(new Uint8Array(16));
  bytes[0] = ((bytes[0] ?? 0) & 0x7f) | 0x40;
  return Buffer.from(bytes).toString("hex");
};

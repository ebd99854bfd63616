import { webcrypto } from "node:crypto";
import {
  AuthorityKeyIdentifierExtension,
  BasicConstraintsExtension,
  ExtendedKeyUsage,
  ExtendedKeyUsageExtension,
  KeyUsageFlags,
  KeyUsagesExtension,
  PemConverter,
  SubjectAlternativeNameExtension,
  X509Certificate,
  X509CertificateGenerator,
} from "@peculiar/x509";
import { type Authority, KEY_ALGORITHM, serialNumber } from "./authority.js";

/** Devices refuse certificates of servers that are valid for much longer than a year. */
const VALID_DAYS = 390;
/** The clocks of a phone and of this machine may differ. */
const BACKDATED_DAYS = 1;
const DAY_MS = 86_400_000;

export interface ServerCertificate {
  /** PEM: the server's certificate, then the authority's. */
  readonly chain: string;
  readonly key: string;
}

/** A certificate for this machine's addresses. It lives in memory only: each start makes a new one, for the addresses of that day. */
export async function serverCertificate(authority: Authority, addresses: readonly string[], now: Date): Promise<ServerCertificate> {
  const keys = await webcrypto.subtle.generateKey(KEY_ALGORITHM, true, ["sign", "verify"]);
  const issuer = new X509Certificate(authority.certificate);
  const certificate = await X509CertificateGenerator.create({
    serialNumber: serialNumber(),
    subject: "CN=Halfturn",
    issuer: issuer.subject,
    notBefore: new Date(now.getTime() - BACKDATED_DAYS * DAY_MS),
    notAfter: new Date(now.getTime() + VALID_DAYS * DAY_MS),
    publicKey: keys.publicKey,
    signingKey: authority.key,
    signingAlgorithm: KEY_ALGORITHM,
    extensions: [
      new BasicConstraintsExtension(false, undefined, true),
      new KeyUsagesExtension(KeyUsageFlags.digitalSignature, true),
      new ExtendedKeyUsageExtension([ExtendedKeyUsage.serverAuth]),
      new SubjectAlternativeNameExtension(addresses.map((value) => ({ type: "ip", value }))),
      await AuthorityKeyIdentifierExtension.create(issuer.publicKey),
    ],
  });
  const key = PemConverter.encode(await webcrypto.subtle.exportKey("pkcs8", keys.privateKey), "PRIVATE KEY");
  return { chain: `${certificate.toString("pem")}\n${authority.certificate}\n`, key };
}

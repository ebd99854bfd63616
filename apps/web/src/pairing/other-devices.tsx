import type { PairedDevice, PairingOffer } from "@halfturn/exchange";
import { useEffect, useState } from "react";
import { Button } from "../controls/button.js";
import { Icon } from "../controls/icon.js";
import { useWords } from "../words/use-words.js";
import styles from "./pair-page.module.css";
import { lanAddresses, offerPairing, pairedDevices, shutOut } from "./pairing-server.js";
import { pairingWords } from "./pairing-words.js";

/** On the shop's own screen: lets other devices in, and out again. Nothing elsewhere, or where no network is let in. */
export function OtherDevices() {
  const words = useWords(pairingWords);
  const [open, setOpen] = useState(false);
  const [devices, setDevices] = useState<readonly PairedDevice[]>([]);
  const [offer, setOffer] = useState<PairingOffer | null>(null);
  useEffect(() => {
    let wanted = true;
    void lanAddresses().then(async (addresses) => {
      const known = addresses.length > 0 ? await pairedDevices() : [];
      if (!wanted) return;
      setOpen(addresses.length > 0);
      setDevices(known);
    });
    return () => {
      wanted = false;
    };
  }, []);
  if (!open) return null;
  const remove = async (id: string) => {
    await shutOut(id);
    setDevices(await pairedDevices());
  };
  return (
    <section className={styles.offer}>
      <h3>{words.others}</h3>
      <p>{words.othersHelp}</p>
      <Button onPress={() => void offerPairing().then(setOffer)}>{words.show}</Button>
      {offer === null ? null : (
        <>
          <p>{words.scan}</p>
          <img className={styles.picture} alt={words.picture} src={`data:image/svg+xml,${encodeURIComponent(offer.qr)}`} />
          <p>{words.orType(offer.address.replace(/#.*$/, ""))}</p>
          <p className={styles.code}>{offer.code.replace(/^(\d{4})/, "$1 ")}</p>
          <p>{words.voidAfter}</p>
        </>
      )}
      {devices.length === 0 ? null : (
        <>
          <h4>{words.letInAlready}</h4>
          <ul className={styles.devices}>
            {devices.map(({ id, name }) => (
              <li key={id}>
                {name}
                <Button kind="quiet" label={words.remove(name)} onPress={() => void remove(id)}>
                  <Icon name="close" />
                </Button>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

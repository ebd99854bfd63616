import { type CaseStore, holdStore, openStore } from "@halfturn/store";
import { type ShopLocation, storeLocation } from "./shop-location.js";

/** A shop's data, held by this program alone where they lie in a folder. */
export interface OpenedShop {
  readonly store: CaseStore;
  readonly close: () => Promise<void>;
}

/** Throws a StoreFault; then nothing is open or held. */
export async function openShop(shop: ShopLocation): Promise<OpenedShop> {
  const location = storeLocation(shop);
  const letGo = await holdStore(location);
  try {
    const store = await openStore(location);
    return {
      store,
      close: async () => {
        await store.close();
        letGo();
      },
    };
  } catch (error) {
    letGo();
    throw error;
  }
}

import { deviceStore } from "./database.js";
import { newShelf } from "./shelf.js";

/** The cases of this device. */
export const shelf = newShelf({ store: deviceStore, now: Date.now });

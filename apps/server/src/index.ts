export { STOP_PATIENCE_MS } from "./http/stop-listening.js";
export { backUp, putBack, storeFaultOf } from "./shop-location.js";
export { type RunningServer, startServer } from "./start-server.js";

export { type RunningServer, type ServerSettings, startServer, storeFaultOf } from "./start-server.js";

import { expose } from "comlink";
import { listening } from "./listening.js";

expose(listening);

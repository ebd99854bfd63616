import { expose } from "comlink";
import { calculations } from "./calculations.js";

expose(calculations);

import { writeLongDrive } from "./long-drive.js";

// A program of its own, so that the memory told afterwards is that of listening.
const [, , folder = ""] = process.argv;
writeLongDrive(folder);

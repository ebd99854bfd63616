import type { Serving } from "../serving.js";

export const serving: Serving = {
  brief: "Serve the shop's cases and the app on this machine",
  description:
    "Opens the shop's database, makes it where there is none, and serves the app and its data to this machine until it is stopped with Ctrl-C. An empty shop gets demonstration cases unless --no-demo is given. --database keeps the cases in PostgreSQL instead of a file. Nobody but this machine is served unless --lan is given: then devices of the local network are let in over HTTPS, on the port after --port, each with a code of eight digits that this machine shows.\nExit 0: stopped by hand. 2: it could not start.",
  flags: {
    port: "Port to listen on; 0 takes any free one",
    data: "Folder of the shop's data",
    database: "Address of a PostgreSQL database, postgres://...",
    demo: "Put demonstration cases into an empty shop",
    web: "Folder of the built app",
    lan: "Let phones and tablets of the local network in, over HTTPS, each with a code",
  },
  open: (address) => `Halfturn is ready: ${address}`,
  dataIn: (place) => `Data: ${place}`,
  inNetwork: (addresses) => `In the local network: ${addresses}`,
  noNetwork: "This machine has no address in a local network; phones and tablets cannot reach it.",
  letIn: "Let a phone or tablet in from the app's settings on this machine.",
  stopWith: "Stop it with Ctrl-C.",
  demoMade: (count) => `The shop was empty: ${count} demonstration cases were put in.`,
  noWeb: (folder) =>
    `There is no built app in ${folder}; only the programming interface is served. As soon as the app is there (npm start builds it), it is served too.`,
  openFolder: (folder) =>
    `Other users of this machine may open ${folder}. The database in it was closed to them; close the folder too (chmod 700), for whoever may write in it may replace the data.`,
  finishing: (requests, seconds) =>
    `Finishing requests that were begun (${requests}), ${seconds}\u00a0s at the most. Ctrl-C again stops at once.`,
  stopped: "Stopped; everything is saved.",
  backup: {
    brief: "Write the shop's whole data into one file",
    description:
      "Writes cases, their history and pictures, as they are at one moment, into a new file, checks it, and only then gives it its name; the server may go on working meanwhile. --database backs up PostgreSQL. The file is a database of its own: halfturn restore puts it back.\nExit 0: written and checked. 2: not written.",
    output: "File to write; it must not be there yet",
    written: (file) => `Written and checked: ${file}`,
  },
  restore: {
    brief: "Put a backup into an empty shop",
    description:
      "Fills a shop in which nothing was ever saved with all that a backup holds. --data or --database says which shop.\nExit 0: restored. 2: refused, and nothing changed.",
    file: "Backup to restore",
    restored: (cases, place) => `Restored ${cases} cases into ${place}.`,
    notEmpty: (place) => `${place} holds cases already; a backup goes into an empty shop only. Name another folder with --data.`,
  },
  portTaken: (port) => `Port ${port} is taken by another program; perhaps Halfturn runs already. Give another with --port.`,
  portRefused: (port) => `Port ${port} may not be used by this user. Give one above 1023 with --port.`,
  cannotListen: (port, code) => `The server cannot listen on port ${port} (${code}).`,
  faults: {
    "database-unreachable": (place) => `No answer from the database ${place}. Start it, or check the address.`,
    "database-refused": (place) => `The database ${place} refused: check the user, the password and the database's name.`,
    "disk-full": (place) => `The disk is full: ${place} cannot be written. Free some space and start again.`,
    "read-only": (place) => `${place} cannot be written. Check its permissions, or whether the disk is mounted read-only.`,
    "database-busy": (place) => `Another program holds ${place}. Stop it and start again.`,
    "store-held": (place) =>
      `${place} is served by a Halfturn that runs already. Open the address that it printed, or stop it first; another shop needs a folder of its own (--data).`,
    "database-damaged": (place) => `${place} is damaged. Keep a copy of it, and put the latest backup in its place.`,
    "not-a-database": (place) => `${place} is no database of this program. Move it away, or name another folder with --data.`,
    "database-newer": (place) => `${place} was written by a newer version of this program. Update the program; nothing was changed.`,
    "folder-missing": (place) => `The folder for ${place} cannot be made: part of the path is missing or is a file.`,
    "not-a-folder": (place) => `${place} is a file, and the shop's data need a folder. Name one with --data.`,
    "not-a-file": (place) =>
      `${place} is a link or a folder where a file of the database should be. Name the folder it leads to with --data.`,
    "file-missing": (place) => `There is no file ${place}.`,
    "file-exists": (place) => `${place} is there already. Name another file.`,
    "no-permission": (place) => `${place} may not be opened by this user. Check the permissions of the file and its folder.`,
    "database-failed": (place) => `The database ${place} failed.`,
  },
};

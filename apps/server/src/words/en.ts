import type { ServerWords } from "./server-words.js";

const megabytes = (bytes: number): string => `${Math.floor(bytes / 1_000_000)}\u00a0MB`;

const megapixels = (pixels: number): string => String(Math.ceil(pixels / 1_000_000));

export const en: ServerWords = {
  refusals: {
    "not-found": ({ what }) => `There is nothing at ${what}.`,
    "app-missing": () => "The app has not been built yet. Build it with npm start; it is served here as soon as it is there.",
    "method-not-allowed": ({ method }) => `${method} is not possible here.`,
    "bad-request": ({ why }) => `The request cannot be read: ${why}.`,
    "case-unknown": ({ id }) => `There is no case ${id}.`,
    "case-put-away": ({ id, setAside }) =>
      `Case ${id} was put away. ${setAside === undefined ? "" : `What you saved is kept in its history as number ${setAside}. `}Bring it back to go on with it.`,
    "case-not-put-away": ({ id }) => `Case ${id} was not put away.`,
    "case-exists": ({ id }) => `There is a case ${id} already. Save it under its revision, or give the new case another id.`,
    "case-refused": ({ problems }) =>
      `The case was not saved: ${problems === 1 ? "one thing in it is" : `${problems} things in it are`} not right.`,
    "id-unusable": ({ id }) =>
      `"${id}" cannot be the id of a case here: use letters, digits, dots, hyphens and underscores, a letter or digit first.`,
    "id-differs": ({ address, document }) => `The document says it is case ${document}, the address says ${address}.`,
    "revision-unknown": ({ id, revision }) => `Case ${id} has no number ${revision} in its history.`,
    "tag-missing": ({ example }) => `Say which revision you changed: send the ETag of the case back as If-Match, such as ${example}.`,
    "tag-unreadable": ({ got }) => `If-Match ${got} is no revision; send the ETag of the case as it came.`,
    "case-changed": ({ id, revision }) => `Case ${id} has been changed since; it is at revision ${revision} now. Look at it again first.`,
    "body-too-large": ({ limit }) => `More than ${megabytes(limit)} are not taken here.`,
    "body-missing": ({ what }) => `Nothing was sent where ${what} was expected.`,
    "wrong-content": ({ expected, got }) => `Send ${expected}; this came as ${got === "" ? "nothing in particular" : got}.`,
    "device-name-unreadable": ({ limit }) => `The name of the device cannot be read: at most ${limit} characters, percent-encoded.`,
    "picture-unknown": ({ name }) => `The case has no picture ${name}.`,
    "picture-name-unusable": ({ name }) =>
      `"${name}" cannot be the name of a picture: use letters, digits, dots, hyphens and underscores, at most 80 of them.`,
    "picture-name-taken": ({ name }) => `The case has another picture named ${name}. Give this one another name.`,
    "picture-hash-differs": ({ expected, got }) =>
      `The picture's content gives ${got}, the address says ${expected}: it was damaged on its way. Send it again.`,
    "picture-kind-unknown": ({ allowed }) => `Only pictures are taken: ${allowed.join(", ")}.`,
    "picture-damaged": () => "The picture is cut short or damaged. Take it anew, or send it again.",
    "picture-too-large": ({ pixels, limit }) =>
      `The picture has ${megapixels(pixels)} million pixels, and ${megapixels(limit)} are taken at most. Send it smaller.`,
    "too-many-pictures": ({ id }) => `Case ${id} holds as many pictures as a case can. Take one away first.`,
    "nothing-to-report": ({ id }) => `Case ${id} has no gauging that gives a number yet, so there is nothing to report.`,
    "report-failed": ({ id }) => `The report of case ${id} could not be made. The case itself is unharmed.`,
    "host-refused": ({ host }) =>
      `This server does not answer to the name ${host}. Open it by the address that it printed when it started.`,
    "origin-refused": ({ origin }) => `A page from ${origin} may not use this server.`,
    "too-many-listeners": ({ limit }) => `More than ${limit} screens are listening already. Close some.`,
    "not-paired": () => "This device has not been let in yet. Ask for a code at the shop's own screen.",
    "home-only": () => "Only the shop's own screen can do this.",
    "no-lan": () => "The server serves this machine only. Start it with --lan to let phones and tablets in.",
    "code-refused": () => "This code lets nobody in: it was mistyped, used already, or is older than five minutes. Ask for a fresh one.",
    "too-many-tries": () => "Too many wrong codes. Wait ten minutes, then ask for a fresh one.",
    "device-unknown": ({ id }) => `There is no device ${id}.`,
    stopping: () => "The server is stopping. Nothing was changed; try again when it is back.",
    "server-fault": () => "The server made a mistake. Nothing was changed; the line in its log says more.",
  },
  faults: {
    "database-unreachable": "The database does not answer at the moment. Nothing was changed; try again in a while.",
    "database-refused": "The database refused the server. Nothing was changed; check the user, password and name in its address.",
    "disk-full": "The disk is full. Nothing was changed; free some space and save again.",
    "read-only": "The database cannot be written. Nothing was changed; check the folder's permissions.",
    "database-busy": "Another program holds the database. Nothing was changed; try again.",
    "store-held": "Another server serves this shop's data.",
    "database-damaged": "The database is damaged. Stop the server, keep a copy of its folder, and restore the latest backup.",
    "not-a-database": "The file is no database of this program.",
    "database-newer": "The database was written by a newer version of this program. Update the program; the database was left as it is.",
    "folder-missing": "The folder of the database is not there any more.",
    "not-a-folder": "A file is where the folder of the database should be.",
    "not-a-file": "A link or a folder is where the file of the database should be.",
    "file-missing":
      "The file of the database was deleted or replaced. Nothing was changed; put it back where it was, or start the server again.",
    "file-exists": "There is a file by that name already.",
    "no-permission": "The server may not open its database. Check the permissions of its folder.",
    "database-failed": "The database failed. Nothing was changed; the line in the server's log says more.",
  },
};

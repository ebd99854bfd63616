import type { ServerWords } from "./server-words.js";

const megabytes = (bytes: number): string => `${Math.floor(bytes / 1_000_000)}\u00a0MB`;

const megapixels = (pixels: number): string => String(Math.ceil(pixels / 1_000_000));

export const es: ServerWords = {
  refusals: {
    "not-found": ({ what }) => `No hay nada en ${what}.`,
    "app-missing": () => "La aplicación aún no está compilada. Compílela con npm start; se servirá aquí en cuanto esté.",
    "method-not-allowed": ({ method }) => `${method} no es posible aquí.`,
    "bad-request": ({ why }) => `No se entiende la petición: ${why}.`,
    "case-unknown": ({ id }) => `No existe el caso ${id}.`,
    "case-put-away": ({ id, setAside }) =>
      `El caso ${id} está archivado. ${setAside === undefined ? "" : `Lo que guardó queda en su historial con el número ${setAside}. `}Recupérelo para seguir con él.`,
    "case-not-put-away": ({ id }) => `El caso ${id} no está archivado.`,
    "case-exists": ({ id }) => `Ya existe un caso ${id}. Guárdelo con su revisión, o dé otro id al caso nuevo.`,
    "case-refused": ({ problems }) =>
      `No se guardó el caso: ${problems === 1 ? "hay un dato que no es correcto" : `hay ${problems} datos que no son correctos`}.`,
    "id-unusable": ({ id }) =>
      `"${id}" no puede ser aquí el id de un caso: use letras, cifras, puntos, guiones y guiones bajos, con una letra o cifra al principio.`,
    "id-differs": ({ address, document }) => `El documento dice que es el caso ${document}; la dirección dice ${address}.`,
    "revision-unknown": ({ id, revision }) => `El caso ${id} no tiene el número ${revision} en su historial.`,
    "tag-missing": ({ example }) => `Diga qué revisión cambió: devuelva el ETag del caso como If-Match, por ejemplo ${example}.`,
    "tag-unreadable": ({ got }) => `If-Match ${got} no es una revisión; envíe el ETag del caso tal como llegó.`,
    "case-changed": ({ id, revision }) =>
      `El caso ${id} ha cambiado mientras tanto; ahora va por la revisión ${revision}. Mírelo de nuevo primero.`,
    "body-too-large": ({ limit }) => `Aquí no se admiten más de ${megabytes(limit)}.`,
    "body-missing": ({ what }) => `No llegó nada donde se esperaba ${what}.`,
    "wrong-content": ({ expected, got }) => `Envíe ${expected}; esto llegó como ${got === "" ? "nada en particular" : got}.`,
    "device-name-unreadable": ({ limit }) =>
      `No se entiende el nombre del dispositivo: ${limit} caracteres como máximo, con codificación por ciento.`,
    "picture-unknown": ({ name }) => `El caso no tiene la foto ${name}.`,
    "picture-name-unusable": ({ name }) =>
      `"${name}" no puede ser el nombre de una foto: use letras, cifras, puntos, guiones y guiones bajos, 80 como máximo.`,
    "picture-name-taken": ({ name }) => `El caso tiene otra foto llamada ${name}. Dé otro nombre a esta.`,
    "picture-hash-differs": ({ expected, got }) =>
      `El contenido de la foto da ${got}; la dirección dice ${expected}: se dañó por el camino. Envíela otra vez.`,
    "picture-kind-unknown": ({ allowed }) => `Solo se admiten fotos: ${allowed.join(", ")}.`,
    "picture-damaged": () => "La foto está cortada o dañada. Hágala de nuevo, o envíela otra vez.",
    "picture-too-large": ({ pixels, limit }) =>
      `La foto tiene ${megapixels(pixels)} millones de píxeles, y se admiten ${megapixels(limit)} como máximo. Envíela más pequeña.`,
    "too-many-pictures": ({ id }) => `El caso ${id} tiene todas las fotos que puede tener un caso. Quite una primero.`,
    "nothing-to-report": ({ id }) => `El caso ${id} aún no tiene ninguna medición que dé un número, así que no hay nada que informar.`,
    "report-failed": ({ id }) => `No se pudo hacer el informe del caso ${id}. El caso no ha sufrido daño.`,
    "host-refused": ({ host }) => `Este servidor no responde al nombre ${host}. Ábralo con la dirección que mostró al arrancar.`,
    "origin-refused": ({ origin }) => `Una página de ${origin} no puede usar este servidor.`,
    "too-many-listeners": ({ limit }) => `Ya hay más de ${limit} pantallas a la escucha. Cierre alguna.`,
    "not-paired": () => "Este dispositivo aún no tiene acceso. Pida un código en la pantalla del taller.",
    "home-only": () => "Solo la pantalla del taller puede hacer esto.",
    "no-lan": () => "El servidor atiende solo a este equipo. Arránquelo con --lan para dar acceso a teléfonos y tabletas.",
    "code-refused": () => "Este código no da acceso: está mal escrito, ya se usó o tiene más de cinco minutos. Pida uno nuevo.",
    "too-many-tries": () => "Demasiados códigos equivocados. Espere diez minutos y pida uno nuevo.",
    "device-unknown": ({ id }) => `No existe el dispositivo ${id}.`,
    stopping: () => "El servidor se está parando. No se cambió nada; inténtelo cuando vuelva.",
    "server-fault": () => "El servidor cometió un error. No se cambió nada; la línea de su registro dice más.",
  },
  faults: {
    "database-unreachable": "La base de datos no responde en este momento. No se cambió nada; inténtelo dentro de un rato.",
    "database-refused":
      "La base de datos rechazó al servidor. No se cambió nada; revise el usuario, la contraseña y el nombre en su dirección.",
    "disk-full": "El disco está lleno. No se cambió nada; libere espacio y guarde otra vez.",
    "read-only": "No se puede escribir en la base de datos. No se cambió nada; revise los permisos de la carpeta.",
    "database-busy": "Otro programa tiene ocupada la base de datos. No se cambió nada; inténtelo otra vez.",
    "store-held": "Otro servidor sirve los datos de este taller.",
    "database-damaged":
      "La base de datos está dañada. Pare el servidor, guarde una copia de su carpeta y restaure la última copia de seguridad.",
    "not-a-database": "El archivo no es una base de datos de este programa.",
    "database-newer":
      "La base de datos la escribió una versión más nueva de este programa. Actualice el programa; la base de datos quedó como estaba.",
    "folder-missing": "La carpeta de la base de datos ya no está.",
    "not-a-folder": "Hay un archivo donde debería estar la carpeta de la base de datos.",
    "not-a-file": "Hay un enlace o una carpeta donde debería estar el archivo de la base de datos.",
    "file-missing":
      "El archivo de la base de datos fue borrado o sustituido. No se cambió nada; devuélvalo a su sitio, o arranque otra vez el servidor.",
    "file-exists": "Ya existe un archivo con ese nombre.",
    "no-permission": "El servidor no puede abrir su base de datos. Revise los permisos de su carpeta.",
    "database-failed": "La base de datos falló. No se cambió nada; la línea del registro del servidor dice más.",
  },
};

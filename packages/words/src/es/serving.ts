import type { Serving } from "../serving.js";

export const serving: Serving = {
  brief: "Servir los casos del taller y la aplicación en este equipo",
  description:
    "Abre la base de datos del taller, la crea si no existe y sirve la aplicación y sus datos a este equipo hasta que se para con Ctrl-C. Un taller vacío recibe casos de demostración, salvo con --no-demo. --database guarda los casos en PostgreSQL en lugar de un archivo. Solo se atiende a este equipo, salvo con --lan: entonces se da acceso por HTTPS a dispositivos de la red local, en el puerto siguiente a --port, cada uno con un código de ocho cifras que muestra este equipo.\nSalida 0: parado a mano. 2: no pudo arrancar.",
  flags: {
    port: "Puerto en el que escucha; 0 toma uno libre",
    data: "Carpeta de los datos del taller",
    database: "Dirección de una base de datos PostgreSQL, postgres://...",
    demo: "Poner casos de demostración en un taller vacío",
    web: "Carpeta de la aplicación compilada",
    lan: "Dar acceso por HTTPS a teléfonos y tabletas de la red local, cada uno con un código",
  },
  open: (address) => `Halfturn está listo: ${address}`,
  dataIn: (place) => `Datos: ${place}`,
  inNetwork: (addresses) => `En la red local: ${addresses}`,
  noNetwork: "Este equipo no tiene dirección en una red local; los teléfonos y tabletas no pueden llegar a él.",
  letIn: "Dé acceso a un teléfono o tableta desde los ajustes de la aplicación en este equipo.",
  stopWith: "Párelo con Ctrl-C.",
  demoMade: (count) => `El taller estaba vacío: se pusieron ${count} casos de demostración.`,
  noWeb: (folder) =>
    `No hay ninguna aplicación compilada en ${folder}; solo se sirve la interfaz de programación. En cuanto esté la aplicación (npm start la compila), se servirá también.`,
  openFolder: (folder) =>
    `Otros usuarios de este equipo pueden abrir ${folder}. La base de datos quedó cerrada para ellos; cierre también la carpeta (chmod 700), pues quien puede escribir en ella puede cambiar los datos.`,
  finishing: (requests, seconds) =>
    `Terminando peticiones empezadas (${requests}), ${seconds}\u00a0s como máximo. Ctrl-C otra vez lo para enseguida.`,
  stopped: "Parado; todo está guardado.",
  backup: {
    brief: "Escribir todos los datos del taller en un archivo",
    description:
      "Escribe los casos, su historial y sus fotos, tal como están en un momento, en un archivo nuevo, lo comprueba y solo entonces le da su nombre; el servidor puede seguir trabajando. --database copia PostgreSQL. El archivo es una base de datos por sí mismo: halfturn restore lo devuelve.\nSalida 0: escrito y comprobado. 2: no se escribió.",
    output: "Archivo que se escribe; no debe existir todavía",
    written: (file) => `Escrito y comprobado: ${file}`,
  },
  restore: {
    brief: "Poner una copia de seguridad en un taller vacío",
    description:
      "Llena un taller en el que nunca se guardó nada con todo lo que contiene una copia de seguridad. --data o --database dice qué taller.\nSalida 0: restaurado. 2: rechazado, sin cambiar nada.",
    file: "Copia de seguridad que se restaura",
    restored: (cases, place) => `Restaurados ${cases} casos en ${place}.`,
    notEmpty: (place) => `${place} ya tiene casos; una copia solo entra en un taller vacío. Indique otra carpeta con --data.`,
  },
  portTaken: (port) => `El puerto ${port} lo usa otro programa; quizá Halfturn ya está en marcha. Indique otro con --port.`,
  portRefused: (port) => `Este usuario no puede usar el puerto ${port}. Indique uno mayor que 1023 con --port.`,
  cannotListen: (port, code) => `El servidor no puede escuchar en el puerto ${port} (${code}).`,
  faults: {
    "database-unreachable": (place) => `La base de datos ${place} no responde. Arránquela o revise la dirección.`,
    "database-refused": (place) => `La base de datos ${place} rechazó la conexión: revise el usuario, la contraseña y el nombre.`,
    "disk-full": (place) => `El disco está lleno: no se puede escribir ${place}. Libere espacio y arranque otra vez.`,
    "read-only": (place) => `No se puede escribir ${place}. Revise sus permisos, o si el disco está montado solo para lectura.`,
    "database-busy": (place) => `Otro programa tiene ocupado ${place}. Párelo y arranque otra vez.`,
    "store-held": (place) =>
      `${place} ya lo sirve otro Halfturn en marcha. Abra la dirección que mostró, o párelo antes; otro taller necesita una carpeta propia (--data).`,
    "database-damaged": (place) => `${place} está dañado. Guarde una copia y ponga en su lugar la última copia de seguridad.`,
    "not-a-database": (place) => `${place} no es una base de datos de este programa. Muévalo, o indique otra carpeta con --data.`,
    "database-newer": (place) => `${place} lo escribió una versión más nueva de este programa. Actualice el programa; no se cambió nada.`,
    "folder-missing": (place) => `No se puede crear la carpeta de ${place}: falta una parte de la ruta o es un archivo.`,
    "not-a-folder": (place) => `${place} es un archivo, y los datos del taller necesitan una carpeta. Indique una con --data.`,
    "not-a-file": (place) =>
      `${place} es un enlace o una carpeta donde debería haber un archivo de la base de datos. Indique con --data la carpeta a la que lleva.`,
    "file-missing": (place) => `No existe el archivo ${place}.`,
    "file-exists": (place) => `${place} ya existe. Indique otro archivo.`,
    "no-permission": (place) => `Este usuario no puede abrir ${place}. Revise los permisos del archivo y de su carpeta.`,
    "database-failed": (place) => `La base de datos ${place} falló.`,
  },
};

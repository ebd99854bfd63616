import type { Cautions } from "../cautions.js";

export const cautions: Cautions = {
  defersTo:
    "El procedimiento del fabricante del vehículo, las normas locales y el ejercicio profesional autorizado van antes que todo lo escrito aquí.",
  texts: {
    "driver-never-operates":
      "En la prueba de carretera el conductor conduce. Otra persona maneja la herramienta, o esta graba sola y se lee con el vehículo parado.",
    "within-vehicle-limits":
      "Respete el límite de velocidad y los límites del propio vehículo; nunca gire un árbol más rápido de lo que el vehículo podría en carretera.",
    "some-wheels-raised":
      "Nunca haga girar las ruedas con unas motrices en el suelo y otras levantadas, salvo que el procedimiento del fabricante para este vehículo lo permita: puede saltar de los caballetes.",
    "open-differential":
      "Con un diferencial abierto, una rueda libre gira al doble de la velocidad indicada. Quédese muy por debajo de su velocidad nominal.",
    "stability-control":
      "Sobre caballetes, el control de estabilidad o de tracción puede frenar una rueda o guardar averías. Siga el procedimiento del fabricante para girar en el aire.",
    "nobody-near-turning-shaft": "Nadie debajo ni al lado de un árbol que gira, por ningún motivo.",
    "loose-items-at-speed":
      "Nada de ropa suelta, abrazaderas ni pesos de prueba que puedan salir despedidos; despeje el plano de giro del árbol antes de que gire.",
    "shaft-off-may-roll":
      "Antes de desconectar un árbol: suelo nivelado, una rueda de un eje retenido calzada por ambos lados, un freno de rueda aplicado y el árbol sujeto. La posición de aparcamiento o un freno en la transmisión pueden dejar de retener el vehículo.",
    "supported-vehicle":
      "Métase debajo solo cuando el vehículo esté sobre sus ruedas en un elevador adecuado, o sobre caballetes. Nunca con un gato como único apoyo.",
    "turning-by-hand":
      "Antes de girar un árbol a mano: motor parado y llave fuera, ruedas calzadas por ambos lados, y después punto muerto.",
    "hot-exhaust": "El escape junto al árbol sigue caliente mucho después de parar. Deje que se enfríe, o use guantes y manguitos.",
    "too-little-to-conclude": "Donde el veredicto sea incierto, mida de nuevo antes de pedir o montar nada.",
    "before-disconnecting":
      "Antes de desconectar un árbol: suelo nivelado, una rueda de un eje retenido calzada por ambos lados, un freno de rueda aplicado y el árbol sujeto. La posición de aparcamiento o un freno en la transmisión pueden dejar de retener el vehículo.",
    "mark-before-apart": "Marque cada brida, horquilla y estriado antes de desmontar, y compruebe el equilibrado tras cambiar una fase.",
    "brake-and-steering-lines":
      "Tras mover un eje, un apoyo o un soporte, revise latiguillos, tubos, cables, dirección y holguras en todo el recorrido antes de conducir.",
    "prove-from-slow":
      "Primera marcha tras una corrección: despacio, en lugar seguro; pare al instante ante un ruido nuevo y revise después el apriete de los tornillos.",
  },
};

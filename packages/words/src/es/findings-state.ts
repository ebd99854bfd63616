import type { FindingCatalogue } from "../catalogue.js";

/** How the vehicle stood, and what a person decided about it. */
export const stateFindings = {
  "gauging.not-at-ride-height": {
    title: "No estaba a altura de marcha",
    says: () =>
      "El vehículo no estaba a altura de marcha mientras se medía, así que el eje, y con él cada ángulo, no estaba donde va en carretera. No son ángulos de marcha.",
    doNext: () =>
      "Póngalo a altura de marcha: ruedas en el suelo o sobre un elevador de plataforma, asentado moviéndolo un poco adelante y atrás, con carga y presiones normales. Después mida todo otra vez.",
  },
  "gauging.wheels-hanging": {
    title: "Ruedas colgando",
    says: () => "Las ruedas colgaban mientras se medía: el eje había caído y girado su piñón. No son ángulos de marcha.",
    doNext: () =>
      "Ponga el vehículo sobre sus ruedas, sobre un elevador de plataforma, o su eje sobre caballetes a altura de marcha. Después mida todo otra vez.",
  },
  "gauging.laden": {
    title: "Medido con carga",
    says: () => "El vehículo se midió cargado; los ángulos valen solo para esa carga.",
    doNext: () => "Mida una vez más sin la carga, o anote en el informe con qué carga aparece la queja.",
  },
  "decision.stop-accepted": {
    title: "Hallazgo de parada aceptado",
    says: (of) => `Una persona aceptó el hallazgo de parada ${of.text("code")}; los números se muestran como si no existiera.`,
    doNext: () => "Lea cada número teniéndolo presente, y mida otra vez cuando se pueda corregir la causa.",
  },
} satisfies Partial<FindingCatalogue>;

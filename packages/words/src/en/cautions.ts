import type { Cautions } from "../cautions.js";

export const cautions: Cautions = {
  defersTo: "The vehicle maker's procedure, local rules and licensed practice go before anything written here.",
  texts: {
    "driver-never-operates":
      "On a road test the driver drives. A second person operates the tool, or it records by itself and is read after stopping.",
    "within-vehicle-limits":
      "Stay within the speed limit and within the vehicle's own limits; never run a shaft faster than the vehicle could on the road.",
    "some-wheels-raised":
      "Never run with some driven wheels on the ground and others raised unless the maker's procedure for this vehicle allows it: it can drive off the stands.",
    "open-differential": "With an open differential a wheel that is free turns at twice the speed shown. Keep well below its rated speed.",
    "stability-control":
      "On stands, stability and traction control may brake a wheel or store faults. Follow the maker's procedure for running raised.",
    "nobody-near-turning-shaft": "Nobody under or beside a turning shaft, for any reason.",
    "loose-items-at-speed":
      "No loose clothing, hose clamps or trial weights that could leave a turning shaft; clear the plane of the shaft before it turns.",
    "shaft-off-may-roll":
      "Before any shaft is disconnected: level ground, a wheel of a held axle chocked on both sides, a wheel brake applied, the shaft supported. Park or a brake on the transmission may no longer hold the vehicle.",
    "supported-vehicle":
      "Go under the vehicle only when it stands on its wheels on a lift rated for it, or on stands. Never under a jack alone.",
    "turning-by-hand": "Before a shaft is turned by hand: engine off and key out, wheels chocked on both sides, then neutral.",
    "hot-exhaust": "The exhaust beside the shaft stays hot long after stopping. Let it cool, or wear gloves and sleeves.",
    "too-little-to-conclude": "Where the verdict is uncertain, measure again before ordering or fitting anything.",
    "before-disconnecting":
      "Before any shaft is disconnected: level ground, a wheel of a held axle chocked on both sides, a wheel brake applied, the shaft supported. Park or a brake on the transmission may no longer hold the vehicle.",
    "mark-before-apart": "Match-mark every flange, yoke and spline before taking it apart, and check balance after a change of phasing.",
    "brake-and-steering-lines":
      "After moving an axle, mount or bearing, check brake hoses, lines, cables, steering and clearances through the whole travel before driving.",
    "prove-from-slow":
      "First run after a correction: slowly, in a safe place, stop at once at any new noise, and check the fasteners again afterwards.",
  },
};

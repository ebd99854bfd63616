/** The parts that turn on every vehicle, in power order from the wheel; what an engine drives besides goes by ids of its own. */
export const PART_NAMES: readonly string[] = ["wheel", "propeller-shaft", "transfer-shaft", "engine"];

/** Systems of units that people may read. Files and contracts stay metric: there the unit stands in the key. */
export const UNIT_SYSTEMS = ["metric", "us"] as const;

export type Units = (typeof UNIT_SYSTEMS)[number];

export const isUnits = (value: string): value is Units => (UNIT_SYSTEMS as readonly string[]).includes(value);

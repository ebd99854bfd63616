/** Metres as the millimetres that params of findings and reasons are written in. */
export const toMillimetres = (metres: number): number => metres * 1000;

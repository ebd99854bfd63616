import { normalDeviates, uniformDeviates } from "../../uncertainty/index.js";
import type { CorrectionModel, DrivelineModel } from "./correction-model.js";
import { copyQuantities, resetQuantities } from "./quantities.js";
import { type Quantities, writeRecord } from "./record.js";

/** Records of every driveline: [driveline], row 0 the best estimate, rows 1 to `draws` the draws. All candidates are judged on the same draws. */
export interface DrawnRecords {
  readonly draws: number;
  readonly records: readonly Float64Array[];
}

/**
 * Draws the errors of gauge, tape and stated angles and writes what the geometry then is (JCGM 101:2008, 7.3).
 * The same input and seed give the same draws; the order of sources is fixed.
 */
export function drawRecords(model: CorrectionModel, draws: number, seed: number): DrawnRecords {
  const uniform = uniformDeviates(seed);
  const normal = normalDeviates(uniform);
  const scratch = model.drivelines.map(({ nominal }) => copyQuantities(nominal));
  const records = model.drivelines.map(({ topology }) => new Float64Array((draws + 1) * topology.layout.stride));
  for (let row = 0; row <= draws; row++) {
    model.drivelines.forEach(({ nominal }, d) => {
      resetQuantities(scratch[d] as Quantities, nominal);
    });
    if (row > 0) {
      for (const source of model.sources) {
        const deviate = source.shape === "normal" ? normal() : Math.sqrt(3) * (2 * uniform() - 1);
        source.apply(scratch, deviate * source.u);
      }
    }
    writeRow(model, scratch, records, row);
  }
  return { draws, records };
}

/** The best estimate alone, one row. */
export function bestRecords(model: CorrectionModel): readonly Float64Array[] {
  const records = model.drivelines.map(({ topology }) => new Float64Array(topology.layout.stride));
  writeRow(
    model,
    model.drivelines.map(({ nominal }) => nominal),
    records,
    0,
  );
  return records;
}

/** The best estimate with one source moved by so many of its standard uncertainties. */
export function nudgedRecords(model: CorrectionModel, source: number, deviate: number): readonly Float64Array[] {
  const scratch = model.drivelines.map(({ nominal }) => copyQuantities(nominal));
  const { apply, u } = model.sources[source] as (typeof model.sources)[number];
  apply(scratch, deviate * u);
  const records = model.drivelines.map(({ topology }) => new Float64Array(topology.layout.stride));
  writeRow(model, scratch, records, 0);
  return records;
}

function writeRow(model: CorrectionModel, quantities: readonly Quantities[], records: readonly Float64Array[], row: number): void {
  model.drivelines.forEach(({ topology }: DrivelineModel, d) => {
    writeRecord(topology, quantities[d] as Quantities, records[d] as Float64Array, row * topology.layout.stride);
  });
}

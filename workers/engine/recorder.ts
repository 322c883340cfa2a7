import { molarMassGPerMol } from '../../shared/seawater/atomicMasses';
import { omegaRange } from '../../shared/processes/growthLaw';
import { commonRange } from '../../shared/seawater/outOfRange';
import { meqPerLPerDkh } from '../../shared/seawater/alkalinity';
import { indexOf } from '../../shared/species/block';
import { poolMassG, poolsWith } from '../../shared/species/species';
import { columns, flags, HIGHEST_PH_NBS, type ColumnId } from '../../shared/trace/columns';
import { createTrace, type Trace } from '../../shared/trace/trace';
import type { Simulation } from './simulation';

const SKELETON = poolsWith('skeleton').map((id) => ({ id, gPerMol: poolMassG(id) }));
/** Masses as tests print them. */
const MG_PER_MMOL = {
  Ca: molarMassGPerMol({ Ca: 1 }),
  Mg: molarMassGPerMol({ Mg: 1 }),
  NO3: molarMassGPerMol({ N: 1, O: 3 }),
  PO4: molarMassGPerMol({ P: 1, O: 4 }),
  NH3: molarMassGPerMol({ N: 1, H: 3 }),
};

const outside = (value: number, [low, high]: readonly [number, number]) =>
  value < low || value > high;

function flagBits({ view, plan }: Simulation): number {
  return (
    (view.phNbs > HIGHEST_PH_NBS ? flags.highPh.bit : 0) |
    (outside(view.tempC, commonRange.tempC) ? flags.temperature.bit : 0) |
    (outside(view.salinityPractical, commonRange.salinityPractical) ? flags.salinity.bit : 0) |
    (plan.growing && outside(view.omegaAragonite, omegaRange.omegaAragonite) ? flags.omega.bit : 0)
  );
}

/** How each column is read off the tank. */
const read: Record<ColumnId, (simulation: Simulation) => number> = {
  time_h: ({ timeH }) => timeH,
  alkalinity_dkh: ({ view }) => view.alkalinityDkh,
  ph_nbs: ({ view }) => view.phNbs,
  ph_total: ({ view }) => view.phTotal,
  calcium_mg_l: ({ view }) => view.mgPerL(indexOf.Ca, MG_PER_MMOL.Ca),
  magnesium_mg_l: ({ view }) => view.mgPerL(indexOf.Mg, MG_PER_MMOL.Mg),
  salinity_ppt: ({ view }) => view.salinityPractical,
  temperature_c: ({ view }) => view.tempC,
  omega_aragonite: ({ view }) => view.omegaAragonite,
  dic_umol_kg: ({ view }) => view.dicMolPerKg * 1e6,
  alkalinity_umol_kg: ({ view }) => view.alkalinityMolPerKg * 1e6,
  pco2_uatm: ({ view }) => view.pco2Uatm,
  room_pco2_uatm: ({ view }) => view.pco2AirUatm,
  volume_l: ({ view }) => view.volumeL,
  reservoir_l: ({ plan, reservoirKg }) => reservoirKg / plan.freshKgPerL,
  topoff_l: ({ plan, toppedOffKg }) => toppedOffKg / plan.freshKgPerL,
  nitrate_mg_l: ({ view }) => view.mgPerL(indexOf.NO3, MG_PER_MMOL.NO3),
  phosphate_mg_l: ({ view }) => view.mgPerL(indexOf.PO4, MG_PER_MMOL.PO4),
  ammonia_mg_l: ({ view }) => view.mgPerL(indexOf.TAN, MG_PER_MMOL.NH3),
  unionised_ammonia_mg_l: ({ view }) =>
    view.mgPerL(indexOf.TAN, MG_PER_MMOL.NH3) * view.unionisedAmmoniaFraction,
  oxygen_mg_l: ({ view }) => view.oxygenMgPerL,
  oxygen_saturation_pct: ({ view }) => view.oxygenSaturationPercent,
  skeleton_g: ({ books }) =>
    SKELETON.reduce((grams, { id, gPerMol }) => grams + books.pool(id) * gPerMol, 0),
  light: ({ view }) => view.light,
  flags: flagBits,
};

const readers = columns.map(({ id }) => read[id]);

/** Writes one row into a trace for every hour that it is shown. */
export class Recorder {
  private rows = 0;
  private readonly trace: Trace;
  private readonly values: Float64Array;
  private readonly dkhPerEq: number;

  constructor(
    private readonly simulation: Simulation,
    private readonly capacity: number,
  ) {
    const { plan } = simulation;
    this.trace = createTrace(capacity, plan.ledger);
    this.values = new Float64Array(this.trace.buffer);
    this.dkhPerEq = 1000 / meqPerLPerDkh / plan.start.volumeL;
  }

  record(): void {
    const { values, capacity, simulation, rows } = this;
    for (let c = 0; c < readers.length; c++) values[c * capacity + rows] = readers[c]!(simulation);
    const { ledgerEq } = simulation.books;
    for (let r = 0; r < ledgerEq.length; r++) {
      values[(readers.length + r) * capacity + rows] = ledgerEq[r]! * this.dkhPerEq;
    }
    this.rows++;
  }

  finished(): Trace {
    return { ...this.trace, rows: this.rows };
  }
}

import { setKNh4CleggWhitfield1995 } from './fits/ammonium';
import { setKsDickson1990 } from './fits/bisulfate';
import { setKbDickson1990 } from './fits/boricAcid';
import { kspCalciteMucci1983, setKspAragoniteMucci1983 } from './fits/calciumCarbonate';
import { setK1K2Lueker2000 } from './fits/carbonicAcid';
import { setK0Weiss1974 } from './fits/co2Solubility';
import { setKfPerezFraga1987 } from './fits/hydrogenFluoride';
import { setKpYaoMillero1995 } from './fits/phosphoricAcid';
import { setFhTakahashi1982 } from './fits/protonActivity';
import { setKwMillero1995 } from './fits/water';
import { WaterTerms } from './fits/waterTerms';
import { totalFluorideMolPerKg, totalSulfateMolPerKg } from './totals';

/** K (not pK) per kg of seawater; total scale except ks. One object is refilled, never replaced. */
export class SeawaterConstants {
  tempC = NaN;
  salinityPractical = NaN;
  k0 = 0.5; // mol/kg/atm
  k1 = 0.5;
  k2 = 0.5;
  kb = 0.5;
  kw = 0.5;
  kf = 0.5;
  ks = 0.5; // free scale
  kp1 = 0.5;
  kp2 = 0.5;
  kp3 = 0.5;
  kNh4 = 0.5;
  kspAragonite = 0.5;
  hTotalPerHFree = 1.5;
  hSwsPerHTotal = 1.5;
  fH = 0.5;
  /** What a probe set in NBS buffers reads below pH on the total scale. */
  phTotalOverPhNbs = 0.5;
  fco2PerPco2 = 0.5;
  private readonly terms = new WaterTerms();

  set(tempC: number, salinityPractical: number): void {
    if (tempC === this.tempC && salinityPractical === this.salinityPractical) return;
    const w = this.terms;
    w.set(tempC, salinityPractical);
    setK0Weiss1974(this, w);
    setK1K2Lueker2000(this, w);
    setKbDickson1990(this, w);
    setKsDickson1990(this, w);
    setKfPerezFraga1987(this, w);
    // The scales are those of sea salt in its usual proportions, also where a tank's sulfate strays.
    this.hTotalPerHFree = 1 + totalSulfateMolPerKg(salinityPractical) / this.ks;
    this.hSwsPerHTotal = 1 + totalFluorideMolPerKg(salinityPractical) / this.kf;
    setKwMillero1995(this, w); // it and the next one convert with hSwsPerHTotal
    setKpYaoMillero1995(this, w);
    setKNh4CleggWhitfield1995(this, w);
    setKspAragoniteMucci1983(this, w);
    setFhTakahashi1982(this, w);
    this.phTotalOverPhNbs = Math.log10(this.hSwsPerHTotal * this.fH);
    this.tempC = tempC;
    this.salinityPractical = salinityPractical;
  }

  /** Worked out when asked for: the engine never asks. */
  get kspCalcite(): number {
    return kspCalciteMucci1983(this.terms);
  }
}

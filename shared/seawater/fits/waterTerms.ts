/** Powers and logarithms of temperature and salinity that the fits share, computed once. */
export class WaterTerms {
  kelvin = 298.15;
  perKelvin = 1 / 298.15;
  lnKelvin = Math.log(298.15);
  salinity = 35.5;
  sqrtSalinity = Math.sqrt(35.5);
  ionicStrengthMolPerKgH2O = 0.5;
  sqrtIonicStrength = Math.sqrt(0.5);
  /** kg of water per kg of seawater: turns a molal constant into one per kg of seawater. */
  waterFraction = 0.965;

  set(tempC: number, salinityPractical: number): void {
    const kelvin = tempC + 273.15;
    this.kelvin = kelvin;
    this.perKelvin = 1 / kelvin;
    this.lnKelvin = Math.log(kelvin);
    this.salinity = salinityPractical;
    this.sqrtSalinity = Math.sqrt(salinityPractical);
    // Ionic strength and water fraction: dickson2007 (chapter 5).
    const ionic = (19.924 * salinityPractical) / (1000 - 1.005 * salinityPractical);
    this.ionicStrengthMolPerKgH2O = ionic;
    this.sqrtIonicStrength = Math.sqrt(ionic);
    this.waterFraction = 1 - 0.001005 * salinityPractical;
  }
}

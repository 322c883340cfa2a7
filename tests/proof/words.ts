/** What the page of proof says in words; every number on it comes from a run. */
export const opening = `# Should you trust this?

As far as this page shows, and no farther. Everything below was made by \`npm run proof\`, which runs every check at full length and writes this page; no figure is typed. A row that says **missed** is a failure, and \`npm run proof\` then ends with an error.`;

export const conventions = `## Conventions

- **Alkalinity is never written by hand.** The state is moles of ions; total alkalinity follows from them (Wolf-Gladrow et al. 2007: Ca, Mg, Sr +2; Na, K, total ammonia +1; Cl, nitrate, total phosphate −1; sulfate −2; inorganic carbon and borate 0). What the tracked ions leave open to the measured dKH is set once per water as an untracked charge, and is then diluted like any salt.
- **Salinity** is practical, from the mass of salt over the mass of solution; every dissolved mass counts as salt, carbon dioxide too.
- **dKH and mg/L** are per litre at the tank's temperature, with EOS-80 density; µmol/kg is per kilogram of seawater. 1 dKH = 0.35665 meq/L. Evaporation typed in litres is fresh water.
- **pH** is computed on the total scale and shown on the NBS scale after Takahashi et al. 1982; a real probe is within 0.1 of it.
- **Use typed in dKH/day** is a fixed total from the start volume, all losses included (food and nitrate too), met on the first day; it does not grow with a later volume. Saturation law 1 (gentle): 15 % of the start's rate for each unit of Ω; law 2: in step with Ω − 1. Growth is none below Ω 1 (in a tank whose measured day dips lower: below what that day had) and flat above 6 (common practice).
- **Light** is a square wave, or a trapezium when dawn and dusk are given; the mean of the day stays what was typed.
- **Gas exchange** is kLa·K0·(pCO2 of moist room air − pCO2 of the water), per kilogram.
- **Top-off answers the level**: what a dosing pump adds is not topped off again.
- **Nitrogen** enters as food.
- **A trial starts** on the settled daily cycle of its first day, unless it starts from the room's air or a measured pH.`;

export const notChecked = `## What is not checked

- **No tank.** Nothing here has been held against a measured series of a real tank: the figures are of other calculations, of printed values and of arithmetic.
- **The biology.** The growth laws, the light to dark ratio, photosynthesis, food and the filter's rate are common practice or from memory, and yours to change. That the engine follows them is checked; that corals do is not.
- **Precipitation** of calcium carbonate is an illustration: its rate laws are checked, its moment nobody can predict, so a time to danger is told without it. Brucite is not modelled.
- **pH above 9.5** is outside the constants' range; it is shown as >9.5, and libraries differ there.
- **Strength of limewater**: handbooks disagree by 5 to 15 %; it is an input.
- **kLa**: nobody knows theirs. It is an input, or solved from pH by day and night.
- **From memory** in the tables means that the value was not read in its source for this project.`;

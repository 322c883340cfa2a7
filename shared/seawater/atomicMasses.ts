// wieser2006: standard atomic weights 2005, in g/mol.
export const atomicMassGPerMol = {
  H: 1.00794,
  B: 10.811,
  C: 12.0107,
  N: 14.0067,
  O: 15.9994,
  Na: 22.98977,
  Mg: 24.305,
  P: 30.973762,
  S: 32.065,
  Cl: 35.453,
  K: 39.0983,
  Ca: 40.078,
  Sr: 87.62,
} as const;

export type Element = keyof typeof atomicMassGPerMol;

export function molarMassGPerMol(composition: Partial<Record<Element, number>>): number {
  let mass = 0;
  for (const [element, count] of Object.entries(composition))
    mass += atomicMassGPerMol[element as Element] * count;
  return mass;
}

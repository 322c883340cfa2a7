export const en = {
  putRight: (fault: string) => `noticed and put right: ${fault}`,
  passesAbove: (name: string, limit: string) => `${name} passes ${limit}`,
  fallsBelow: (name: string, limit: string) => `${name} falls below ${limit}`,
  backBelow: (name: string, limit: string) => `${name} back below ${limit}`,
  backAbove: (name: string, limit: string) => `${name} back above ${limit}`,
  runsDry: (ph: string) => `reservoir empty, pH ${ph}`,
  runsOver: 'the sump runs over onto the floor',
  chalk: (dkh: string) => `chalk falls out and takes ${dkh} dKH along (illustration)`,
  allInside: (ph: string) => `Everything stays inside your limits; pH peaks at ${ph}.`,
  phInsideBut: (ph: string, sides: string) => `pH peaks at ${ph}, inside your limit; but ${sides}.`,
  goesAbove: (name: string, limit: string) => `${name} goes above ${limit}`,
  goesBelow: (name: string, limit: string) => `${name} goes below ${limit}`,
  phBelowHarm: (ph: string, harm: string, high: string, span: string) =>
    `pH peaks at ${ph}; it stays below ${harm}, and is above your ${high} for ${span}.`,
  phBelowHarmNotBack: (ph: string, harm: string, high: string, span: string) =>
    `pH peaks at ${ph}; it stays below ${harm}, and is above your ${high} for ${span}, not back within the drill.`,
  phAboveHarm: (ph: string, harm: string, harmSpan: string, high: string, span: string) =>
    `pH peaks at ${ph}; it is above ${harm} for ${harmSpan}, and above your ${high} for ${span}.`,
  phAboveHarmNotBack: (ph: string, harm: string, harmSpan: string, high: string, span: string) =>
    `pH peaks at ${ph}; it is above ${harm} for ${harmSpan}, and above your ${high} for ${span}, not back within the drill.`,
};

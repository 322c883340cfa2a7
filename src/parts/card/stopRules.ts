import type { Scenario } from '../../../shared/scenario/schema';

/** When to stop, drawn from this tank's own limits and no others. */
export function stopRules({ limits, topOff, dosers }: Scenario): string[] {
  const { alkalinityLowDkh: low, alkalinityHighDkh: high } = limits;
  return [
    `A test above ${high} dKH, or pH above ${limits.phHighNbs}: stop all dosing, test again within the hour.`,
    `A test below ${low} dKH: test again; if it stands, work out a correction. Never make up for it in one go.`,
    `Alkalinity moved more than ${limits.alkalinityChangeDkhPerDay} dKH in a day: stop, find out why.`,
    `Salinity outside ${limits.salinityLowPractical}–${limits.salinityHighPractical} ppt: check the top-off before anything else.`,
    ...(topOff.additive === 'none'
      ? []
      : ['Top-off runs on, or the sump stands too high: unplug it with dry hands, then measure.']),
    ...(dosers.length > 0 ? ['One of two bottles empty: stop the other too.'] : []),
  ];
}

/** What can hurt somebody in this plan. */
export function cardCautions({ topOff, dosers }: Scenario): string[] {
  const lime = topOff.additive === 'calciumHydroxide';
  const soda = dosers.some(({ recipe }) =>
    recipe.some(({ additive }) => additive === 'sodiumCarbonate'),
  );
  return [
    ...(lime
      ? [
          'Calcium hydroxide: serious eye damage, irritates skin and airways (H315, H318, H335). Gloves and goggles; in the eye, rinse for many minutes and get medical help at once.',
        ]
      : []),
    ...(soda
      ? ['Soda ash irritates the eyes (H319): goggles. Calcium chloride grows hot as it dissolves.']
      : []),
    'Mains near salt water: residual-current device, drip loop on every cable.',
    'Follow each additive’s safety data sheet; out of children’s reach. Sick animals: ask an aquatic vet.',
  ];
}

import type { Check } from '../../../reference/check';
import { mol, onlyTank } from '../onlyTank';

const volumeL = 200;
const startDkh = 8;
const reactor = { dripLPerH: 4, effluentDkh: 25, effluentPhNbs: 6.6 };

export const reactorTank = () =>
  onlyTank({ days: 60, tank: { volumeL, alkalinityDkh: startDkh }, calciumReactor: reactor });

/** What drips in at a fixed strength, and out as the tank is, fills the gap exponentially. */
const filled = (hours: number) => 1 - Math.exp((-reactor.dripLPerH * hours) / volumeL);
const filledDkh = (hours: number) => startDkh + (reactor.effluentDkh - startDkh) * filled(hours);

export function calciumReactorChecks(): Check[] {
  const tank = reactorTank();
  const origin = {
    source: 'drip × (effluent − tank), solved by hand',
    howVerified: 'computed',
  } as const;
  const startDic = mol(tank, 'DIC');
  let dicAfterDay = NaN;
  const rises = [1, 6, 24, 100].map((hours): Check => {
    tank.advanceTo(hours);
    if (hours === 24) dicAfterDay = mol(tank, 'DIC');
    return {
      ...origin,
      id: `reactor/${hours} h`,
      quantity: 'alkalinity that the reactor has brought the tank to',
      ...{ expected: filledDkh(hours), got: tank.view.alkalinityDkh },
      ...{ tolerance: 0.01, unit: 'dKH' },
    };
  });
  tank.advanceTo(1400);
  return [
    ...rises,
    {
      ...origin,
      id: 'reactor/carbon',
      quantity: 'share of the carbon still to come that has come in a day',
      ...{ expected: filled(24), got: (dicAfterDay - startDic) / (mol(tank, 'DIC') - startDic) },
      ...{ tolerance: 0.001, unit: '×' },
    },
    {
      ...origin,
      id: 'reactor/in the end',
      quantity: 'pH (NBS) of a closed tank that has become effluent',
      ...{ expected: reactor.effluentPhNbs, got: tank.view.phNbs, tolerance: 0.001, unit: 'pH' },
    },
  ];
}

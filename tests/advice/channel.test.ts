import { expect, it } from 'vitest';
import { channelOf } from '../../workers/studies/turn/channel';
import { quietTank } from '../runs/quietTank';

it('one more channel is turned no farther than thrice what corals may take, whatever a pump can give', () => {
  const [one] = channelOf(quietTank({ corals: { useDkhPerDay: 1 } }), 'sodiumCarbonate', undefined);
  // Of 1.5 dKH in 300 L, by 1.890 g for 1 dKH in 100 L (additives.csv), 25.5 g: at 100 g/L 255 mL.
  expect(one!.most).toBeCloseTo(255, 0);
});

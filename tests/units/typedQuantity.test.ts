import { expect, it } from 'vitest';
import { quantityAt } from '../../shared/scenario/fields';
import { usualDisplay } from '../../shared/units/display';
import { readTyped } from '../../src/fields/typedQuantity';

const { title, quantity } = quantityAt(['tank', 'volumeL']);
const gallons = { ...usualDisplay, volume: 'US gal', decimal: 'comma' } as const;

it('takes a bare number in the unit on the screen, and any unit that is named', async () => {
  expect(await readTyped('300', title, quantity, usualDisplay)).toEqual({ ok: true, value: 300 });
  // 1 US gal = 3.785411784 L (NIST SP 811).
  const tenGallons = await readTyped('10,0', title, quantity, gallons);
  expect(tenGallons.ok && tenGallons.value).toBeCloseTo(37.85411784, 6);
  expect(await readTyped('300 L', title, quantity, gallons)).toEqual({ ok: true, value: 300 });
});

it('says what is outside in the reader’s own unit and sign', async () => {
  const refused = await readTyped('0,1', title, quantity, gallons);
  expect(refused).toEqual({
    ok: false,
    message: expect.stringMatching(/^Net water volume: 0,1 is outside [\d,]+ to [\d,]+ US gal\.$/),
  });
});

import { expect, it, vi } from 'vitest';
import { saltMixes } from '../../shared/water/saltMixes';

it('names both families of salt in German, and leaves a mix of the keeper’s own as it is called', async () => {
  const { de: plans } = await import('../../shared/words/plans/de');
  vi.doMock('../../shared/words/spoken', () => ({ spoken: { plans } }));
  const { saltName } = await import('../../src/say/plan/saltName');
  expect(saltMixes.map(({ name }) => saltName(name))).toEqual([
    'Mischung mit wenig Alkalinität',
    'Mischung mit viel Alkalinität',
  ]);
  expect(saltName('Ebbing Quay’s own')).toBe('Ebbing Quay’s own');
});

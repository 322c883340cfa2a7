import { describe, expect, it } from 'vitest';
import { patience } from '../laws/size';
import { misses } from '../reference/check';
import { saltBalanceChecks } from './checks/saltBalance';
import { changes, waterChangeLimitChecks } from './checks/waterChangeLimit';

describe('water changes alone', () => {
  it(
    'follow the geometric series of the use that was booked, and reach its limit',
    () => {
      expect(waterChangeLimitChecks()).toHaveLength(6);
      expect(misses(waterChangeLimitChecks())).toEqual([]);
    },
    patience,
  );

  it(
    'end above the limit of the typed use, since corals use less at a lower saturation',
    () => {
      const { end, limitOfTypedUse } = changes({ percent: 15, everyDays: 7, useDkhPerDay: 0.05 });
      expect(end - limitOfTypedUse).toBeGreaterThan(0.1);
      expect(end - limitOfTypedUse).toBeLessThan(0.4);
    },
    patience,
  );
});

describe('salt', () => {
  it(
    'stays when water evaporates, and is what a two-part pair leaves',
    () => {
      expect(saltBalanceChecks()).toHaveLength(5);
      expect(misses(saltBalanceChecks())).toEqual([]);
    },
    patience,
  );
});

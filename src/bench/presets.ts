import type { FieldPath } from '../../shared/scenario/fields';
import { saltMixes } from '../../shared/water/saltMixes';
import { say } from '../../shared/words/settings';

/** Several values that go together under one word. */
export interface Presets {
  readonly label: string;
  readonly options: readonly {
    readonly name: string;
    readonly values: readonly (readonly [FieldPath, unknown])[];
  }[];
}

export const saltFamilies: Presets = {
  label: say.salt,
  options: saltMixes.map((salt, i) => ({
    name: [say.lowSalt, say.highSalt][i]!,
    values: Object.entries(salt).map(
      ([field, value]) => [['waterChanges', 'salt', field], value] as const,
    ),
  })),
};

export const roomAir: Presets = {
  label: say.roomAir,
  options: (
    [
      [say.open, 450],
      [say.normal, 700],
      [say.shut, 1200],
    ] as const
  ).map(([name, ppm]) => ({
    name,
    values: [
      [['room', 'co2Ppm'], ppm],
      [['room', 'co2PpmByHour'], []],
    ] as const,
  })),
};

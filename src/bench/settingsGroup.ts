import type { FieldPath } from '../../shared/scenario/fields';
import type { Presets } from './presets';

/** Fields that stand under one heading. */
export interface SettingsGroup {
  readonly title: string;
  readonly open: boolean;
  readonly fields: readonly FieldPath[];
  readonly presets?: readonly Presets[];
  readonly editor?: 'dosers' | 'additions' | 'gas' | 'start';
}

/** The fields of one part of a scenario. */
export const fieldsOf = (part: string, ...names: string[]): FieldPath[] =>
  names.map((name) => [part, name]);

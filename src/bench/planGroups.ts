import { say } from '../../shared/words/settings';
import { saltFamilies } from './presets';
import { fieldsOf, type SettingsGroup } from './settingsGroup';

/** What a plan is made of: beside the verdict. */
export const planGroups: readonly SettingsGroup[] = [
  {
    title: say.topOff,
    open: true,
    fields: fieldsOf(
      'topOff',
      'additive',
      'gramsPerL',
      'reservoirL',
      'pumpLPerH',
      'refillEveryDays',
    ),
  },
  {
    title: say.tank,
    open: true,
    fields: [
      ['corals', 'useDkhPerDay'],
      ['evaporation', 'litresPerDay'],
      ['tank', 'alkalinityDkh'],
      ['tank', 'volumeL'],
    ],
  },
  {
    title: say.waterChanges,
    open: true,
    fields: fieldsOf('waterChanges', 'percent', 'everyDays'),
    presets: [saltFamilies],
  },
  { title: say.dosers, open: true, fields: [], editor: 'dosers' },
  { title: say.length, open: true, fields: [['days']] },
];

import { say } from '../../shared/words/settings';
import type { FieldPath } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';
import { saltMixes } from '../../shared/water/saltMixes';

/** Several values that go together under one word. */
export interface Presets {
  readonly label: string;
  readonly options: readonly {
    readonly name: string;
    readonly values: readonly (readonly [FieldPath, unknown])[];
  }[];
}

export interface SettingsGroup {
  readonly title: string;
  readonly open: boolean;
  readonly fields: readonly FieldPath[];
  readonly presets?: readonly Presets[];
  readonly editor?: 'dosers' | 'additions' | 'gas' | 'start';
}

const in_ = (part: string, ...names: string[]): FieldPath[] => names.map((name) => [part, name]);

const saltFamilies: Presets = {
  label: say.salt,
  options: saltMixes.map((salt, i) => ({
    name: [say.lowSalt, say.highSalt][i]!,
    values: Object.entries(salt).map(
      ([field, value]) => [['waterChanges', 'salt', field], value] as const,
    ),
  })),
};

const roomAir: Presets = {
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

/** What a plan is made of: beside the verdict. */
export const planGroups: readonly SettingsGroup[] = [
  {
    title: say.topOff,
    open: true,
    fields: in_('topOff', 'additive', 'gramsPerL', 'reservoirL', 'pumpLPerH', 'refillEveryDays'),
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
    fields: in_('waterChanges', 'percent', 'everyDays'),
    presets: [saltFamilies],
  },
  { title: say.dosers, open: true, fields: [], editor: 'dosers' },
  { title: say.length, open: true, fields: [['days']] },
];

/** Everything else, folded. */
export const detailGroups: readonly SettingsGroup[] = [
  {
    title: say.air,
    open: false,
    fields: [
      ['room', 'co2Ppm'],
      ['room', 'co2Factor'],
      ['lights', 'onHour'],
      ['lights', 'hours'],
      ['lights', 'rampHours'],
      ['gas', 'aeration'],
      ['gas', 'outsideAirPercent'],
      ['gas', 'lightsOnPhNbs'],
      ['gas', 'lightsOffPhNbs'],
      ['gas', 'kLaPerH'],
      ['gas', 'enhancement'],
      ['photosynthesis', 'grossMmolPerLPerDay'],
      ['photosynthesis', 'respiredShare'],
      ['photosynthesis', 'refugiumMmolPerLPerDay'],
      ['photosynthesis', 'refugiumFromHour'],
      ['photosynthesis', 'refugiumHours'],
    ],
    presets: [roomAir],
    editor: 'gas',
  },
  {
    title: say.moreTopOff,
    open: false,
    fields: in_(
      'topOff',
      'refillHour',
      'deadBandL',
      'settledG',
      'saturationPercent',
      'lossPercentPerDay',
      'secondSwitchL',
      'runLimitMinPerH',
      'runLimitMinPerDay',
      'siphonLPerH',
    ),
  },
  {
    title: say.evaporation,
    open: false,
    fields: in_('evaporation', 'mode', 'surfaceM2', 'airTempC', 'humidityPercent', 'factor'),
  },
  {
    title: say.newWater,
    open: false,
    fields: [
      ...in_(
        'waterChanges',
        'hour',
        'continuousLPerDay',
        'newWater',
        'freshPhNbs',
        'newWaterTempC',
        'salinityPractical',
      ),
      ...['alkalinityDkh', 'calciumMgPerL', 'magnesiumMgPerL', 'atSalinityPractical'].map(
        (name): FieldPath => ['waterChanges', 'salt', name],
      ),
    ],
  },
  {
    title: say.corals,
    open: false,
    fields: in_(
      'corals',
      'measuredAs',
      'rateMmolPerM2PerDay',
      'areaM2',
      'lightDarkRatio',
      'omegaLaw',
      'temperatureLaw',
      'growthPercentPerDay',
      'growthShape',
      'skeletonMgPerCa',
      'skeletonSrPerCa',
    ),
  },
  {
    title: say.filter,
    open: false,
    fields: in_('filter', 'nitrificationPerH', 'denitrificationPerDay', 'oxidationPerH'),
  },
  {
    title: say.calciumReactor,
    open: false,
    fields: in_('calciumReactor', 'dripLPerH', 'effluentDkh', 'effluentPhNbs'),
  },
  {
    title: say.losses,
    open: false,
    fields: in_('outflows', 'skimmingLPerDay', 'leakLPerDay', 'spareL'),
  },
  {
    title: say.precipitation,
    open: false,
    fields: in_(
      'precipitation',
      'mode',
      'law',
      'aboveOmega',
      'wettedM2Per100L',
      'crystalM2PerG',
      'seedG',
    ),
  },
  {
    title: say.rest,
    open: false,
    fields: in_(
      'tank',
      'calciumMgPerL',
      'magnesiumMgPerL',
      'salinityPractical',
      'tempC',
      'nitrateMgPerL',
      'phosphateMgPerL',
      'ammoniaMgPerL',
    ),
  },
  {
    title: say.food,
    open: false,
    fields: in_(
      'food',
      'gramsPerDay',
      'carbonPercent',
      'nitrogenPercent',
      'phosphorusPercent',
      'respiredPercent',
      'releasedPercent',
    ),
  },
  {
    title: say.oxygen,
    open: false,
    fields: in_(
      'oxygen',
      'stocking',
      'respirationMmolPerLPerDay',
      'respirationPerTenDegrees',
      'perCarbon',
    ),
  },
  { title: say.additions, open: false, fields: [], editor: 'additions' },
  {
    title: say.start,
    open: false,
    fields: in_('start', 'carbon', 'phNbs', 'omegaReference', 'clockHour'),
    editor: 'start',
  },
  {
    title: say.limits,
    open: false,
    fields: in_(
      'limits',
      'alkalinityLowDkh',
      'alkalinityHighDkh',
      'alkalinityHarmDkh',
      'alkalinityChangeDkhPerDay',
      'phLowNbs',
      'phHighNbs',
      'phHarmNbs',
      'phChangePerH',
      'oxygenLowMgPerL',
      'oxygenHarmMgPerL',
      'unionisedAmmoniaMgPerL',
      'omegaHigh',
      'calciumLowMgPerL',
      'calciumHighMgPerL',
      'magnesiumLowMgPerL',
      'magnesiumHighMgPerL',
      'salinityLowPractical',
      'salinityHighPractical',
      'tempLowC',
      'tempHighC',
      'tempHarmC',
    ),
  },
];

/** Fields that only mean something together with another choice. */
const usefulWhen: Readonly<Record<string, (scenario: Scenario) => boolean>> = {
  'topOff.gramsPerL': ({ topOff }) => topOff.additive !== 'none',
  'topOff.settledG': ({ topOff }) => topOff.additive === 'calciumHydroxide',
  'topOff.saturationPercent': ({ topOff }) => topOff.additive === 'calciumHydroxide',
  'corals.useDkhPerDay': ({ corals }) => corals.measuredAs === 'use',
  'corals.rateMmolPerM2PerDay': ({ corals }) => corals.measuredAs === 'area',
  'corals.areaM2': ({ corals }) => corals.measuredAs === 'area',
  'evaporation.litresPerDay': ({ evaporation }) => evaporation.mode === 'fixed',
  'evaporation.airTempC': ({ evaporation, faults }) =>
    evaporation.mode === 'byAir' || faults.some(({ kind }) => kind === 'powerCut'),
  'evaporation.humidityPercent': ({ evaporation }) => evaporation.mode === 'byAir',
  'waterChanges.freshPhNbs': ({ waterChanges }) => waterChanges.newWater === 'fresh',
  'topOff.lossPercentPerDay': ({ topOff }) => topOff.additive === 'calciumHydroxide',
  'gas.outsideAirPercent': ({ gas }) => gas.aeration === 'skimmerOutsideAir',
  'start.phNbs': ({ start }) => start.carbon === 'measuredPh',
};

export const isUseful = (path: FieldPath, scenario: Scenario): boolean =>
  usefulWhen[path.join('.')]?.(scenario) ?? true;

type Tree = Record<string, unknown>;

/** Turns a file of one version into the next; what it means must stay what it meant. */
type Migration = (file: Tree) => Tree;

const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A part with values that the older version implied, unless the file says otherwise. */
const withImplied = (file: Tree, part: string, implied: Tree): Tree => ({
  ...file,
  [part]: isTree(file[part]) ? { ...implied, ...file[part] } : (file[part] ?? implied),
});

/** Version 2: pumps have schedules; skeletons hold magnesium and strontium, limewater ages. */
const from1to2: Migration = (file) => {
  const dosers = Array.isArray(file.dosers)
    ? file.dosers.map((doser: unknown) => {
        if (!isTree(doser)) return doser;
        const { fromHour = 0, hours = 24, ...rest } = doser;
        return { ...rest, schedule: { way: 'spread', fromHour, hours } };
      })
    : file.dosers;
  const implied: [string, Tree][] = [
    ['corals', { skeletonMgPerCa: 0, skeletonSrPerCa: 0, temperatureLaw: 'none' }],
    ['gas', { enhancement: 'off' }],
    ['topOff', { lossPercentPerDay: 0 }],
    ['precipitation', { mode: 'off' }],
  ];
  const moved = dosers === undefined ? file : { ...file, dosers };
  return implied.reduce((tree, [part, values]) => withImplied(tree, part, values), moved);
};

/** What version 2 implied where its file said nothing. */
const impliedBefore2 = {
  tank: { volumeL: 0 },
  corals: { useDkhPerDay: 0.8 },
  filter: { nitrificationPerH: 0.5 },
  food: {
    gramsPerDay: 1,
    carbonPercent: 40,
    nitrogenPercent: 6,
    phosphorusPercent: 1,
    releasedPercent: 20,
  },
};
const G_PER_MOL = { N: 14.007, P: 30.974 };
const DKH_PER_EQ_PER_L = 2803.87;

/** The numbers of one part of a file, with what was implied. */
function numbersOf<Part extends keyof typeof impliedBefore2>(file: Tree, part: Part) {
  const own = file[part];
  const given = isTree(own) ? own : {};
  const implied: Record<string, number> = impliedBefore2[part];
  return Object.fromEntries(
    Object.entries(implied).map(([key, usual]) => {
      const value = given[key];
      return [key, typeof value === 'number' ? value : usual];
    }),
  ) as (typeof impliedBefore2)[Part];
}

/**
 * Until version 2 food and its nitrate came on top of the use that was typed: the same tank, with
 * everything included. Phosphate takes one equivalent a mole; ammonia, given evenly through the
 * first day and oxidised at k an hour, brings one and takes two.
 */
function useOfEverything(file: Tree): Tree {
  const { volumeL } = numbersOf(file, 'tank');
  const { useDkhPerDay } = numbersOf(file, 'corals');
  const { nitrificationPerH: k } = numbersOf(file, 'filter');
  const food = numbersOf(file, 'food');
  const own = isTree(file.corals) ? file.corals : {};
  if (!(volumeL > 0) || food.carbonPercent === 0) return own;
  const released = (food.gramsPerDay * food.releasedPercent) / 1e4;
  const oxidised = k > 0 ? 1 - (1 - Math.exp(-24 * k)) / (24 * k) : 0;
  const eqPerDay =
    released *
    ((food.nitrogenPercent / G_PER_MOL.N) * (2 * oxidised - 1) +
      food.phosphorusPercent / G_PER_MOL.P);
  const all = useDkhPerDay + (eqPerDay / volumeL) * DKH_PER_EQ_PER_L;
  return { ...own, useDkhPerDay: Math.max(0, Math.min(8, all)) };
}

/** CO2 above this is no place to work in (5,000 ppm, occupational limit): no response blows in more. */
const MOST_CO2_PPM = 5000;
/** The growth law is flat above this: it never referred to more. */
const HIGHEST_OMEGA = 6;

/** Version 3: other usual limits and salts; chalk is off unless asked for; the reactor is named as keepers do. */
const from2to3: Migration = ({ mediaReactor, ...file }) => {
  const capped = (key: string, most: number) => (part: unknown) =>
    isTree(part) && typeof part[key] === 'number' && part[key] > most
      ? { ...part, [key]: most }
      : part;
  const implied: [string, Tree][] = [
    ['precipitation', { mode: 'guarded' }],
    ['gas', { outsideAirPercent: 0 }],
    ['limits', { alkalinityLowDkh: 8, alkalinityHighDkh: 12, unionisedAmmoniaMgPerL: 0.05 }],
  ];
  const changes = isTree(file.waterChanges) ? file.waterChanges : {};
  const moved: Tree = {
    ...file,
    corals: useOfEverything(file),
    waterChanges: isTree(changes.salt ?? {})
      ? withImplied(changes, 'salt', { alkalinityDkh: 8 })
      : changes,
    ...(mediaReactor !== undefined && { calciumReactor: mediaReactor }),
    ...(Array.isArray(file.responses) && {
      responses: file.responses.map(capped('co2Ppm', MOST_CO2_PPM)),
    }),
    ...(isTree(file.start) && { start: capped('omegaReference', HIGHEST_OMEGA)(file.start) }),
  };
  return implied.reduce((tree, [part, values]) => withImplied(tree, part, values), moved);
};

/** Version 4: what nobody typed is not fed; until then a gram a day went into any tank. */
const from3to4: Migration = (file) => withImplied(file, 'food', { gramsPerDay: 1 });

/** Version 5: a fault's field says what it means, the hours until it is over. */
const from4to5: Migration = (file) => ({
  ...file,
  ...(Array.isArray(file.faults) && { faults: file.faults.map(endsAfter) }),
});

function endsAfter(fault: unknown): unknown {
  if (!isTree(fault) || !('hours' in fault)) return fault;
  const { hours: endsAfterH, ...rest } = fault;
  return { ...rest, endsAfterH };
}

/** Each under the version it starts from; a gap is a mistake, and a file in it is refused. */
const migrations: ReadonlyMap<number, Migration> = new Map([
  [1, from1to2],
  [2, from2to3],
  [3, from3to4],
  [4, from4to5],
]);

export type Migrated =
  { readonly ok: true; readonly file: Tree } | { readonly ok: false; readonly stuckAt: number };

/** Brings a file of an older version up to the wanted one, step by step. */
export function migrate(file: Tree, version: number, wanted: number): Migrated {
  let tree = file;
  for (let at = version; at < wanted; at++) {
    const migration = migrations.get(at);
    if (!migration) return { ok: false, stuckAt: at };
    tree = { ...migration(tree), version: at + 1 };
  }
  return { ok: true, file: tree };
}

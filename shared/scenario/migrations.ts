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

/** Each under the version it starts from; a gap is a mistake, and a file in it is refused. */
const migrations: ReadonlyMap<number, Migration> = new Map([[1, from1to2]]);

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

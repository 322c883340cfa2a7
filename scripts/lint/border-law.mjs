/** @typedef {'value' | 'type' | 'url'} Manner */
/** @typedef {{ from: string, to: string, manner: Manner }} Crossing */

const door = /^workers\/[^/]+\.worker(\.ts)?$/;

/** The rooms of src/ that every page stands on, and that know no page. */
const floors = [
  ...['address', 'ask', 'charts', 'drawing', 'fields', 'files'],
  ...['glossary', 'parts', 'pictures', 'say', 'store'],
];

/** @param {string} path */
const roomOf = (path) => path.split('/')[1] ?? '';

/** The rooms of shared/ whose things have names, and whose parsers complain. */
const rooms = [
  ...['devices', 'events', 'faults', 'processes', 'species', 'trace'],
  ...['log', 'scenario', 'units', 'words'],
];

/** @param {string} path */
const namesThings = (path) => rooms.includes(roomOf(path));

/** @param {string} path */
const isFloor = (path) => floors.includes(roomOf(path));

/** @type {Record<string, (crossing: Crossing) => string | undefined>} */
const laws = {
  shared({ from, to }) {
    const name = packageName(to);
    if (to.startsWith('shared/words/') && !namesThings(from))
      return `${roomOf(from)}/ holds facts: what is read of them is written in src/say/.`;
    if (to.startsWith('shared/') || name === 'valibot') return;
    if (name === 'mathjs') {
      if (from.startsWith('shared/units/')) return;
      return 'In shared/, only shared/units/ may import mathjs.';
    }
    return 'shared/ may import only from shared/, and the package valibot.';
  },

  workers({ to }) {
    const name = packageName(to);
    if (name?.startsWith('node:'))
      return 'A worker runs in the browser: it may not import from Node.';
    if (to.startsWith('shared/words/'))
      return 'workers/ give ids and numbers: what is read is written in src/say/.';
    if (name || to.startsWith('shared/') || to.startsWith('workers/')) return;
    return 'workers/ may import only from workers/, shared/ and packages.';
  },

  src({ from, to, manner }) {
    const name = packageName(to);
    // A command runs in Node, in one realm with the engine: nothing crosses to a worker.
    if (from.startsWith('src/cli/')) return;
    if (to.startsWith('src/cli/')) return 'src/cli/ runs in Node: no page may import from it.';
    if (to.startsWith('workers/')) {
      if (!from.startsWith('src/ask/')) return 'Only src/ask/ may reach workers/.';
      if (door.test(to) && manner !== 'value') return;
      return 'src/ask/ reaches workers only by `import type` from, or `new URL` of, workers/*.worker.ts.';
    }
    if (isFloor(from) && to.startsWith('src/') && !isFloor(to)) {
      return `src/${roomOf(from)}/ stands below the pages: it may not import from src/${roomOf(to)}/.`;
    }
    if (name?.startsWith('node:')) return 'src/ runs in the browser: it may not import from Node.';
    if (name || /^(src|shared|scenarios)\//.test(to)) return;
    return 'src/ may import only from src/, shared/, scenarios/ and packages.';
  },
};

/** @param {string} to */
const packageName = (to) => (to.startsWith('package:') ? to.slice('package:'.length) : undefined);

/**
 * Says why the file `from` may not reach `to` (a path from the root, or package:NAME), if so.
 * @param {Crossing} crossing
 */
export const refusal = (crossing) => laws[crossing.from.split('/')[0] ?? '']?.(crossing);

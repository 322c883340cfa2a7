import { firstLoad } from './scripts/firstLoad.mjs';

export default [
  {
    name: 'first load: page and workers, with what they import statically',
    path: firstLoad(),
    gzip: true,
    limit: '120 kB',
  },
];

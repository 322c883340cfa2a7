import { firstLoad } from './scripts/firstLoad.mjs';

export default [
  {
    name: 'first load: the page, what it imports at once, and its workers',
    path: firstLoad(),
    gzip: true,
    limit: '150 kB',
  },
];

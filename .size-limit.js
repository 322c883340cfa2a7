import { firstLoad } from './scripts/firstLoad.mjs';

export default [
  {
    name: 'first load: page and workers, with what they import statically',
    path: firstLoad(),
    gzip: true,
    limit: '120 kB',
  },
  { name: 'typefaces', path: 'dist/assets/*.woff2', gzip: false, limit: '60 kB' },
];

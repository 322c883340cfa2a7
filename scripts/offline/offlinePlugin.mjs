import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, posix, relative, resolve, sep } from 'node:path';

const source = new URL('./serviceWorker.js', import.meta.url);

/** @param {string} folder */
const filesIn = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)))
    .map((path) => path.split(sep).join(posix.sep))
    .filter((path) => path !== 'serviceWorker.js')
    .sort();

/**
 * Writes the service worker beside the built page, with the names of all files it must keep. Its
 * version is a hash of their contents: another build, another version, the same build, the same.
 * @returns {import('vite').Plugin}
 */
export function offlinePlugin() {
  let folder = '';
  return {
    name: 'offline',
    apply: 'build',
    configResolved(config) {
      folder = resolve(config.root, config.build.outDir);
    },
    closeBundle: {
      sequential: true,
      order: 'post',
      handler() {
        const files = filesIn(folder);
        const hash = createHash('sha256');
        for (const file of files) hash.update(file).update(readFileSync(join(folder, file)));
        const kept = ['./', ...files.filter((file) => file !== 'index.html')];
        const text = readFileSync(source, 'utf8')
          .replace("['%FILES%']", JSON.stringify(kept))
          .replace('%VERSION%', hash.digest('hex').slice(0, 12));
        writeFileSync(join(folder, 'serviceWorker.js'), text);
      },
    },
  };
}

import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromiumPath } from './chromium.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));

/** @param {string} sentence */
const say = (sentence) => process.stderr.write(`${sentence}\n`);

/** @param {string} sentence @returns {never} */
function stop(sentence) {
  say(sentence);
  process.exit(1);
}

/** @param {string} command @param {string[]} args */
function succeeds(command, args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync(command, args, { stdio: ['ignore', 2, 2], env }).status === 0;
}

function installPackages() {
  const marker = 'node_modules/.installed-lock-sha256';
  const wanted = createHash('sha256').update(readFileSync('package-lock.json')).digest('hex');
  if (existsSync(marker) && readFileSync(marker, 'utf8') === wanted) return;
  say('Installing the packages in package-lock.json …');
  // NODE_ENV=production would leave out what builds the page.
  if (!succeeds('npm', ['ci', '--include=dev'])) stop('npm ci failed: see its message above.');
  writeFileSync(marker, wanted);
}

function installChromium() {
  if (chromiumPath()) return;
  const named = process.env.CHROMIUM;
  if (named) stop(`CHROMIUM is set to ${named}, but there is no such file.`);
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    say('Installing Chromium for the page tests …');
    const installed =
      succeeds('apt-get', ['update']) && succeeds('apt-get', ['install', '-y', 'chromium']);
    if (installed && chromiumPath()) return;
  }
  stop(
    'The page tests need Chromium or Chrome. Install one (Debian: sudo apt-get install chromium), ' +
      'or set CHROMIUM to the path of its program.',
  );
}

installPackages();
if (process.argv.includes('--tests')) installChromium();

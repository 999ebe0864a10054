/**
 * Everything, from a fresh clone: installs what the tests need, runs every suite, adds up what they say of themselves
 * and ends with `N passed, N failed`. A suite that ran nothing is a failure, whatever it exits with.
 * `npm test -- unit database` runs only the suites named.
 */
import { closeSync, existsSync, mkdirSync, openSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { check } from './check.mjs';
import { CannotGoOn, ensureBuilt, ensureInstalled, orSay, root, run } from './setup.mjs';

const results = join(root, 'test-results');

const chromium = () =>
  ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync);
const postgres = () =>
  existsSync('/usr/lib/postgresql') &&
  readdirSync('/usr/lib/postgresql').some(
    (v) => Number(v) >= 15 && existsSync(`/usr/lib/postgresql/${v}/bin/postgres`),
  );
const poppler = () => existsSync('/usr/bin/pdftotext');

/** The browser, the database server and the PDF reader that the tests drive: Debian's, installed when we may. */
async function ensurePrograms() {
  const missing = [
    ['chromium', chromium()],
    ['postgresql', postgres()],
    ['poppler-utils', poppler()],
  ]
    .filter(([, there]) => !there)
    .map(([name]) => name);
  if (missing.length === 0) return;
  const how = `apt-get install ${missing.join(' ')}`;
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) {
    throw new CannotGoOn(
      `The tests drive ${missing.join(', ')}, which this machine does not have. As root on Debian: ${how}`,
    );
  }
  console.log(`Installing for the tests: ${missing.join(', ')} …`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  await run('apt-get', ['update', '-qq'], { env, stdio: ['ignore', 'ignore', 'inherit'] });
  const code = await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...missing], {
    env,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (code !== 0 || !chromium() || !postgres() || !poppler()) {
    throw new CannotGoOn(`Installing ${missing.join(', ')} failed (see above). By hand: ${how}`);
  }
}

async function vitest(name, args, options) {
  const file = join(results, `${name}.json`);
  const code = await run(
    'npx',
    [
      '--no-install',
      'vitest',
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
      ...args,
    ],
    options,
  );
  if (!existsSync(file)) return { passed: 0, failed: 1 };
  const got = JSON.parse(readFileSync(file, 'utf8'));
  const failedFiles = got.testResults.filter(
    (f) => f.status === 'failed' && f.assertionResults.every((a) => a.status !== 'failed'),
  ).length;
  const failed = got.numFailedTests + failedFiles;
  return {
    passed: got.numPassedTests,
    failed: code !== 0 && failed === 0 ? 1 : failed,
    skipped: got.numPendingTests + got.numTodoTests,
  };
}

/** The projects whose tests were run, of a suite of the runner's report and those in it. */
const projectsIn = (suite) => [
  ...suite.specs.flatMap((s) => s.tests.filter((t) => t.results.length > 0).map((t) => t.projectName)),
  ...(suite.suites ?? []).flatMap(projectsIn),
];

async function browser() {
  const file = join(results, 'browser.json');
  const code = await run(
    'npx',
    ['--no-install', 'playwright', 'test', '-c', 'test/browser/playwright.config.ts'],
    {
      env: { ...process.env, PLAYWRIGHT_JSON_OUTPUT_NAME: file, FQ_CHROMIUM: chromium() },
    },
  );
  if (!existsSync(file)) return { passed: 0, failed: 1 };
  const { stats, suites: files } = JSON.parse(readFileSync(file, 'utf8'));
  const ran = new Set(files.flatMap(projectsIn));
  for (const project of ['embedded', 'postgresql'])
    if (!ran.has(project)) {
      console.log(`browser: nothing ran on the store ${project}, which is a failure`);
      stats.unexpected += 1;
    }
  const failed = stats.unexpected + stats.flaky;
  return { passed: stats.expected, failed: code !== 0 && failed === 0 ? 1 : failed, skipped: stats.skipped };
}

async function examples() {
  const file = join(results, 'examples.json');
  const code = await run('npx', ['--no-install', 'tsx', 'examples/run.ts', '--json', file]);
  if (!existsSync(file)) return { passed: 0, failed: 1 };
  const got = JSON.parse(readFileSync(file, 'utf8'));
  return { passed: got.passed, failed: code !== 0 && got.failed === 0 ? 1 : got.failed };
}

/** Runs a command with its output kept, to be shown when it has ended. */
function keptOutput() {
  const file = join(results, 'beside.txt');
  mkdirSync(results, { recursive: true });
  const to = openSync(file, 'w');
  return {
    options: { stdio: ['ignore', to, to] },
    show: (name) => {
      closeSync(to);
      console.log(`\n── ${name} ──\n${readFileSync(file, 'utf8')}`);
    },
  };
}

const suites = {
  check: async () => check(),
  unit: () => vitest('unit', ['--project', 'unit']),
  examples,
  database: () => vitest('database', ['--project', 'database']),
  durability: (options) => vitest('durability', ['--project', 'durability'], options),
  browser,
};

orSay(
  (async () => {
    const wanted = process.argv.slice(2).length ? process.argv.slice(2) : Object.keys(suites);
    for (const name of wanted) {
      if (!suites[name])
        throw new CannotGoOn(`npm test: found "${name}", allowed ${Object.keys(suites).join(', ')}`);
    }
    await ensureInstalled(console.log);
    if (wanted.some((n) => n !== 'check' && n !== 'examples')) {
      await ensurePrograms();
      await ensureBuilt(['web', 'server', 'cli'], console.log);
    }
    rmSync(results, { recursive: true, force: true });
    mkdirSync(results, { recursive: true });
    const lines = [];
    let passed = 0;
    let failed = 0;
    const suite = async (name, options) => {
      const began = Date.now();
      const got = await suites[name](options);
      if (got.passed + got.failed === 0) {
        console.log(`${name}: ran nothing, which is a failure`);
        got.failed = 1;
      }
      passed += got.passed;
      failed += got.failed;
      lines.push(
        `${name.padEnd(11)} ${String(got.passed).padStart(5)} passed ${String(got.failed).padStart(4)} failed${got.skipped ? ` ${got.skipped} skipped` : ''}  ${Math.round((Date.now() - began) / 1000)} s`,
      );
    };
    const shown = async (name) => {
      console.log(`\n── ${name} ──`);
      await suite(name);
    };
    // What durability does is mostly waiting: it runs beside the others, and says what it has to say when it is done.
    let aside;
    const beside = wanted.includes('durability') && wanted.length > 1 ? keptOutput() : undefined;
    for (const name of wanted) {
      if (name === 'durability' && beside !== undefined) continue;
      if (name === 'browser') await aside;
      await shown(name);
      if (name === 'unit' || (aside === undefined && name === wanted[0] && !wanted.includes('unit')))
        aside = beside === undefined ? undefined : suite('durability', beside.options);
    }
    await aside;
    beside?.show('durability');
    console.log(`\n${lines.join('\n')}\n`);
    console.log(`${passed} passed, ${failed} failed`);
    process.exitCode = failed === 0 ? 0 : 1;
  })(),
);

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { bundleBudgets } from '../.scripts/budget.mjs';
import { makeBundle, root, shipped } from '../.scripts/bundles.mjs';
import { readPng } from '../.scripts/png.mjs';
import { files, read, readJson } from './tree';

interface Manifest {
  readonly engines: { readonly vscode: string };
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
  readonly contributes: {
    readonly commands: readonly { readonly command: string; readonly category: string }[];
    readonly menus: { readonly commandPalette: readonly { command: string; when: string }[] };
    readonly languages: readonly { readonly firstLine: string; readonly configuration: string }[];
    readonly grammars: readonly { readonly path: string; readonly scopeName: string }[];
  };
}

const manifest = readJson<Manifest>('package.json');

describe('package.json', () => {
  test('pins every package exactly', () => {
    const pins = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(pins.length).toBeGreaterThan(0);
    expect(pins.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  test('is checked against the oldest editor that it promises to run in', () => {
    expect(manifest.engines.vscode).toBe(`^${manifest.devDependencies['@types/vscode']}`);
  });

  test('names files that are there', () => {
    const { languages, grammars } = manifest.contributes;
    const named = [
      ...languages.map((each) => each.configuration),
      ...grammars.map((each) => each.path),
    ];
    const missing = named.filter((file) => !files().includes(file.replace('./', '')));
    expect(missing).toEqual([]);
    for (const { path, scopeName } of grammars)
      expect(readJson<{ scopeName: string }>(path).scopeName).toBe(scopeName);
  });

  /** They begin something, and need nothing that is open. */
  const ANYWHERE = ['perpend.new', 'perpend.examples', 'perpend.firm', 'perpend.start'];
  /** In a job or its preview, over the jobs of a folder, on a page of ours, once we run; or by other ways than the palette. */
  const GUARD =
    /^(\(?editorLangId == perpend\b|perpend\.active \|\| editorLangId == perpend$|workspaceFolderCount > 0|resourceScheme == perpend-|false$)/;

  test('offers each command in one category, and only where it can run', () => {
    const { commands, menus } = manifest.contributes;
    const guarded = new Map(menus.commandPalette.map(({ command, when }) => [command, when]));
    for (const { command, category } of commands) {
      expect(category).toBe('Perpend');
      if (!ANYWHERE.includes(command)) expect(guarded.get(command)).toMatch(GUARD);
    }
  });

  test('knows a job by its first line', () => {
    const firstLine = new RegExp(manifest.contributes.languages[0]!.firstLine);
    expect(['perpend 1', '  perpend   12  # edition'].every((line) => firstLine.test(line))).toBe(
      true,
    );
    expect(['perpendicular 1', 'perpend', '# perpend 1'].some((line) => firstLine.test(line))).toBe(
      false,
    );
  });
});

/** docs: api/references/extension-manifest.md: `icon` at least 128 x 128, 256 x 256 for Retina; at most five keywords. */
test('what a market place shows is there', () => {
  const {
    icon,
    keywords,
    files: listed,
  } = readJson<{
    icon: string;
    keywords: readonly string[];
    files: readonly string[];
  }>('package.json');
  const { width, height } = readPng(readFileSync(path.join(root, icon)));
  expect([width, height]).toEqual([256, 256]);
  expect(listed).toContain(icon);
  expect(keywords.length).toBeLessThanOrEqual(5);
});

test('each bundle that ships has a size that it may not outgrow', () => {
  const scripts = shipped.map(({ out }) => out).filter((out) => /js$/.test(out));
  expect(Object.keys(bundleBudgets).sort()).toEqual(scripts.sort());
});

test('the lock file records no download address', () => {
  const lock = read('package-lock.json');
  expect(lock).toContain('"integrity"');
  expect(lock).not.toMatch(/"resolved":/);
});

/** Ways out of the process: the network, other programs, code from text. */
const WAYS_OUT =
  /^(?:node:)?(http2?|https|net|tls|dgram|dns|child_process|cluster|worker_threads|vm)$/;

/**
 * What comes along in the bundles without being asked for by our own files: `vscode-jsonrpc` can also talk
 * through sockets and named pipes, `vscode-languageclient` must start the server as a process, and
 * `vscode-languageserver` has helpers that ask npm and yarn for their folders. Of these only the start of
 * our own server is used, over the channel that Node opens to a child. The command line starts one other program, git,
 * without a shell, where somebody asks for a revision of it.
 */
const EXCEPTIONS: Readonly<Record<string, readonly string[]>> = {
  'dist/client.cjs': ['vscode-jsonrpc: net', 'vscode-languageclient: child_process'],
  'dist/server.cjs': ['vscode-jsonrpc: net', 'vscode-languageserver: child_process'],
  'dist/perpend.cjs': ['server/cli/git/run.ts: child_process'],
  'dist/papers.cjs': [],
  'dist/engine.cjs': [],
  'dist/web/client.js': [],
  'dist/web/server.js': [],
  'dist/preview/preview.js': [],
  'dist/preview/preview.css': [],
};

/** What a page or a worker could reach out by, or make code of text by. */
const BY_NAME =
  /\b(fetch|XMLHttpRequest|WebSocket|WebTransport|EventSource|sendBeacon|RTCPeerConnection|importScripts)\b|\b(eval|Function)\(/g;

/** The worker runs the writers of PDF, which come with the extension and reach it as bytes, from a blob of them. */
const NAMED: Readonly<Record<string, readonly string[]>> = {
  'dist/web/server.js': ['importScripts'],
};

function packageOf(input: string): string {
  return /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(input)?.[1] ?? input;
}

describe('what ships', () => {
  test.each(shipped)('$out has no way out but the named ones', async (bundle) => {
    const out = `.cache/ways-out/${bundle.out}`;
    const { inputs } = await makeBundle({ ...bundle, out }, { apart: true });
    const found = Object.entries(inputs).flatMap(([input, { imports }]) =>
      imports.flatMap(({ path, external }) =>
        external && WAYS_OUT.test(path)
          ? [`${packageOf(input)}: ${path.replace('node:', '')}`]
          : [],
      ),
    );
    expect([...new Set(found)].sort()).toEqual(EXCEPTIONS[bundle.out]);
    const named = [...read(out).matchAll(BY_NAME)].map(([name]) => name);
    expect([...new Set(named)].sort()).toEqual(NAMED[bundle.out] ?? []);
  });

  test('our own sources ask for no network, no program, no code from text', () => {
    const own = files().filter((file) => /^(client|server|grammar|shared)\/.*\.ts$/.test(file));
    const wrong =
      /\bfetch\(|\bXMLHttpRequest\b|\bWebSocket\b|\beval\(|\bnew Function\b|\bprocess\.binding\b/;
    expect(own.length).toBeGreaterThan(0);
    expect(own.filter((file) => wrong.test(read(file)))).toEqual([]);
  });
});

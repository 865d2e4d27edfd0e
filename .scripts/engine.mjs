// The engine once in the package: the command line and both language servers ask for it by `require`.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '..');

/** Folders that all programs share; whoever stands outside asks for their modules. */
const SHARED = /^(grammar|shared|server\/(engine|documents))\//;
/** Has a bundle of its own. */
const HEAVY = 'server/documents/paper/heavy';
/** Whoever asks. */
const PROGRAMS = ['server/cli', 'server/lsp'];

export const ENGINE = { out: 'dist/engine.cjs', platform: 'browser', engine: true };

/** @returns the module of the engine that an import means, by its path without an ending, or undefined */
function shared(folder, specifier) {
  const target = path.relative(root, path.join(folder, specifier)).replaceAll('\\', '/');
  return SHARED.test(`${target}/`) && target !== HEAVY ? target : undefined;
}

/** `import default, { names } from './module'`, with no type alone. Of `* as all` every name is taken. */
const IMPORT = /^(?:import|export)\s+(?!type\s)([^'";]*?)\s*from\s+'(\.[^']+)'/gm;

function namesIn(clause) {
  const listed = /\{([^}]*)\}/.exec(clause)?.[1] ?? '';
  const names = listed.split(',').map((each) => each.trim().split(/\s+as\s+/)[0]);
  return names.filter((name) => name && !name.startsWith('type '));
}

function sourcesIn(folder) {
  const found = readdirSync(path.join(root, folder), { recursive: true });
  return found.map((name) => path.join(root, folder, name)).filter((name) => name.endsWith('.ts'));
}

/** What the programs ask for: names by module, in order; `*` for all of a module. */
function asked() {
  const found = new Map();
  for (const file of PROGRAMS.flatMap(sourcesIn))
    for (const [, clause, specifier] of readFileSync(file, 'utf8').matchAll(IMPORT)) {
      const module = shared(path.dirname(file), specifier);
      if (!module) continue;
      const names = found.get(module) ?? new Set();
      for (const name of clause.includes('*') ? ['*'] : namesIn(clause)) names.add(name);
      found.set(module, names);
    }
  return [...found].map(([module, names]) => [module, [...names].sort()]).sort();
}

/** What a name of a module is called in the engine, where all names stand side by side. */
const called = (module, name) => JSON.stringify(`${module}:${name}`);

/** The engine's entry, made from what is asked of it. */
export function engineEntry() {
  const lines = asked().flatMap(([module, names]) =>
    names.map((name) =>
      name === '*'
        ? `export * as ${called(module, name)} from "./${module}";`
        : `export { ${name} as ${called(module, name)} } from "./${module}";`,
    ),
  );
  return { contents: lines.join('\n'), resolveDir: root, sourcefile: 'engine.ts', loader: 'ts' };
}

/** The module as a program sees it: constants, which cost nothing each time they are used. */
function seen(module, names, address) {
  const all = names.includes('*') ? `module.exports = engine[${called(module, '*')}];` : '';
  const each = names.map((name) => `export const ${name} = engine[${called(module, name)}];`);
  return [`const engine = require(${JSON.stringify(address)});`, ...(all ? [all] : each)].join(
    '\n',
  );
}

/** A program finds the engine's modules in the bundle beside, or above when it stands in a folder of `dist`. */
export function engineBeside(out) {
  const address = /\/web\/[^/]+$/.test(out) ? '../engine.cjs' : './engine.cjs';
  const names = new Map(asked());
  return {
    name: 'engine-beside',
    setup({ onLoad, onResolve }) {
      onResolve({ filter: /^\./ }, ({ path: specifier, resolveDir, namespace }) => {
        if (namespace === 'engine') return { path: specifier, external: true };
        const module = shared(resolveDir, specifier);
        return module && { path: module, namespace: 'engine' };
      });
      onLoad({ filter: /.*/, namespace: 'engine' }, ({ path: module }) => {
        const asked = names.get(module);
        if (!asked) return { errors: [{ text: `How ${module} is asked for is not understood.` }] };
        return { contents: seen(module, asked, address) };
      });
    },
  };
}

import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';

export const root = path.resolve(import.meta.dirname, '..');

/** The files of the checkout that git tracks or would, relative to its top. Needs a git checkout. */
export function files(): string[] {
  const args = ['ls-files', '--cached', '--others', '--exclude-standard'];
  const listed = execFileSync('git', args, { cwd: root, encoding: 'utf8' });
  const names = listed.split('\n').filter(Boolean);
  return names.filter((name) => existsSync(path.join(root, name)));
}

export function read(file: string): string {
  return readFileSync(path.join(root, file), 'utf8');
}

export function readJson<T>(file: string): T {
  return JSON.parse(read(file)) as T;
}

const IMPORTS = [
  /^(?:import|export)\s+(?:type\s+)?(?:[\w$]+\s*,?\s*)?(?:[{*][^'";]*?|)\bfrom\s*['"]([^'"]+)['"]/gm,
  /^import\s*['"]([^'"]+)['"]/gm,
  /\bimport\(\s*['"]([^'"]+)['"]\s*\)/g,
  /\brequire\(\s*['"]([^'"]+)['"]\s*\)/g,
];

/** What a source text names after `from`, `import` or `require`, types too. */
export function importsOf(text: string): string[] {
  return IMPORTS.flatMap((pattern) => [...text.matchAll(pattern)].map((found) => found[1]!));
}

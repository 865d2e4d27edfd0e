/** A file that one job names, as a job in another folder names it. */
import path from 'node:path';

/** `from`, `to`: the files that name it, before and after. */
export function reaching(from: string, to: string): (file: string) => string {
  return (file) => {
    if (path.isAbsolute(file)) return file;
    const real = path.resolve(path.dirname(from), file);
    const way = path.relative(path.dirname(to), real).replaceAll(path.sep, '/');
    return way.replace(/["\\]/g, '\\$&');
  };
}

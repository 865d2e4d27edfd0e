/** The command line run in the tests' own process: as much faster as a program takes to start. */
import { printable } from '../../server/cli/io';
import { run } from '../../server/cli/run';
import { root } from '../tree';
import type { Ran } from './perpend';

export function inside(args: readonly string[], { cwd = root }: { cwd?: string } = {}): Ran {
  let [out, err] = ['', ''];
  const code = run(args, {
    cwd,
    colour: false,
    out: (text) => {
      out += printable(text, false);
    },
    raw: (text) => {
      out += text;
    },
    err: (text) => {
      err += printable(text, false);
    },
  });
  return { code, out, err };
}

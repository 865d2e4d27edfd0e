/** The words of --help: one text for all commands, one for each. */
import type { Option } from './args';
import { type Command, WORKSPACE } from './commands/command';

const HELP: Option = { name: '--help', about: 'show this' };

const CODES = `Exit codes:
  0  nothing wrong was found (warnings and notes may have been)
  1  a file, or a file it uses, has errors; format --check: a file would change;
     compare --check: anything that counts changed
  2  wrong use, a file that cannot be read or written, a fault of the program`;

const FILES = `FILE is a job or another file in the notation; - stands for what is piped in.`;

const WORKSPACES = `A job can use other files of its workspace and no others. The workspace is the
folder given with --workspace; else the nearest folder at or above the file that
holds .git or package.json; else the current folder, if the file lies under it;
else the file's own folder. Links are followed, and may not lead out of it.`;

const QUIET = `Colour is used at a terminal only, and not where NO_COLOR is set. Nothing is
sent anywhere: perpend never uses the network.`;

export function helpForAll(commands: readonly Command[]): string {
  const rows: [string, string][] = commands.map((c) => [`${c.name} ${c.takes}`.trim(), c.about]);
  return [
    'perpend: price and set out small brickwork jobs from a plain-text note',
    `Usage: perpend COMMAND [OPTIONS] FILE\n\nCommands:\n${columns(rows)}`,
    `Options of perpend itself:\n${columns([
      ['--help', 'show this; perpend COMMAND --help tells of one command'],
      ['--version', 'show the version'],
    ])}`,
    FILES,
    WORKSPACES,
    CODES,
    QUIET,
    '',
  ]
    .join('\n\n')
    .trimEnd();
}

export function helpFor(command: Command): string {
  const options = [...command.options, HELP].map((o): [string, string] => [
    o.value ? `${o.name} ${o.value}` : o.name,
    o.about,
  ]);
  const usage = `perpend ${command.name} [OPTIONS] ${command.takes}`.trim();
  const parts = [
    `perpend ${command.name}: ${command.about}`,
    `Usage: ${usage}`,
    command.more.join('\n'),
    `Options:\n${columns(options)}`,
    command.takes ? FILES : '',
    command.options.includes(WORKSPACE) ? WORKSPACES : '',
    CODES,
  ];
  return parts.filter(Boolean).join('\n\n');
}

function columns(rows: readonly [string, string][]): string {
  const width = Math.max(...rows.map(([name]) => name.length));
  return rows.map(([name, about]) => `  ${name.padEnd(width)}  ${about}`).join('\n');
}

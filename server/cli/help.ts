/** The words of --help: one text for all commands, one for each. */
import { later, phrase, spoken } from '../../shared/phrase';
import type { Option } from './args';
import { type Command, WORKSPACE } from './commands/command';

const HELP: Option = { name: '--help', about: later`show this` };

const CODES = later`Exit codes:
  0  nothing wrong was found (warnings and notes may have been)
  1  a file, or a file it uses, has errors; format --check: a file would change;
     compare --check: anything that counts changed
  2  wrong use, a file that cannot be read or written, a fault of the program`;

const FILES = later`FILE is a job or another file in the notation; - stands for what is piped in.`;

const WORKSPACES = later`A job can use other files of its workspace and no others. The workspace is the
folder given with --workspace; else the nearest folder at or above the file that
holds .git or package.json; else the current folder, if the file lies under it;
else the file's own folder. Links are followed, and may not lead out of it.`;

const QUIET = later`Colour is used at a terminal only, and not where NO_COLOR is set. Nothing is
sent anywhere: perpend never uses the network.`;

export function helpForAll(commands: readonly Command[]): string {
  const rows: [string, string][] = commands.map((c) => [
    `${c.name} ${c.takes}`.trim(),
    spoken(c.about),
  ]);
  return [
    phrase`perpend: price and set out small brickwork jobs from a plain-text note`,
    phrase`Usage: perpend COMMAND [OPTIONS] FILE\n\nCommands:\n${columns(rows)}`,
    phrase`Options of perpend itself:\n${columns([
      ['--help', phrase`show this; perpend COMMAND --help tells of one command`],
      ['--version', phrase`show the version`],
      ['help CODE', phrase`show what a finding means and what to do: perpend help fit-run`],
    ])}`,
    spoken(FILES),
    spoken(WORKSPACES),
    spoken(CODES),
    spoken(QUIET),
    '',
  ]
    .join('\n\n')
    .trimEnd();
}

export function helpFor(command: Command): string {
  const options = [...command.options, HELP].map((o): [string, string] => [
    o.value ? `${o.name} ${o.value}` : o.name,
    spoken(o.about),
  ]);
  const usage = `perpend ${command.name} [OPTIONS] ${command.takes}`.trim();
  const parts = [
    `perpend ${command.name}: ${spoken(command.about)}`,
    phrase`Usage: ${usage}`,
    command.more.map(spoken).join('\n'),
    phrase`Options:\n${columns(options)}`,
    command.takes ? spoken(FILES) : '',
    command.options.includes(WORKSPACE) ? spoken(WORKSPACES) : '',
    spoken(CODES),
  ];
  return parts.filter(Boolean).join('\n\n');
}

function columns(rows: readonly [string, string][]): string {
  const width = Math.max(...rows.map(([name]) => name.length));
  return rows.map(([name, about]) => `  ${name.padEnd(width)}  ${about}`).join('\n');
}
